"""What a compressor gives, and what a shop asks of it."""

from fractions import Fraction
from typing import NamedTuple

from generator.refinishing.annotations import Bare, CubicFootPerMinute, Percent, Psi, UsGallon
from generator.refinishing.annotations_air_and_cure import Second
from generator.refinishing.bounds import (
    HUNDRED,
    require_above_zero,
    require_not_below_zero,
    require_share,
    require_whole_count,
)
from generator.refinishing.relation import relation

STANDARD_AIR = Fraction("14.7")  # psi
IN3_PER_US_GALLON = 231
IN3_PER_FT3 = 1728
SECONDS_PER_MINUTE = 60

BREATHING_APART = (
    "Breathing air is not shop air: it has its own grade, flow, filters, alarm and test, and is "
    "planned by its own rules."
)


class CompressorDemand(NamedTuple):
    """The air a shop uses on average, and what the compressor must give."""

    average: CubicFootPerMinute
    required: CubicFootPerMinute


@relation(
    equation="pump_up_flow = tank × 231 ÷ 1728 × pressure_rise ÷ air_pressure ÷ time × 60",
    source="pump_up_test",
    place="timed pump-up of a receiver",
    status="restated",
    caution="Keep within the working pressure on the receiver's plate.",
)
def pump_up_flow(
    tank: UsGallon, pressure_rise: Psi, time: Second, air_pressure: Psi = STANDARD_AIR
) -> CubicFootPerMinute:
    """Return the free air a compressor delivers from how fast its receiver pumps up.

    Valid: all drains and outlets shut; receiver and pipes counted; sizes above zero.
    Deviates: the air warms while it is pressed, so a quick test reads a little high.
    Checked: 25 gal, 17 psi in 35 s is 6.63 cfm; method and inputs are published, the printed
        answer was not seen.
    """
    require_above_zero(size_of_the_tank=tank, pressure_rise=pressure_rise, time=time)
    require_above_zero(air_pressure=air_pressure)
    volume = Fraction(tank) * IN3_PER_US_GALLON / IN3_PER_FT3
    return volume * pressure_rise / air_pressure / time * SECONDS_PER_MINUTE


@relation(
    equation="tool_air = flow × duty ÷ 100 % × count",
    source="compressor_example",
    place="flow times share of the time times number of tools",
    status="restated",
)
def tool_air(flow: CubicFootPerMinute, duty: Percent, count: Bare) -> CubicFootPerMinute:
    """Return the air that tools of one kind use on average.

    Valid: flow above zero; share of the time above 0 % and at most 100 %; whole tools.
    Deviates: a long burst draws the full flow, which the receiver must carry.
    Checked: two tools of 8 cfm at 60 % use 9.6 cfm, as in the example.
    """
    require_above_zero(air_flow=flow)
    require_share(share_of_the_time=duty)
    require_whole_count(tools=count)
    return Fraction(flow) * duty / HUNDRED * count


@relation(
    equation="average = first_tools + second_tools + third_tools + other_air; "
    "required = average × (100 % + margin) ÷ 100 %",
    source="compressor_example",
    place="23.2 cfm with a quarter on top is 29 cfm",
    status="restated",
    rounding={"required": "up"},
    limit={"required": "minimum"},
    caution=BREATHING_APART,
)
def compressor_demand(
    first_tools: CubicFootPerMinute,
    second_tools: CubicFootPerMinute = Fraction(0),
    third_tools: CubicFootPerMinute = Fraction(0),
    other_air: CubicFootPerMinute = Fraction(0),
    margin: Percent = Fraction(0),
) -> CompressorDemand:
    """Return the average air of up to three kinds of tool, and the flow a compressor must give.

    Valid: first flow above zero, the others and the margin from zero up; each as tool_air gives.
    Deviates: at one pressure; a flow at another pressure is not the same air.
    Checked: 9.6, 9.6, 2 and 2 cfm is 23.2 cfm, 29 cfm with 25 % on top, as the example prints.
    """
    require_above_zero(air_of_the_first_tools=first_tools)
    require_not_below_zero(air_of_the_second_tools=second_tools, other_air=other_air)
    require_not_below_zero(air_of_the_third_tools=third_tools, margin=margin)
    average = Fraction(first_tools) + second_tools + third_tools + other_air
    return CompressorDemand(average, average * (HUNDRED + margin) / HUNDRED)
