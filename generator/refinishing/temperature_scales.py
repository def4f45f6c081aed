"""Temperatures on the Fahrenheit and Celsius scales."""

from fractions import Fraction

from generator.diagnostics import OutsideValidity
from generator.refinishing.annotations import Celsius
from generator.refinishing.annotations_air_and_cure import Fahrenheit
from generator.refinishing.relation import relation

NINE_FIFTHS = Fraction(9, 5)
FREEZING = 32
COLDEST_CELSIUS = Fraction("-273.15")
COLDEST_FAHRENHEIT = Fraction("-459.67")


@relation(
    equation="fahrenheit_to_celsius = (temperature - 32) × 5 ÷ 9",
    source="common_practice",
    place="definition of the two scales",
    status="definition",
)
def fahrenheit_to_celsius(temperature: Fahrenheit) -> Celsius:
    """Turn a temperature on the Fahrenheit scale into Celsius.

    Valid: from absolute zero up; a difference of two temperatures is not moved by 32.
    Deviates: none.
    Checked: 140 °F is 60 °C, 77 °F is 25 °C; a general units library gives the same.
    """
    _require_possible(temperature, COLDEST_FAHRENHEIT)
    return (temperature - FREEZING) / NINE_FIFTHS


@relation(
    equation="celsius_to_fahrenheit = temperature × 9 ÷ 5 + 32",
    source="common_practice",
    place="definition of the two scales",
    status="definition",
)
def celsius_to_fahrenheit(temperature: Celsius) -> Fahrenheit:
    """Turn a temperature on the Celsius scale into Fahrenheit.

    Valid: from absolute zero up; a difference of two temperatures is not moved by 32.
    Deviates: none.
    Checked: 60 °C is 140 °F, 23 °C is 73.4 °F; a general units library gives the same.
    """
    _require_possible(temperature, COLDEST_CELSIUS)
    return temperature * NINE_FIFTHS + FREEZING


def _require_possible(temperature: Fraction, coldest: Fraction) -> None:
    if temperature < coldest:
        raise OutsideValidity("No temperature lies below absolute zero.")
