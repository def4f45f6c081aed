"""A fan at another speed."""

from fractions import Fraction
from typing import NamedTuple

from generator.refinishing.annotations import CubicFootPerMinute, InchOfWater, TurnsPerMinute
from generator.refinishing.annotations_air_and_cure import Horsepower
from generator.refinishing.bounds import require_above_zero
from generator.refinishing.relation import relation


class FanState(NamedTuple):
    """What a fan moves, presses and draws at its new speed."""

    new_flow: CubicFootPerMinute
    new_pressure: InchOfWater
    new_power: Horsepower


@relation(
    equation="new_flow = flow × new_speed ÷ speed; "
    "new_pressure = pressure × new_speed² ÷ speed²; "
    "new_power = power × new_speed³ ÷ speed³",
    source="fan_laws_manual",
    place="same fan, same ducts, same air",
    status="from_memory",
    caution="Booth fans are set by the maker or a licensed trade. A slower fan can take the booth "
    "below its required air flow and void its posted clearance time.",
)
def fan_at_speed(
    speed: TurnsPerMinute,
    new_speed: TurnsPerMinute,
    flow: CubicFootPerMinute,
    pressure: InchOfWater,
    power: Horsepower,
) -> FanState:
    """Return the flow, pressure and power of a fan at another speed.

    Valid: all above zero; the same fan on the same ducts and filters; new speed within the
        maker's limit.
    Deviates: from memory; belts and bearings do not follow the cube.
    Checked: 1000 to 900 rpm turns 9000 cfm, 0.5 inWG and 5 hp into 8100, 0.405 and 3.645;
        derived apart, not published.
    """
    require_above_zero(speed=speed, new_speed=new_speed, air_flow=flow, fan_pressure=pressure)
    require_above_zero(power=power)
    ratio = Fraction(new_speed) / speed
    return FanState(flow * ratio, pressure * ratio**2, power * ratio**3)
