"""The four-cup of GB/T 1723: seconds from viscosity, and back."""

from fractions import Fraction

from generator.diagnostics import OutsideValidity
from generator.refinishing.annotations_air_and_cure import Second, SquareMillimetrePerSecond
from generator.refinishing.bounds import require_above_zero
from generator.refinishing.relation import relation

QUICK_SLOPE, QUICK_START = Fraction("0.154"), Fraction(11)
SLOW_SLOPE, SLOW_START = Fraction("0.223"), Fraction(6)
MEETING = 23  # seconds
LONGEST = 150


@relation(
    equation="four_cup_seconds = 0.154 × viscosity + 11, with 0.223 × viscosity + 6.0 instead"
    " where the first line reaches 23 s",
    source="gbt_1723",
    place="two lines, below 23 s and from 23 to 150 s",
    status="restated",
)
def four_cup_seconds(viscosity: SquareMillimetrePerSecond) -> Second:
    """Return the seconds a four-cup would run for a viscosity.

    Valid: viscosity above zero; at most 150 s; paint that flows like an oil.
    Deviates: from 76.2 to 77.9 mm²/s both lines hold; the quick line wins there, and the seconds
        then step up by 0.4 s.
    Checked: 100 mm²/s is 28.3 s; the lines are published, the number is ours.
    """
    require_above_zero(viscosity=viscosity)
    quick = QUICK_SLOPE * viscosity + QUICK_START
    seconds = quick if quick < MEETING else SLOW_SLOPE * viscosity + SLOW_START
    if seconds > LONGEST:
        raise OutsideValidity("The four-cup is used up to 150 s, so take another cup.")
    return seconds


@relation(
    equation="four_cup_viscosity = (time - 11) ÷ 0.154, with (time - 6.0) ÷ 0.223 instead from"
    " 23 s on",
    source="gbt_1723",
    place="two lines, below 23 s and from 23 to 150 s, solved for the viscosity",
    status="restated",
)
def four_cup_viscosity(time: Second) -> SquareMillimetrePerSecond:
    """Return the viscosity that the seconds of a four-cup stand for.

    Valid: above 11 s and at most 150 s; paint that flows like an oil.
    Deviates: just under 23 s the quick line wins and gives up to 77.9 mm²/s; at 23 s the slow
        line takes over at 76.2, so close to 23 s two times can stand for one paint.
    Checked: 28.3 s is 100 mm²/s; the lines turned round, not published.
    """
    if not QUICK_START < time <= LONGEST:
        raise OutsideValidity("The four-cup is read above 11 s and up to 150 s.")
    if time < MEETING:
        return (time - QUICK_START) / QUICK_SLOPE
    return (time - SLOW_START) / SLOW_SLOPE
