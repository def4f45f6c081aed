"""The dew-point chart."""

from fractions import Fraction

from generator.refinishing import dew_point
from generator.website.figures.drawing import figure_frame, line, path, words

AIR = (15, 20, 25, 30)
DRIEST, DAMPEST = 30, 90
COLDEST, WARMEST = -5, 30
LEFT, RIGHT, TOP, BOTTOM = 44.0, 292.0, 34.0, 274.0


def dew_chart() -> str:
    """Draw dew point against humidity for four air temperatures."""
    shapes = [words(8, 18, "Dew point, °C", strong=True)]
    for degrees in range(COLDEST, WARMEST + 1, 5):
        shapes.append(line(LEFT, _down(degrees), RIGHT, _down(degrees), "thin"))
        shapes.append(
            words(LEFT - 8, _down(degrees) + 5, str(degrees).replace("-", "\u2212"), "end")
        )
    for humidity in range(DRIEST, DAMPEST + 1, 10):
        shapes.append(line(_across(humidity), TOP, _across(humidity), BOTTOM, "thin"))
        shapes.append(words(_across(humidity), BOTTOM + 20, str(humidity), "middle"))
    shapes.append(words((LEFT + RIGHT) / 2, BOTTOM + 42, "Relative humidity, %", "middle", True))
    for air in AIR:
        curve = [
            (_across(humidity), _down(float(dew_point(Fraction(air), Fraction(humidity)))))
            for humidity in range(DRIEST, DAMPEST + 1, 5)
        ]
        shapes.append(path(curve))
        shapes.append(words(RIGHT + 6, curve[-1][1] + 5, f"{air}\u00a0°C air"))
    example = float(dew_point(Fraction(20), Fraction(60)))
    return figure_frame(
        "dew_chart",
        "Dew point against humidity",
        "Curves for air at 15, 20, 25 and 30 °C. The dew point rises with humidity; "
        f"air at 20 °C and 60 % has its dew point near {example:.0f} °C.",
        328,
        shapes,
    )


def _across(humidity: float) -> float:
    return LEFT + (humidity - DRIEST) / (DAMPEST - DRIEST) * (RIGHT - LEFT)


def _down(degrees: float) -> float:
    return BOTTOM - (degrees - COLDEST) / (WARMEST - COLDEST) * (BOTTOM - TOP)
