"""What is in the air somebody breathes: averages over a shift and mixtures."""

from fractions import Fraction

from generator.diagnostics import OutsideValidity
from generator.refinishing.annotations import Bare, Hour, MilligramPerCubicMetre, PartPerMillion
from generator.refinishing.bounds import require_above_zero, require_not_below_zero
from generator.refinishing.relation import relation

NOTHING, WHOLE = Fraction(0), Fraction(1)
WORKING_DAY = 8  # hours
LONGEST_DAY = 24  # hours
AIR_CAUTION = (
    "Being under the average does not clear you: short peaks have limits of their own, skin "
    "contact is not counted, and the safety data sheet decides on protection."
)
_DAY_AVERAGE = (
    "(concentration_1 × time_1 + concentration_2 × time_2 + concentration_3 × time_3"
    " + concentration_4 × time_4) ÷ 8"
)


@relation(
    equation=f"time_weighted_average = {_DAY_AVERAGE}",
    source="osha_1000",
    place="29 CFR 1910.1000(d)(1), worked example",
    status="read",
    caution=AIR_CAUTION,
)
def time_weighted_average(
    concentration_1: PartPerMillion,
    time_1: Hour,
    concentration_2: PartPerMillion = NOTHING,
    time_2: Hour = NOTHING,
    concentration_3: PartPerMillion = NOTHING,
    time_3: Hour = NOTHING,
    concentration_4: PartPerMillion = NOTHING,
    time_4: Hour = NOTHING,
) -> PartPerMillion:
    """Return the average of a vapour over the 8-hour day, from one to four spells.

    Valid: all from zero up; at most 24 h; time without exposure counts as zero.
    Deviates: always divided by 8 h, however long the shift was.
    Checked: 150, 75, 50 ppm for 2, 2, 4 h is 81.25 ppm; the rule prints the same.
    """
    return _day_average(
        (concentration_1, concentration_2, concentration_3, concentration_4),
        (time_1, time_2, time_3, time_4),
    )


@relation(
    equation=f"dust_average = {_DAY_AVERAGE}",
    source="osha_1000",
    place="29 CFR 1910.1000(d)(1), same rule for dust",
    status="read",
    caution=AIR_CAUTION,
)
def dust_average(
    concentration_1: MilligramPerCubicMetre,
    time_1: Hour,
    concentration_2: MilligramPerCubicMetre = NOTHING,
    time_2: Hour = NOTHING,
    concentration_3: MilligramPerCubicMetre = NOTHING,
    time_3: Hour = NOTHING,
    concentration_4: MilligramPerCubicMetre = NOTHING,
    time_4: Hour = NOTHING,
) -> MilligramPerCubicMetre:
    """Return the average of a dust over the 8-hour day, from one to four spells.

    Valid: all from zero up; at most 24 h; time without exposure counts as zero.
    Deviates: always divided by 8 h, however long the shift was.
    Checked: 12 mg/m³ for 2 h and 3 mg/m³ for 4 h is 4.5 mg/m³; our numbers, published rule.
    """
    return _day_average(
        (concentration_1, concentration_2, concentration_3, concentration_4),
        (time_1, time_2, time_3, time_4),
    )


@relation(
    equation="mixture_sum = concentration_1 ÷ limit_1 + concentration_2 ÷ limit_2"
    " + concentration_3 ÷ limit_3 + concentration_4 ÷ limit_4",
    source="osha_1000",
    place="29 CFR 1910.1000(d)(2)",
    status="read",
    caution=AIR_CAUTION,
)
def mixture_sum(
    concentration_1: PartPerMillion,
    limit_1: PartPerMillion,
    concentration_2: PartPerMillion,
    limit_2: PartPerMillion,
    concentration_3: PartPerMillion = NOTHING,
    limit_3: PartPerMillion = WHOLE,
    concentration_4: PartPerMillion = NOTHING,
    limit_4: PartPerMillion = WHOLE,
) -> Bare:
    """Return the sum of each vapour over its own limit; a sum above 1 is over the limit.

    Valid: concentrations from zero up, limits above zero, averages over the same time.
    Deviates: for vapours that harm in the same way; a sensitiser is judged on its own.
    Checked: 500 of 1000, 45 of 200 and 40 of 200 ppm is 0.925; inputs from the rule, result ours.
    """
    concentrations = (concentration_1, concentration_2, concentration_3, concentration_4)
    limits = (limit_1, limit_2, limit_3, limit_4)
    require_not_below_zero(concentration=min(concentrations))
    require_above_zero(limit=min(limits))
    shares = (Fraction(c) / limit for c, limit in zip(concentrations, limits, strict=True))
    return sum(shares, NOTHING)


def _day_average(concentrations: tuple[Fraction, ...], times: tuple[Fraction, ...]) -> Fraction:
    require_not_below_zero(concentration=min(concentrations), time=min(times))
    if sum(times) > LONGEST_DAY:
        raise OutsideValidity("The spells must not be longer than 24 h together.")
    breathed = (c * t for c, t in zip(concentrations, times, strict=True))
    return sum(breathed, NOTHING) / WORKING_DAY
