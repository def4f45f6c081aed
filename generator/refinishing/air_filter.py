"""The pressure gauge over a booth filter."""

from fractions import Fraction
from typing import NamedTuple

from generator.diagnostics import OutsideValidity
from generator.refinishing.annotations import InchOfWater
from generator.refinishing.bounds import require_not_below_zero
from generator.refinishing.relation import relation

FILTER_CARE = (
    "The booth maker's limit decides, and it says whether it is a reading or a rise. Loaded "
    "filters can heat up by themselves: take them at once to a safe place outside or into a "
    "water-filled metal can."
)


class FilterState(NamedTuple):
    """How far a filter has loaded, and how much is left to its limit."""

    rise: InchOfWater
    left: InchOfWater


@relation(
    equation="rise = now - clean; left = change_at - now",
    source="wac_24_370",
    place="296-24-37003(5), a gauge must show that air flow is held; the rest is subtraction",
    status="read",
    caution=FILTER_CARE,
)
def filter_by_reading(clean: InchOfWater, now: InchOfWater, change_at: InchOfWater) -> FilterState:
    """Return a filter's rise and what is left when the limit is a reading of the gauge.

    Valid: readings from zero up; now not below clean; the limit above the clean reading.
    Deviates: none; at nothing left or less the filter is changed now.
    Checked: 0.15 clean, 0.40 now and a limit of 0.50 is a rise of 0.25 with 0.10 left; 0.40 is
        99.6 Pa; arithmetic.
    """
    rise = _rise(clean, now)
    if change_at <= clean:
        raise OutsideValidity("A limit read off the gauge must be above the clean reading.")
    return FilterState(rise, Fraction(change_at) - now)


@relation(
    equation="rise = now - clean; left = change_rise - rise",
    source="wac_24_370",
    place="296-24-37003(5), a gauge must show that air flow is held; the rest is subtraction",
    status="read",
    caution=FILTER_CARE,
)
def filter_by_rise(clean: InchOfWater, now: InchOfWater, change_rise: InchOfWater) -> FilterState:
    """Return a filter's rise and what is left when the limit is a rise above clean.

    Valid: readings from zero up; now not below clean; the allowed rise above zero.
    Deviates: none; at nothing left or less the filter is changed now.
    Checked: 0.15 clean, 0.40 now and an allowed rise of 0.50 leaves 0.25; arithmetic.
    """
    rise = _rise(clean, now)
    if change_rise <= 0:
        raise OutsideValidity("The allowed rise must be above zero.")
    return FilterState(rise, change_rise - rise)


def _rise(clean: Fraction, now: Fraction) -> Fraction:
    require_not_below_zero(clean_reading=clean, reading_now=now)
    if now < clean:
        raise OutsideValidity(
            "The gauge reads less than with clean filters: look for a torn or missing filter or a"
            " weak fan."
        )
    return Fraction(now) - clean
