"""Heat from an infrared lamp at another distance."""

from fractions import Fraction

from generator.diagnostics import OutsideValidity
from generator.refinishing.annotations import Bare, Millimetre
from generator.refinishing.bounds import require_above_zero
from generator.refinishing.relation import relation

RADII_AWAY = 10

LAMP = (
    "Lamp distance, angle and time come from the lamp's and the paint's sheets, and a thermometer "
    "on the panel decides. No wet solvent, open tins or rags near a lamp; the lamp stays out "
    "while paint is sprayed."
)


@relation(
    equation="point_lamp_ratio = distance² ÷ new_distance², with both distances at least"
    " 10 × emitter_radius",
    source="infrared_note",
    place="small source: twice the distance, a quarter of the heat",
    status="restated",
    caution=LAMP,
)
def point_lamp_ratio(
    distance: Millimetre, new_distance: Millimetre, emitter_radius: Millimetre
) -> Bare:
    """Return how many times the heat at one distance a small lamp gives at another.

    Valid: both distances at least ten times the emitter's radius, where the disc rule differs by
        at most 1 %; refused closer, as at any common working distance of a paint lamp.
    Deviates: a real emitter has width, so near it the heat falls off more slowly.
    Checked: 500 to 1000 mm is 0.25, as the note prints; 600 to 750 mm is 0.64, our numbers.
    """
    _require_lamp(distance, new_distance, emitter_radius)
    if min(distance, new_distance) < RADII_AWAY * emitter_radius:
        raise OutsideValidity(
            "This is too close to the lamp for the inverse square; it holds from ten times the"
            " emitter's radius, so use the disc rule."
        )
    return Fraction(distance) ** 2 / Fraction(new_distance) ** 2


@relation(
    equation="disc_lamp_ratio = (emitter_radius² + distance²) ÷ (emitter_radius² + new_distance²)",
    source="disc_source_textbook",
    place="even round source, straight in front of its middle",
    status="from_memory",
    caution=LAMP,
)
def disc_lamp_ratio(
    distance: Millimetre, new_distance: Millimetre, emitter_radius: Millimetre
) -> Bare:
    """Return how many times the heat at one distance a wide round lamp gives at another.

    Valid: sizes above zero; straight in front of the middle of an even, round emitter.
    Deviates: from memory; tubes and reflectors throw their heat in other ways.
    Checked: a 300 mm radius from 500 to 1000 mm gives 0.312, where the inverse square would say
        0.25; derived apart, not published.
    """
    _require_lamp(distance, new_distance, emitter_radius)
    wide = Fraction(emitter_radius) ** 2
    return (wide + distance**2) / (wide + new_distance**2)


def _require_lamp(distance: Fraction, new_distance: Fraction, radius: Fraction) -> None:
    require_above_zero(distance=distance, new_distance=new_distance, radius_of_the_emitter=radius)
