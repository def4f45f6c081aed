"""Bake time counted from the panel: how long the metal warms up, then the hold."""

from math import log
from typing import NamedTuple

from generator.diagnostics import OutsideValidity
from generator.refinishing.annotations import Celsius, Minute
from generator.refinishing.bounds import require_above_zero
from generator.refinishing.climate import exact_from
from generator.refinishing.relation import relation

PANEL_DECIDES = (
    "The product's schedule is for the metal, measured on the panel, not for the oven air. Before "
    "any bake ask for the vehicle maker's limit: traction battery, airbags, plastics, bonded glass "
    "and gas tanks set it. Do not turn the oven up to catch up."
)


class OvenTime(NamedTuple):
    """How long the panel takes to warm up, and the whole time in the oven."""

    heat_up: Minute
    total: Minute


@relation(
    equation="heat_up = time_constant × ln((oven_air - panel_start) ÷ (oven_air - panel_wanted)),"
    " with ln the natural logarithm; total = heat_up + hold",
    source="panel_heating_textbook",
    place="first-order heating of a thin panel",
    status="from_memory",
    rounding={"heat_up": "up", "total": "up"},
    limit={"total": "minimum"},
    caution=PANEL_DECIDES,
)
def oven_time(
    oven_air: Celsius,
    panel_start: Celsius,
    panel_wanted: Celsius,
    time_constant: Minute,
    hold: Minute,
) -> OvenTime:
    """Return how long a panel takes to reach a temperature, and that plus the hold; round it up.

    Valid: start below the wanted metal temperature, and that strictly below the oven air;
        time constant and hold above zero; one thin panel in steady air.
    Deviates: from memory; thick parts lag, thin edges lead, so a thermometer on the slowest
        part decides.
    Checked: 20 to 60 °C in air of 70 °C with 8 min warms up in 12.9 min, 42.9 min with 30 min
        hold; in air of 80 °C 8.8 and 38.8; derived apart, not published.
    """
    require_above_zero(time_constant=time_constant, hold_time=hold)
    if not panel_wanted < oven_air:
        raise OutsideValidity("The wanted metal temperature must be below the oven air.")
    if not panel_start < panel_wanted:
        raise OutsideValidity("The panel must start below the temperature it is to reach.")
    rise = log(float((oven_air - panel_start) / (oven_air - panel_wanted)))
    heat_up = exact_from(float(time_constant) * rise)
    return OvenTime(heat_up, heat_up + hold)
