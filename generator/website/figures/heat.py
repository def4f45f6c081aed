"""The heating curve: a panel lags behind the air of the oven."""

from fractions import Fraction

from generator.quantities import number_text, round_to_step
from generator.refinishing import oven_time
from generator.website.figures.drawing import box, figure_frame, line, path, words

# the example of the relation `oven_time`: °C, °C, °C and minutes
OVEN_AIR, PANEL_START, PANEL_WANTED = 70, 20, 60
TIME_CONSTANT, HOLD = 8, 30
TENTHS_TO_AIR = 499
LONGEST, COLDEST, WARMEST = 50, 10, 80
LEFT, RIGHT, TOP, BOTTOM = 44.0, 344.0, 34.0, 254.0
TENTH = Fraction(1, 10)


def heat_up() -> str:
    """Draw the temperature of a panel against minutes in an oven, and where its hold begins."""
    begins, ends = (_minutes_to(PANEL_WANTED), _minutes_to(PANEL_WANTED) + HOLD)
    shapes = [words(8, 18, "Temperature, °C", strong=True), *_grid()]
    shapes.append(
        box(_across(begins), _down(PANEL_WANTED), _across(ends) - _across(begins), 24, "soft")
    )
    middle = (_across(begins) + _across(ends)) / 2
    shapes.append(words(middle, _down(PANEL_WANTED) + 18, f"hold of {HOLD} min", "middle"))
    shapes.append(line(LEFT, _down(OVEN_AIR), RIGHT, _down(OVEN_AIR), "dashed"))
    shapes.append(words(RIGHT, _down(OVEN_AIR) - 7, "oven air", "end"))
    shapes.append(path(_curve()))
    shapes.append(words(_across(5), _down(27), "panel"))
    shapes.append(line(_across(begins), _down(PANEL_WANTED), _across(begins), BOTTOM, "dashed"))
    shown = number_text(round_to_step(Fraction(begins), TENTH, "half"))
    shapes.append(words(_across(begins) + 6, BOTTOM - 30, "the clock starts here,"))
    shapes.append(words(_across(begins) + 6, BOTTOM - 10, f"after {shown} min"))
    return figure_frame(
        "heat_up",
        "Panel temperature against minutes in the oven",
        f"The oven air stands at {OVEN_AIR} °C. The panel starts at {PANEL_START} °C, climbs fast "
        f"and then slowly, and passes {PANEL_WANTED} °C after {shown} minutes. The hold of {HOLD} "
        "minutes is counted from there.",
        BOTTOM + 50,
        shapes,
    )


def _grid() -> list[str]:
    shapes = []
    for degrees in range(20, WARMEST + 1, 20):
        shapes.append(line(LEFT, _down(degrees), RIGHT, _down(degrees), "thin"))
        shapes.append(words(LEFT - 8, _down(degrees) + 5, str(degrees), "end"))
    for minutes in range(0, LONGEST + 1, 10):
        shapes.append(line(_across(minutes), TOP, _across(minutes), BOTTOM, "thin"))
        shapes.append(words(_across(minutes), BOTTOM + 20, str(minutes), "middle"))
    shapes.append(words((LEFT + RIGHT) / 2, BOTTOM + 42, "Minutes in the oven", "middle", True))
    return shapes


def _curve() -> list[tuple[float, float]]:
    """Return the panel's way from its start to a tenth of a degree below the air."""
    warmer = [PANEL_START + Fraction(tenths, 10) for tenths in range(1, TENTHS_TO_AIR + 1)]
    points = [(_across(_minutes_to(degrees)), _down(degrees)) for degrees in warmer]
    return [(_across(0), _down(PANEL_START)), *points[9::10], *points[-9:]]


def _minutes_to(degrees: int | Fraction) -> Fraction:
    return oven_time(
        Fraction(OVEN_AIR),
        Fraction(PANEL_START),
        Fraction(degrees),
        Fraction(TIME_CONSTANT),
        Fraction(HOLD),
    ).heat_up


def _across(minutes: float | Fraction) -> float:
    return LEFT + float(minutes) / LONGEST * (RIGHT - LEFT)


def _down(degrees: float | Fraction) -> float:
    return BOTTOM - (float(degrees) - COLDEST) / (WARMEST - COLDEST) * (BOTTOM - TOP)
