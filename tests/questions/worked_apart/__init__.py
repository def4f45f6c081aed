"""Numeric items of the bank worked a second time, from the trade's own sums, a module a topic.

Nothing here knows the items' formulas or the relations. Each entry takes the numbers of a
question in the units that stand on the paper, and gives the answer in the answer's unit, before
rounding: an exact fraction, or a float where a root, a logarithm or the circle comes in.
Percents are numbers out of 100.

sums            what several topics share: percents, films, degrees, sizes of two systems
preparation     cleaning, bare metal, filler, primers
abrasives       grades and discs
mixing          parts, percents, the scale
film            wet and dry film, solids, coats
paint_needed    spreading rates and losses
orders          material, money and booth time
sizes           one system in another
climate         dew point, temperatures, vapour beside its limit
booth_air       flow, air changes, the filter gauge
curing          the rule of thumb, holds, windows, lamps
spraying        strokes, transfer, pressure, cups, colour and gloss
health          masks, vapour over a day, noise
solvent_records VOC and the logs
faults          clear that is left, waits, the rim of a pad, the log of a month
"""

from tests.questions.worked_apart import (
    abrasives,
    booth_air,
    climate,
    curing,
    faults,
    film,
    health,
    mixing,
    orders,
    paint_needed,
    preparation,
    sizes,
    solvent_records,
    spraying,
)
from tests.questions.worked_apart.sums import Working

TOPICS = (
    preparation,
    abrasives,
    mixing,
    film,
    paint_needed,
    orders,
    sizes,
    climate,
    booth_air,
    curing,
    spraying,
    health,
    solvent_records,
    faults,
)
WORKED_APART: dict[str, Working] = {
    name: working for topic in TOPICS for name, working in topic.WORKED.items()
}
"""The second working of each item by its name."""

WITH_A_ROUNDED_FACTOR = frozenset(
    (
        "booth_climate/prepare_booth/time_for_99_percent",
        "booth_climate/prepare_booth/time_for_99_percent_poorly_mixed",
        "booth_climate/prepare_booth/fresh_air_from_a_tracer",
        "booth_climate/prepare_booth/room_with_dead_corners",
        "booth_climate/prepare_booth/percent_gone_from_the_fan",
        "booth_climate/prepare_booth/minutes_lost_to_poor_mixing",
        "booth_climate/read_manometer/inches_of_water_to_pascals",
        "environment_records/keep_logs/a_month_in_kilograms",
        "environment_records/voc_figures/pounds_to_grams",
        "environment_records/voc_figures/mixed_for_a_us_form",
        "environment_records/voc_figures/rule_figure_in_pounds",
        "environment_records/voc_figures/solids_figure_in_grams",
        "environment_records/voc_figures/us_can_under_a_limit",
        "environment_records/voc_figures/limit_in_pounds",
        "film_build/convert_units/fluid_ounces_in_the_cup",
        "film_build/convert_units/wrong_gallon",
        "film_build/convert_units/gallons_left_in_litres",
        "film_build/convert_units/torque_for_a_metric_wrench",
        "film_build/convert_units/gauge_in_kilopascals",
        "film_build/convert_units/regulator_in_bar",
        "film_build/convert_units/wheel_nuts_in_newton_metres",
        "shop_air_tools/breathing_air/dry_enough_to_breathe",
        "spray_gun/set_pressure/bar_on_a_psi_gauge",
        "spray_gun/set_pressure/inlet_in_bar",
        "spray_gun/set_pressure/wall_gauge_in_psi",
        "spray_gun/set_pressure/gauge_in_kilopascals",
        "spray_gun/set_pressure/gun_air_in_litres",
    )
)
"""Items whose question states a factor with few figures: the key is met only after rounding."""
