"""Discs and orbital pads: speeds and areas."""

from fractions import Fraction

from generator.refinishing.annotations import (
    Bare,
    MetrePerSecond,
    Millimetre,
    OrbitsPerMinute,
    SquareCentimetre,
    TurnsPerMinute,
)
from generator.refinishing.bounds import require_above_zero
from generator.refinishing.relation import relation

# twenty decimals: far finer than any answer, and the same on every machine
PI = Fraction("3.14159265358979323846")
MM_PER_MIN_TO_M_PER_S = 60_000
MM2_PER_CM2 = 100

MARKED_SPEED = "Never run above the speed marked on the disc or pad, whatever the sum allows."


@relation(
    equation="rim_speed = π × diameter × speed ÷ 60000",
    source="disc_speed_note",
    place="formula for highest speed, turned round",
    status="restated",
    caution=MARKED_SPEED,
)
def rim_speed(diameter: Millimetre, speed: TurnsPerMinute) -> MetrePerSecond:
    """Return the speed of the rim of a spinning disc.

    Valid: diameter and speed above zero.
    Deviates: a random orbital pad does not grind at rim speed; see orbit_speed.
    Checked: 125 mm at 12 000 rpm is 78.54 m/s; the formula is published, the numbers are ours.
    """
    require_above_zero(diameter=diameter, speed=speed)
    return PI * diameter * speed / MM_PER_MIN_TO_M_PER_S


@relation(
    equation="highest_speed = 60000 × rim_limit ÷ (π × diameter)",
    source="disc_speed_note",
    place="formula and table row 125 mm at 80 m/s",
    status="restated",
    rounding={"highest_speed": "down"},
    limit={"highest_speed": "maximum"},
    caution=MARKED_SPEED,
)
def highest_speed(diameter: Millimetre, rim_limit: MetrePerSecond) -> TurnsPerMinute:
    """Return the highest speed of a disc whose rim may not pass a limit; round it down.

    Valid: diameter and limit above zero.
    Deviates: printed tables round further down to whole hundreds.
    Checked: 125 mm at 80 m/s is 12 223 rpm; the table prints 12 200.
    """
    require_above_zero(diameter=diameter, rim_speed_limit=rim_limit)
    return MM_PER_MIN_TO_M_PER_S * rim_limit / (PI * diameter)


@relation(
    equation="orbit_speed = π × orbit × speed ÷ 60000",
    source="orbit_kinematics",
    place="every grain runs a circle of the orbit's diameter",
    status="from_memory",
)
def orbit_speed(orbit: Millimetre, speed: OrbitsPerMinute) -> MetrePerSecond:
    """Return the speed of the grains on an orbital pad.

    Valid: orbit diameter and speed above zero; a free pad's slow turning is left out.
    Deviates: from memory; no published worked example was found.
    Checked: 5 mm at 12 000 orbits a minute is 3.14 m/s; derived apart, not published.
    """
    require_above_zero(orbit_diameter=orbit, speed=speed)
    return PI * orbit * speed / MM_PER_MIN_TO_M_PER_S


@relation(
    equation="disc_area = π × diameter² ÷ 4 ÷ 100",
    source="common_practice",
    place="area of a circle",
    status="definition",
)
def disc_area(diameter: Millimetre) -> SquareCentimetre:
    """Return the face area of a round disc.

    Valid: diameter above zero.
    Deviates: dust holes are left out.
    Checked: 150 mm is 176.7 cm²; geometry.
    """
    require_above_zero(diameter=diameter)
    return PI * diameter**2 / 4 / MM2_PER_CM2


@relation(
    equation="disc_area_ratio = diameter² ÷ other_diameter²",
    source="common_practice",
    place="areas grow with the square of the diameter",
    status="definition",
)
def disc_area_ratio(diameter: Millimetre, other_diameter: Millimetre) -> Bare:
    """Return how many times the area of another disc a disc has.

    Valid: both diameters above zero.
    Deviates: none.
    Checked: 150 mm has 1.44 times the area of 125 mm; geometry.
    """
    require_above_zero(diameter=diameter, other_diameter=other_diameter)
    return Fraction(diameter) ** 2 / Fraction(other_diameter) ** 2
