"""How far a panel is above the dew point."""

from fractions import Fraction
from typing import NamedTuple

from generator.refinishing.annotations import Celsius, FahrenheitDifference, Kelvin, Percent
from generator.refinishing.bounds import require_not_below_zero
from generator.refinishing.climate import dew_point, require_shop_air
from generator.refinishing.relation import relation

NOT_PERMISSION = (
    "A margin alone does not mean you can spray: the air's humidity, the coldest panel and the "
    "data sheet also decide."
)


class DewMargin(NamedTuple):
    """The margin over the dew point, and how much is missing to the one required."""

    margin: Kelvin
    short_by: Kelvin


@relation(
    equation="dew_margin = panel_temperature - dew point of air at air_temperature and humidity",
    source="climate_note",
    place="worked decisions with a margin of 3 °C",
    status="restated",
    caution=NOT_PERMISSION,
)
def dew_margin(air_temperature: Celsius, humidity: Percent, panel_temperature: Celsius) -> Kelvin:
    """Return how far the panel is above the dew point; below zero means it gets wet.

    Valid: -45 to 60 °C for air and panel; humidity above 0 % and at most 100 %.
    Deviates: use the measured panel, not the air; a panel from a cold yard lags behind.
    Checked: 16 °C, 71 %, panel 13 °C is 2.3 K; the note works with a charted 2.
    """
    require_shop_air(panel_temperature)
    return panel_temperature - dew_point(air_temperature, humidity)


@relation(
    equation="margin = panel_temperature - dew point of air at air_temperature and humidity; "
    "short_by = required - margin, or none if that is below zero",
    source="climate_note",
    place="worked decisions with a margin of 3 °C",
    status="restated",
    caution=NOT_PERMISSION,
)
def dew_margin_met(
    air_temperature: Celsius, humidity: Percent, panel_temperature: Celsius, required: Kelvin
) -> DewMargin:
    """Return the margin over the dew point and how many kelvins are missing to the one required.

    Valid: as dew_margin; required margin from zero up; a margin equal to it is enough.
    Deviates: the unrounded margin decides.
    Checked: 16 °C, 71 %, panel 13 °C falls short of 3 K; the note decides the same.
    """
    require_not_below_zero(required_margin=required)
    margin = dew_margin(air_temperature, humidity, panel_temperature)
    return DewMargin(margin, max(Fraction(0), required - margin))


@relation(
    equation="difference_to_kelvin = difference × 5 ÷ 9",
    source="common_practice",
    place="definition of the Fahrenheit degree",
    status="definition",
)
def difference_to_kelvin(difference: FahrenheitDifference) -> Kelvin:
    """Turn a temperature difference in Fahrenheit degrees into kelvins.

    Valid: differences only; a temperature on the scale also moves by 32.
    Deviates: none.
    Checked: 5 °F of margin is 2.78 K, not -15; arithmetic.
    """
    return difference * Fraction(5, 9)
