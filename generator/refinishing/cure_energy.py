"""Cure time at another temperature from the energy the reaction needs."""

from fractions import Fraction
from math import exp, log

from generator.diagnostics import OutsideValidity
from generator.refinishing.annotations import Celsius, Minute
from generator.refinishing.annotations_air_and_cure import KilojoulePerMole
from generator.refinishing.bounds import require_above_zero
from generator.refinishing.climate import exact_from
from generator.refinishing.cure_rate import RULE_OF_THUMB
from generator.refinishing.relation import relation

GAS_CONSTANT = 8.314462618  # joules per mole and kelvin
ZERO_CELSIUS = Fraction("273.15")
COLDEST, WARMEST = 0, 150


@relation(
    equation="cure_time_by_energy = reference_time × exp(activation_energy ÷ R × (1 ÷ T2"
    " - 1 ÷ T1)), with R = 8.3145 J/(mol K), T1 = reference_temperature + 273.15 and"
    " T2 = new_temperature + 273.15 in kelvin",
    source="arrhenius_textbook",
    place="rate of a reaction against temperature",
    status="from_memory",
    rounding={"cure_time_by_energy": "up"},
    caution=RULE_OF_THUMB + " Do not raise oven or lamp to catch up.",
)
def cure_time_by_energy(
    reference_time: Minute,
    reference_temperature: Celsius,
    new_temperature: Celsius,
    activation_energy: KilojoulePerMole,
) -> Minute:
    """Return about how long a reaction takes at another temperature; round it up.

    Valid: 0 to 150 °C; reaction only, at the metal's temperature; energy above zero.
    Deviates: from memory; a real coating slows down late in the cure and has its own schedule.
    Checked: 30 min at 60 °C with 50 kJ/mol is 17.7 min at 70 °C; derived apart, not published.
    """
    require_above_zero(reference_time=reference_time, activation_energy=activation_energy)
    reference, new = _kelvins(reference_temperature), _kelvins(new_temperature)
    energy = float(activation_energy) * 1000
    return exact_from(
        float(reference_time) * exp(energy / GAS_CONSTANT * (1 / new - 1 / reference))
    )


@relation(
    equation="energy_for_doubling = R × ln 2 ÷ (1 ÷ T1 - 1 ÷ T2), with"
    " R = 8.3145 J/(mol K), T1 = low_temperature + 273.15 and"
    " T2 = high_temperature + 273.15 in kelvin",
    source="arrhenius_textbook",
    place="rate of a reaction against temperature, solved for the energy",
    status="from_memory",
)
def energy_for_doubling(low_temperature: Celsius, high_temperature: Celsius) -> KilojoulePerMole:
    """Return the energy with which a reaction doubles its rate between two temperatures.

    Valid: 0 to 150 °C; the second temperature above the first.
    Deviates: from memory.
    Checked: 20 to 30 °C needs 51.2 kJ/mol and 130 to 140 °C needs 96, so no one rule of doubling
        holds from shop to oven; derived apart, not published.
    """
    low, high = _kelvins(low_temperature), _kelvins(high_temperature)
    if high <= low:
        raise OutsideValidity("The second temperature must be above the first.")
    return exact_from(GAS_CONSTANT * log(2) / (1 / low - 1 / high) / 1000)


def _kelvins(temperature: Fraction) -> float:
    if not COLDEST <= temperature <= WARMEST:
        raise OutsideValidity("The temperature must be from 0 °C to 150 °C.")
    return float(temperature + ZERO_CELSIUS)
