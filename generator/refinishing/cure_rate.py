"""Pot life and cure time at another temperature, by the ten-degree rule."""

from fractions import Fraction

from generator.diagnostics import OutsideValidity
from generator.refinishing.annotations import Bare, Celsius, Minute
from generator.refinishing.bounds import require_above_zero
from generator.refinishing.climate import exact_from
from generator.refinishing.relation import relation

COLDEST, WARMEST = 0, 50  # degrees Celsius
LONGEST_STEP = 15  # kelvins
TEN = Fraction(10)
TWICE = Fraction(2)

RULE_OF_THUMB = (
    "A rule of thumb for the reaction of two-pack products, never for flash-off, which is solvent "
    "leaving. The data sheet's own times and lowest temperature decide."
)
SELF_HEATING = (
    "A large pot heats itself and sets sooner. When a mix thickens or gets warm, stop and treat "
    "it as waste with the lid loose."
)


@relation(
    equation="cure_time_at = reference_time × factor^n, with"
    " n = (reference_temperature - new_temperature) ÷ 10 K",
    source="rate_rule_note",
    place="ten-degree rule, 60 min cure at 25 °C",
    status="restated",
    rounding={"cure_time_at": "up"},
    limit={"cure_time_at": "minimum"},
    caution=RULE_OF_THUMB + " Do not raise oven or lamp to catch up.",
)
def cure_time_at(
    reference_time: Minute,
    reference_temperature: Celsius,
    new_temperature: Celsius,
    factor: Bare = TWICE,
) -> Minute:
    """Return about how long a two-pack product cures at another temperature; round it up.

    Valid: 0 to 50 °C and steps of at most 15 K; reaction only, not flash-off, air drying or
        moisture cure; not below the product's lowest temperature; factor for each 10 K above 1.
    Deviates: a rule of thumb; the factor 2 fits some products near 25 °C and none in an oven.
    Checked: 60 min at 25 °C is 30 min at 35 °C, as the note prints; 240 min at 20 °C is
        339.4 min at 15 °C by the same rule, our numbers.
    """
    return _time_at(reference_time, reference_temperature, new_temperature, factor)


@relation(
    equation="pot_life_at = reference_life × factor^n, with"
    " n = (reference_temperature - new_temperature) ÷ 10 K",
    source="rate_rule_note",
    place="ten-degree rule, gel time 10 min at 25 °C",
    status="restated",
    rounding={"pot_life_at": "down"},
    limit={"pot_life_at": "maximum"},
    caution=RULE_OF_THUMB + " " + SELF_HEATING,
)
def pot_life_at(
    reference_life: Minute,
    reference_temperature: Celsius,
    new_temperature: Celsius,
    factor: Bare = TWICE,
) -> Minute:
    """Return about how long a mix stays usable at another temperature; round it down.

    Valid: 0 to 50 °C and steps of at most 15 K; two-pack mixes of the size the sheet means.
    Deviates: a rule of thumb; a large pot heats itself and gels sooner.
    Checked: 10 min at 25 °C is 5 min at 35 °C, as the note prints.
    """
    return _time_at(reference_life, reference_temperature, new_temperature, factor)


def _time_at(time: Fraction, reference: Fraction, new: Fraction, factor: Fraction) -> Fraction:
    require_above_zero(reference_time=time)
    if not (COLDEST <= reference <= WARMEST and COLDEST <= new <= WARMEST):
        raise OutsideValidity("The ten-degree rule holds from 0 °C to 50 °C only.")
    if abs(reference - new) > LONGEST_STEP:
        raise OutsideValidity("Keep the step of the ten-degree rule to 15 K or less.")
    if factor <= 1:
        raise OutsideValidity("The factor for each 10 K must be above 1.")
    steps = (Fraction(reference) - new) / TEN
    if steps.denominator == 1:
        return time * Fraction(factor) ** steps.numerator
    return exact_from(float(time) * float(factor) ** float(steps))
