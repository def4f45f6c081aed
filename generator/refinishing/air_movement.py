"""Air through a booth: flow, velocity and air changes."""

from fractions import Fraction

from generator.refinishing.annotations import CubicFootPerMinute, FootPerMinute, SquareFoot
from generator.refinishing.annotations_air_and_cure import AirChangesPerHour, CubicFoot, Foot
from generator.refinishing.bounds import require_above_zero
from generator.refinishing.relation import relation

MINUTES_PER_HOUR = 60

AIR_IS_NO_MASK = (
    "Moving air does not replace breathing protection: isocyanate paint is sprayed on supplied "
    "air, and the booth's posted clearance time is kept. Booth maker, local code and a measured "
    "reading outrank the sum."
)


@relation(
    equation="air_flow_needed = width × height × velocity",
    source="finishing_guidebook",
    place="flow is open area times velocity",
    status="read",
    rounding={"air_flow_needed": "up"},
    limit={"air_flow_needed": "minimum"},
    caution=AIR_IS_NO_MASK,
)
def air_flow_needed(width: Foot, height: Foot, velocity: FootPerMinute) -> CubicFootPerMinute:
    """Return the air flow that an opening needs for a wanted average velocity; round it up.

    Valid: width, height and velocity above zero; the open face or the cross-section, empty.
    Deviates: clean filters; a fan is chosen for dirty ones.
    Checked: 10 × 7 ft at 100 ft/min is 7000 cfm, 11 893 m³/h; the rule is published, the numbers
        are ours.
    """
    require_above_zero(width=width, height=height, velocity=velocity)
    return width * height * velocity


@relation(
    equation="face_velocity = flow ÷ area",
    source="air_flow_2004",
    place="worked answer, 60 000 cfm through 1000 ft²",
    status="read",
    caution=AIR_IS_NO_MASK,
)
def face_velocity(flow: CubicFootPerMinute, area: SquareFoot) -> FootPerMinute:
    """Return the average velocity of air through an opening.

    Valid: flow and area above zero.
    Deviates: an average; single spots differ, so a booth is measured at many.
    Checked: 60 000 cfm through 1000 ft² is 60 ft/min, as the answer prints.
    """
    require_above_zero(air_flow=flow, area=area)
    return Fraction(flow) / area


@relation(
    equation="air_changes = flow × 60 ÷ volume",
    source="air_change_note",
    place="air changes from flow and volume",
    status="restated",
    caution=AIR_IS_NO_MASK,
)
def air_changes(flow: CubicFootPerMinute, volume: CubicFoot) -> AirChangesPerHour:
    """Return how often in an hour the air of a room is moved once.

    Valid: flow and volume above zero.
    Deviates: one air change does not clear a room; fresh air mixes with the old.
    Checked: 9000 cfm in 3024 ft³ is 178.6 an hour; the rule is published, the numbers are ours.
    """
    require_above_zero(air_flow=flow, volume=volume)
    return Fraction(flow) * MINUTES_PER_HOUR / volume
