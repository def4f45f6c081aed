"""Viscosity from the seconds of Ford and Zahn cups."""

from collections.abc import Mapping
from dataclasses import dataclass
from fractions import Fraction

from generator.diagnostics import OutsideValidity
from generator.refinishing.annotations import Bare
from generator.refinishing.annotations_air_and_cure import Second, SquareMillimetrePerSecond
from generator.refinishing.relation import relation


@dataclass(frozen=True, slots=True)
class Cup:
    """A straight line from seconds to viscosity, and the seconds it holds for."""

    slope: Fraction
    start: Fraction
    shortest: int
    longest: int


def _cup(slope: str, start: str, shortest: int, longest: int) -> Cup:
    return Cup(Fraction(slope), Fraction(start), shortest, longest)


FORD_READ = {1: _cup("0.49", "35.0", 55, 100), 2: _cup("1.44", "18.0", 40, 100)}
FORD_FROM_MEMORY = {
    3: _cup("2.31", "6.58", 20, 100),
    4: _cup("3.85", "4.49", 20, 100),
    5: _cup("12.1", "2.00", 20, 100),
}
ZAHN = {
    1: _cup("1.1", "29", 35, 80),
    2: _cup("3.5", "14", 20, 80),
    3: _cup("11.7", "7.5", 20, 80),
    4: _cup("14.8", "5", 20, 80),
}


@relation(
    equation="ford_small_cup_viscosity = slope × (time - start), with slope 0.49 and start 35.0"
    " for cup No. 1, slope 1.44 and start 18.0 for cup No. 2, here No. cup_number",
    source="cup_equations",
    place="Ford cups No. 1 and 2 at 25 °C",
    status="restated",
)
def ford_small_cup_viscosity(cup_number: Bare, time: Second) -> SquareMillimetrePerSecond:
    """Return the viscosity that the seconds of a Ford cup 1 or 2 stand for.

    Valid: 25 °C; No. 1 from 55 to 100 s, No. 2 from 40 to 100 s; paint that flows like an oil.
    Deviates: cup makers print slightly different conversions, so name the one used.
    Checked: No. 2 at 64 s is 66.2 mm²/s; the calibration liquid is printed as 66.
    """
    return _viscosity("Ford", FORD_READ, cup_number, time)


@relation(
    equation="ford_cup_viscosity = slope × (time - start), with slope 2.31 and start 6.58 for cup"
    " No. 3, slope 3.85 and start 4.49 for No. 4, slope 12.1 and start 2.00 for No. 5,"
    " here No. cup_number",
    source="cup_equations_from_memory",
    place="Ford cups No. 3 to 5 at 25 °C",
    status="from_memory",
)
def ford_cup_viscosity(cup_number: Bare, time: Second) -> SquareMillimetrePerSecond:
    """Return the viscosity that the seconds of a Ford cup 3, 4 or 5 stand for.

    Valid: 25 °C; 20 to 100 s; paint that flows like an oil.
    Deviates: from memory; another printed table gives 441 mm²/s at 120 s in No. 4, this line 445.
    Checked: No. 4 at 36 s is 121.3 mm²/s; the calibration liquid is printed as 120.
    """
    return _viscosity("Ford", FORD_FROM_MEMORY, cup_number, time)


@relation(
    equation="zahn_cup_viscosity = slope × (time - start), with slope 1.1 and start 29 for cup"
    " No. 1, slope 3.5 and start 14 for No. 2, slope 11.7 and start 7.5 for No. 3, slope 14.8 and"
    " start 5 for No. 4, here No. cup_number",
    source="cup_equations",
    place="Zahn cups No. 1 to 4 at 25 °C",
    status="restated",
)
def zahn_cup_viscosity(cup_number: Bare, time: Second) -> SquareMillimetrePerSecond:
    """Return the viscosity that the seconds of a Zahn cup 1, 2, 3 or 4 stand for.

    Valid: 25 °C; 20 to 80 s, No. 1 from 35 s; paint that flows like an oil.
    Deviates: dipped by hand, so a shop aid and not a laboratory cup.
    Checked: No. 2 at 33 s is 66.5 and at 48 s 119 mm²/s; the calibration liquids are printed
        as 66 and 120.
    """
    return _viscosity("Zahn", ZAHN, cup_number, time)


def _viscosity(kind: str, cups: Mapping[int, Cup], number: Fraction, time: Fraction) -> Fraction:
    cup = cups.get(int(number)) if number == int(number) else None
    if cup is None:
        known = ", ".join(map(str, cups))
        raise OutsideValidity(f"This line holds for {kind} cups No. {known} only.")
    if not cup.shortest <= time <= cup.longest:
        raise OutsideValidity(
            f"{kind} cup No. {number} is read from {cup.shortest} to {cup.longest} s, so take"
            " another cup."
        )
    return cup.slope * (time - cup.start)
