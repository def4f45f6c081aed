"""How long a noise may last: the reference of the dose, the table of the limit, the advice."""

from fractions import Fraction

from generator.diagnostics import OutsideValidity
from generator.refinishing.annotations import Decibel, Hour, Minute
from generator.refinishing.climate import exact_from
from generator.refinishing.published_tables import published_table
from generator.refinishing.relation import relation

PERMISSIBLE_TABLE = "noise_durations_g16"
QUIETEST, LOUDEST = 80, 130
WORKING_DAY = 8  # hours
HEARING = (
    "Wear the hearing protection the area is marked for; other countries set lower limits, and "
    "the law where you work decides."
)


@relation(
    equation="reference_duration = 8 h ÷ 2^((level - 90) ÷ 5), with the level in dBA",
    source="osha_95",
    place="29 CFR 1910.95 appendix A, Table G-16a",
    status="read",
    caution=HEARING,
)
def reference_duration(level: Decibel) -> Hour:
    """Return the reference duration T of Table G-16a, which the noise dose is worked out with.

    Valid: 80 to 130 dBA.
    Deviates: it does not allow you to stay that long; the permissible time stands in Table G-16.
    Checked: 95 dBA is 4.0 h, 92 dBA 6.1 h, 83 dBA 21.1 h; the table prints the same, its
        current page 21.2 for the last.
    """
    _require_table_level(level)
    return exact_from(WORKING_DAY / 2 ** ((float(level) - 90) / 5))


@relation(
    equation="permissible_duration = hours beside level in the table",
    source="osha_95_table_g16",
    place="29 CFR 1910.95(b), Table G-16",
    status="from_memory",
    rounding={"permissible_duration": "down"},
    limit={"permissible_duration": "maximum"},
    caution=HEARING,
)
def permissible_duration(level: Decibel) -> Hour:
    """Return the permissible duration of Table G-16 at a noise level.

    Valid: the levels printed in the table, 90 to 115 dBA.
    Deviates: rounded whole or half hours; the reference of Table G-16a is another figure.
    Checked: 92 dBA is 6 h in this table and 6.1 h in Table G-16a; the 6 was read, the other
        rows are from memory.
    """
    hours = published_table(PERMISSIBLE_TABLE).pairs()
    if level not in hours:
        raise OutsideValidity("Table G-16 has no row for this level.")
    return hours[Fraction(level)]


@relation(
    equation="recommended_duration = 480 min ÷ 2^((level - 85) ÷ 3), with the level in dBA",
    source="niosh_98_126",
    place="criterion of 85 dBA with an exchange rate of 3 dB",
    status="restated",
    rounding={"recommended_duration": "down"},
    limit={"recommended_duration": "maximum"},
    caution=HEARING,
)
def recommended_duration(level: Decibel) -> Minute:
    """Return the longest time NIOSH recommends at a noise level; round it down.

    Valid: 80 to 130 dBA.
    Deviates: advice, stricter than the US limit: the time halves with every 3 dB, not 5.
    Checked: 100 dBA is 15 min, 95 dBA 47.6 min, 103 dBA 7.5 min; a table prints the same.
    """
    _require_table_level(level)
    return exact_from(480 / 2 ** ((float(level) - 85) / 3))


def _require_table_level(level: Fraction) -> None:
    if not QUIETEST <= level <= LOUDEST:
        raise OutsideValidity("The noise level must be from 80 to 130 dBA.")
