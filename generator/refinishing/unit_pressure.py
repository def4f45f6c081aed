"""Pressure and torque from one unit into another."""

from fractions import Fraction

from generator.refinishing.annotations import (
    Bar,
    FootPound,
    InchOfWater,
    Kilopascal,
    NewtonMetre,
    Pascal,
    Psi,
)
from generator.refinishing.bounds import require_not_below_zero
from generator.refinishing.relation import relation

POUND_FORCE = Fraction("4.4482216152605")  # newtons
SQUARE_INCH = Fraction("645.16")  # square millimetres
INCH_OF_WATER = Fraction("249.08891")  # pascals, conventional
FOOT_POUND = Fraction("1.3558179483314004")  # newton metres


@relation(
    equation="psi_to_bar = pressure × 44.482216152605 ÷ 645.16",
    source="common_practice",
    place="definitions of pound force and inch",
    status="definition",
)
def psi_to_bar(pressure: Psi) -> Bar:
    """Turn a pressure in psi into bar.

    Valid: gauge pressure from zero up.
    Deviates: a rounded bar figure is not the psi limit itself; test in the unit of the rule.
    Checked: 10 psi is 0.689 bar; a general units library gives the same.
    """
    require_not_below_zero(pressure=pressure)
    return pressure * 10 * POUND_FORCE / SQUARE_INCH


@relation(
    equation="bar_to_psi = pressure × 645.16 ÷ 44.482216152605",
    source="common_practice",
    place="definitions of pound force and inch",
    status="definition",
)
def bar_to_psi(pressure: Bar) -> Psi:
    """Turn a pressure in bar into psi.

    Valid: gauge pressure from zero up.
    Deviates: as psi_to_bar.
    Checked: 2 bar is 29.0 psi; a general units library gives the same.
    """
    require_not_below_zero(pressure=pressure)
    return pressure * SQUARE_INCH / (10 * POUND_FORCE)


@relation(
    equation="psi_to_kpa = pressure × 4448.2216152605 ÷ 645.16",
    source="common_practice",
    place="definitions of pound force and inch",
    status="definition",
)
def psi_to_kpa(pressure: Psi) -> Kilopascal:
    """Turn a pressure in psi into kilopascals.

    Valid: gauge pressure from zero up.
    Deviates: as psi_to_bar.
    Checked: 29 psi is 199.9 kPa; a general units library gives the same.
    """
    require_not_below_zero(pressure=pressure)
    return pressure * 1000 * POUND_FORCE / SQUARE_INCH


@relation(
    equation="inch_of_water_to_pascal = pressure × 249.08891",
    source="nist_811",
    place="appendix B, conventional inch of water",
    status="from_memory",
)
def inch_of_water_to_pascal(pressure: InchOfWater) -> Pascal:
    """Turn a filter gauge's inches of water into pascals.

    Valid: pressure from zero up; the conventional inch of water.
    Deviates: an inch of water at 60 °F is 248.84 Pa; state which.
    Checked: 0.5 in is 124.5 Pa; a units library with the 60 °F inch gives 124.4.
    """
    require_not_below_zero(pressure=pressure)
    return pressure * INCH_OF_WATER


@relation(
    equation="foot_pound_to_newton_metre = torque × 1.3558179483314004",
    source="common_practice",
    place="definitions of pound force and foot",
    status="definition",
)
def foot_pound_to_newton_metre(torque: FootPound) -> NewtonMetre:
    """Turn a torque in foot-pounds into newton metres.

    Valid: torque from zero up.
    Deviates: exact.
    Checked: 20 ft·lbf is 27.1 N·m; a general units library gives the same.
    """
    require_not_below_zero(torque=torque)
    return torque * FOOT_POUND
