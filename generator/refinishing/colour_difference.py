"""How far two colours are apart on an instrument."""

from fractions import Fraction
from math import atan2, cos, degrees, exp, hypot, radians, sin, sqrt

from generator.diagnostics import OutsideValidity
from generator.refinishing.annotations import Bare
from generator.refinishing.climate import exact_from
from generator.refinishing.relation import relation

MOST_LIGHT = 100
FURTHEST = 200
OPPOSITE_HUES = 1e-6  # degrees from 180
HUE_STEP = float(25**7)


@relation(
    equation="colour_difference_1976 = √((lightness_2 - lightness_1)²"
    " + (red_green_2 - red_green_1)² + (yellow_blue_2 - yellow_blue_1)²),"
    " with three coordinates for each colour",
    source="colour_difference_2005",
    place="Table 1, pairs",
    status="restated",
)
def colour_difference_1976(
    lightness_1: Bare,
    red_green_1: Bare,
    yellow_blue_1: Bare,
    lightness_2: Bare,
    red_green_2: Bare,
    yellow_blue_2: Bare,
) -> Bare:
    """Return the plain distance of two colours, known as the CIE 1976 difference.

    Valid: lightness 0 to 100; red-green and yellow-blue from -200 to 200.
    Deviates: the eye sees less of it in strong colours than in greys.
    Checked: the five pairs of the table by this formula; a colour library gives the same.
    """
    _require_colours(
        (lightness_1, red_green_1, yellow_blue_1), (lightness_2, red_green_2, yellow_blue_2)
    )
    squares = (
        (lightness_2 - lightness_1) ** 2
        + (red_green_2 - red_green_1) ** 2
        + (yellow_blue_2 - yellow_blue_1) ** 2
    )
    return exact_from(sqrt(float(squares)))


@relation(
    equation="colour_difference_2000 = CIEDE2000 of the two colours, with weights of 1",
    source="colour_difference_2005",
    place="Table 1, pairs; the formula is that of a colour library",
    status="restated",
)
def colour_difference_2000(
    lightness_1: Bare,
    red_green_1: Bare,
    yellow_blue_1: Bare,
    lightness_2: Bare,
    red_green_2: Bare,
    yellow_blue_2: Bare,
) -> Bare:
    """Return the colour difference weighted as the eye sees it, known as CIEDE2000.

    Valid: as colour_difference_1976; hues straight across from one another are refused, because
        the formula jumps there.
    Deviates: no figure is a pass for a repair; a sprayed card in two lights decides.
    Checked: 2.0425, 27.1492, 1.2644, 0.9082 and 1.0000 for five pairs; printed and by a library.
    """
    first = (lightness_1, red_green_1, yellow_blue_1)
    second = (lightness_2, red_green_2, yellow_blue_2)
    _require_colours(first, second)
    return exact_from(_weighted(_floats(first), _floats(second)))


def _require_colours(*colours: tuple[Fraction, Fraction, Fraction]) -> None:
    for lightness, red_green, yellow_blue in colours:
        if not 0 <= lightness <= MOST_LIGHT:
            raise OutsideValidity("The lightness must be from 0 to 100.")
        if max(abs(red_green), abs(yellow_blue)) > FURTHEST:
            raise OutsideValidity("Red-green and yellow-blue must be from -200 to 200.")


def _floats(colour: tuple[Fraction, Fraction, Fraction]) -> tuple[float, float, float]:
    return float(colour[0]), float(colour[1]), float(colour[2])


def _weighted(first: tuple[float, float, float], second: tuple[float, float, float]) -> float:
    stretch = 0.5 * (1 - _near_grey((hypot(*first[1:]) + hypot(*second[1:])) / 2)) + 1
    chroma_1, hue_1 = _chroma_and_hue(first, stretch)
    chroma_2, hue_2 = _chroma_and_hue(second, stretch)
    turn, hue = _turn_and_mean(hue_1, hue_2, chroma_1 * chroma_2 == 0)
    light = (first[0] + second[0]) / 2 - 50
    chroma = (chroma_1 + chroma_2) / 2
    lightness_step = (second[0] - first[0]) / (1 + 0.015 * light**2 / sqrt(20 + light**2))
    chroma_step = (chroma_2 - chroma_1) / (1 + 0.045 * chroma)
    hue_step = 2 * sqrt(chroma_1 * chroma_2) * sin(radians(turn) / 2)
    hue_step /= 1 + 0.015 * chroma * _hue_weight(hue)
    rotation = -sin(radians(60 * exp(-(((hue - 275) / 25) ** 2)))) * 2 * _near_grey(chroma)
    total = lightness_step**2 + chroma_step**2 + hue_step**2 + rotation * chroma_step * hue_step
    return sqrt(max(0.0, total))


def _near_grey(chroma: float) -> float:
    return sqrt(chroma**7 / (chroma**7 + HUE_STEP))


def _chroma_and_hue(colour: tuple[float, float, float], stretch: float) -> tuple[float, float]:
    across, along = colour[1] * stretch, colour[2]
    return hypot(across, along), degrees(atan2(along, across)) % 360


def _turn_and_mean(hue_1: float, hue_2: float, grey: bool) -> tuple[float, float]:
    if grey:
        return 0.0, hue_1 + hue_2
    turn = hue_2 - hue_1
    if abs(abs(turn) - 180) < OPPOSITE_HUES:
        raise OutsideValidity("The two hues lie straight across, where the formula jumps.")
    if abs(turn) < 180:
        return turn, (hue_1 + hue_2) / 2
    turn += 360 if turn < 0 else -360
    half = (hue_1 + hue_2) / 2
    return turn, half + 180 if half < 180 else half - 180


def _hue_weight(hue: float) -> float:
    return (
        1
        - 0.17 * cos(radians(hue - 30))
        + 0.24 * cos(radians(2 * hue))
        + 0.32 * cos(radians(3 * hue + 6))
        - 0.20 * cos(radians(4 * hue - 63))
    )
