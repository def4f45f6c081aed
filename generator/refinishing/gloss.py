"""Gloss levels from readings at 60 and 85 degrees."""

from fractions import Fraction

from generator.diagnostics import OutsideValidity
from generator.refinishing.annotations import Bare, GlossUnit
from generator.refinishing.bounds import require_above_zero, require_not_below_zero
from generator.refinishing.relation import relation

NOT_MEASURED = Fraction(0)
NEEDS_SHALLOW_ANGLE = 35
WITHOUT_END = 10_000
# level: lowest and highest reading at 60 degrees, then at 85 degrees
BANDS = {
    1: ((0, 5), (0, 10)),
    2: ((0, 10), (10, 35)),
    3: ((10, 25), (10, 35)),
    4: ((20, 35), (35, WITHOUT_END)),
    5: ((35, 70), (0, WITHOUT_END)),
    6: ((70, 85), (0, WITHOUT_END)),
    7: ((85, WITHOUT_END), (0, WITHOUT_END)),
}


@relation(
    equation="gloss_level = level whose bands in the table hold gloss_60 and gloss_85",
    source="gloss_levels_mpi",
    place="levels 1 to 7",
    status="read",
)
def gloss_level(gloss_60: GlossUnit, gloss_85: GlossUnit = NOT_MEASURED) -> Bare:
    """Return the gloss level of the seven-step scheme from the readings at 60 and 85 degrees.

    Valid: readings above zero; below 35 at 60° the reading at 85° must be there too; a reading
        on the line between two levels is refused.
    Deviates: other schemes cut elsewhere, so name the scheme.
    Checked: 45 and 60 are level 5, 78 is 6, 90 is 7; bands read, numbers ours.
    """
    require_above_zero(reading_at_60_degrees=gloss_60)
    require_not_below_zero(reading_at_85_degrees=gloss_85)
    if gloss_60 < NEEDS_SHALLOW_ANGLE and gloss_85 == NOT_MEASURED:
        raise OutsideValidity("Below 35 at 60° the level also needs the reading at 85°.")
    fitting = [
        level
        for level, (at_60, at_85) in BANDS.items()
        if at_60[0] <= gloss_60 <= at_60[1] and at_85[0] <= gloss_85 <= at_85[1]
    ]
    if not fitting:
        raise OutsideValidity("These two readings together fit no level of the scheme.")
    if len(fitting) > 1:
        raise OutsideValidity("These readings lie on the line between two levels.")
    return Fraction(fitting[0])
