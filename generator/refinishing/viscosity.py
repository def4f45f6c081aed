"""Viscosity of warmer paint, and the two kinds of viscosity."""

from fractions import Fraction

from generator.diagnostics import OutsideValidity
from generator.refinishing.annotations import (
    FahrenheitDifference,
    GramPerMillilitre,
    Kelvin,
    Percent,
)
from generator.refinishing.annotations_air_and_cure import (
    MillipascalSecond,
    SquareMillimetrePerSecond,
)
from generator.refinishing.bounds import HUNDRED, require_above_zero
from generator.refinishing.climate import exact_from
from generator.refinishing.relation import relation

MOST_PER_KELVIN = 10  # percent
MOST_PER_FAHRENHEIT = 5
LONGEST_STEP = 15  # kelvins
KELVINS_PER_FAHRENHEIT = Fraction(5, 9)


@relation(
    equation="viscosity_when_warmer = viscosity × (1 - fall_per_kelvin ÷ 100 %)^n, with"
    " n the number of kelvins: warming",
    source="viscosity_temperature",
    place="up to 10 % for each °C",
    status="restated",
)
def viscosity_when_warmer(
    viscosity: SquareMillimetrePerSecond, fall_per_kelvin: Percent, warming: Kelvin
) -> SquareMillimetrePerSecond:
    """Return the viscosity of paint that is some kelvins warmer; below zero is colder.

    Valid: a fall above 0 % and at most 10 % for each kelvin; at most 15 K either way.
    Deviates: the fall compounds, each kelvin taking its share of what is left; 10 % is the
        published upper case, and the product's own figure decides.
    Checked: 100 mm²/s, 10 % and 5 K is 59.0, not 50; the rule is published, the number is ours.
    """
    require_above_zero(viscosity=viscosity, fall_for_each_kelvin=fall_per_kelvin)
    if fall_per_kelvin > MOST_PER_KELVIN:
        raise OutsideValidity("A fall of more than 10 % for each kelvin is not published.")
    _require_step(warming)
    return _compounded(viscosity, fall_per_kelvin, warming)


@relation(
    equation="viscosity_when_warmer_us = viscosity × (1 - fall_per_degree ÷ 100 %)^n, with"
    " n the number of Fahrenheit degrees: warming",
    source="viscosity_temperature",
    place="up to 5 % for each °F",
    status="restated",
)
def viscosity_when_warmer_us(
    viscosity: SquareMillimetrePerSecond, fall_per_degree: Percent, warming: FahrenheitDifference
) -> SquareMillimetrePerSecond:
    """Return the viscosity of paint that is some Fahrenheit degrees warmer; below zero is colder.

    Valid: a fall above 0 % and at most 5 % for each °F; at most 27 °F either way.
    Deviates: the fall compounds; 5 % is the published upper case.
    Checked: 100 mm²/s, 5 % and 9 °F is 63.0; the rule is published, the number is ours.
    """
    require_above_zero(viscosity=viscosity, fall_for_each_degree=fall_per_degree)
    if fall_per_degree > MOST_PER_FAHRENHEIT:
        raise OutsideValidity("A fall of more than 5 % for each °F is not published.")
    _require_step(warming * KELVINS_PER_FAHRENHEIT)
    return _compounded(viscosity, fall_per_degree, warming)


@relation(
    equation="dynamic_viscosity = viscosity × density",
    source="common_practice",
    place="definition of the two kinds of viscosity",
    status="definition",
)
def dynamic_viscosity(
    viscosity: SquareMillimetrePerSecond, density: GramPerMillilitre
) -> MillipascalSecond:
    """Return the dynamic viscosity from the kinematic one, which cups show, and the density.

    Valid: both above zero, at one temperature.
    Deviates: none.
    Checked: 80 mm²/s at 1.25 g/mL is 100 mPa·s; a general units library gives the same.
    """
    require_above_zero(viscosity=viscosity, density=density)
    return viscosity * density


def _compounded(viscosity: Fraction, fall: Fraction, steps: Fraction) -> Fraction:
    share = (HUNDRED - fall) / HUNDRED
    steps = Fraction(steps)
    if steps.denominator == 1:
        return viscosity * share**steps.numerator
    return exact_from(float(viscosity) * float(share) ** float(steps))


def _require_step(kelvins: Fraction) -> None:
    if abs(kelvins) > LONGEST_STEP:
        raise OutsideValidity("Keep the change of temperature to 15 K, or 27 °F, either way.")
