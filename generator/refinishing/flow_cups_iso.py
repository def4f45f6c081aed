"""Viscosity from the seconds of ISO and DIN cups, and back."""

from fractions import Fraction
from math import sqrt

from generator.diagnostics import OutsideValidity
from generator.refinishing.annotations import Millimetre
from generator.refinishing.annotations_air_and_cure import Second, SquareMillimetrePerSecond
from generator.refinishing.bounds import require_above_zero
from generator.refinishing.climate import exact_from
from generator.refinishing.relation import relation

SHORTEST, LONGEST = 30, 100  # seconds
CURVES = {
    3: (Fraction("0.443"), Fraction(200)),
    4: (Fraction("1.37"), Fraction(200)),
    6: (Fraction("6.90"), Fraction(570)),
}
DIN_CURVE = (Fraction("4.57"), Fraction(452))
DIN_SHORTEST, DIN_LONGEST = 20, 100


@relation(
    equation="iso_cup_viscosity = a × time - b ÷ time, with a and b 0.443 and 200 for the 3 mm"
    " cup, 1.37 and 200 for 4 mm, 6.90 and 570 for 6 mm, here orifice",
    source="iso_2431",
    place="cups of 3, 4 and 6 mm at 23 °C",
    status="from_memory",
)
def iso_cup_viscosity(orifice: Millimetre, time: Second) -> SquareMillimetrePerSecond:
    """Return the viscosity that the seconds of an ISO cup stand for.

    Valid: 23 °C; cups of 3, 4 and 6 mm; 30 to 100 s, the working range of the standard; paint
        that flows like an oil.
    Deviates: from memory; a cup maker's wider ranges start at 27, 21 and 17 s.
    Checked: 4 mm at 60 s is 78.9 mm²/s; the line also gives the maker's range ends, 19 at 21 s
        and 84 at 17 s in the 6 mm cup.
    """
    _require_range(time)
    return iso_curve(orifice, time)


@relation(
    equation="iso_cup_seconds = (viscosity + √(viscosity² + 4 × a × b)) ÷ (2 × a), with a and b"
    " of the cup: 0.443 and 200 for 3 mm, 1.37 and 200 for 4 mm, 6.90"
    " and 570 for 6 mm, here orifice",
    source="iso_2431",
    place="cups of 3, 4 and 6 mm at 23 °C, solved for the time",
    status="from_memory",
)
def iso_cup_seconds(orifice: Millimetre, viscosity: SquareMillimetrePerSecond) -> Second:
    """Return the seconds an ISO cup would run for a viscosity.

    Valid: 23 °C; cups of 3, 4 and 6 mm; refused where the run would leave 30 to 100 s.
    Deviates: from memory.
    Checked: 100 mm²/s in the 4 mm cup is 74.9 s; the line turned round, not published.
    """
    a, b = _curve(orifice)
    require_above_zero(viscosity=viscosity)
    root = sqrt(float(viscosity) ** 2 + float(4 * a * b))
    seconds = exact_from((float(viscosity) + root) / float(2 * a))
    _require_range(seconds)
    return seconds


@relation(
    equation="din_cup_viscosity = 4.57 × time - 452 ÷ time",
    source="din_53211",
    place="4 mm cup, withdrawn in 1996",
    status="from_memory",
)
def din_cup_viscosity(time: Second) -> SquareMillimetrePerSecond:
    """Return about the viscosity that the seconds of an old DIN cup of 4 mm stand for.

    Valid: 20 to 100 s, our own cautious range.
    Deviates: from memory and in no text that was read; the standard was withdrawn in 1996, so
        ask for the seconds of a cup in use.
    Checked: 20 s is 68.8 mm²/s by this line; not confirmed anywhere.
    """
    if not DIN_SHORTEST <= time <= DIN_LONGEST:
        raise OutsideValidity("The old DIN cup is taken from 20 to 100 s only.")
    slope, fall = DIN_CURVE
    return slope * time - fall / time


def iso_curve(orifice: Fraction, time: Fraction) -> Fraction:
    """Return the bare formula of an ISO cup, in mm²/s, without the standard's working range."""
    a, b = _curve(orifice)
    return a * time - b / time


def _curve(orifice: Fraction) -> tuple[Fraction, Fraction]:
    if orifice not in CURVES:
        raise OutsideValidity("The ISO cups have holes of 3, 4 or 6 mm.")
    return CURVES[int(orifice)]


def _require_range(time: Fraction) -> None:
    if not SHORTEST <= time <= LONGEST:
        raise OutsideValidity("An ISO cup is used from 30 to 100 s, so take another cup.")
