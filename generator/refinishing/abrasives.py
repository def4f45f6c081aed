"""Abrasive grades: particle sizes from the published table, and steps between grades."""

from collections.abc import Mapping
from fractions import Fraction
from typing import NamedTuple

from generator.diagnostics import OutsideValidity
from generator.refinishing.annotations import Bare, Grades, Micrometre
from generator.refinishing.published_tables import published_table
from generator.refinishing.relation import relation

P_TABLE = "p_grades_2008"
CAMI_TABLE = "cami_grades_2008"


class GradeStep(NamedTuple):
    """How big a step between two grades is."""

    size_ratio: Bare
    grades_between: Grades


@relation(
    equation="grade_size = mean size in the table beside p_grade",
    source="p_grade_table",
    place="P column",
    status="restated",
)
def grade_size(p_grade: Bare) -> Micrometre:
    """Return the mean particle size of a P grade.

    Valid: P12 to P2500, grades of the table only.
    Deviates: grades to P220 are sieved and finer ones are settled out of water, so the two
        halves are measured in different ways.
    Checked: P80 201 µm, P400 35.0 µm, P800 21.8 µm; table cells.
    """
    return _size("P", published_table(P_TABLE).pairs(), p_grade)


@relation(
    equation="cami_size = mean size in the table beside cami_grade",
    source="p_grade_table",
    place="CAMI column",
    status="restated",
)
def cami_size(cami_grade: Bare) -> Micrometre:
    """Return the mean particle size of a CAMI grade.

    Valid: CAMI 24 to 1000, grades of the table only.
    Deviates: a second table prints 268, 192 and 715 µm for CAMI 60, 80 and 24.
    Checked: CAMI 240 53.0 µm, CAMI 400 23.0 µm; table cells.
    """
    return _size("CAMI ", published_table(CAMI_TABLE).pairs(), cami_grade)


@relation(
    equation="nearest_p_grade = P grade whose mean size is nearest to that of cami_grade",
    source="p_grade_table",
    place="P and CAMI columns; nearest by mean size is our rule",
    status="restated",
)
def nearest_p_grade(cami_grade: Bare) -> Bare:
    """Return the P grade with the mean size nearest to a CAMI grade; the coarser one on a tie.

    Valid: CAMI 24 to 1000, grades of the table only.
    Deviates: a list in circulation pairs CAMI 240 with P240 by number; by size it is P280.
    Checked: CAMI 400 is nearest P800, CAMI 240 nearest P280; sizes from the table.
    """
    size = cami_size(cami_grade)
    sizes = published_table(P_TABLE).pairs()
    return min(sizes, key=lambda grade: (abs(sizes[grade] - size), grade))


@relation(
    equation="size_ratio = table size of from_grade ÷ table size of to_grade; "
    "grades_between = count of table grades after from_grade and before to_grade",
    source="p_grade_table",
    place="P column",
    status="restated",
)
def grade_step(from_grade: Bare, to_grade: Bare) -> GradeStep:
    """Return the size ratio of a step to a finer grade and how many grades it skips.

    Valid: P12 to P2500, grades of the table only; the second finer than the first.
    Deviates: how big a step may be is a rule of thumb on which sources differ; no limit is
        given here.
    Checked: P80 to P180 is 2.45 with 3 grades between; sizes from the table.
    """
    if to_grade <= from_grade:
        raise OutsideValidity("The second grade must be finer than the first.")
    ratio = grade_size(from_grade) / grade_size(to_grade)
    between = [g for g in published_table(P_TABLE).pairs() if from_grade < g < to_grade]
    return GradeStep(ratio, Fraction(len(between)))


def _size(kind: str, sizes: Mapping[Fraction, Fraction], grade: Fraction) -> Fraction:
    if grade in sizes:
        return sizes[Fraction(grade)]
    nearest = sorted(sorted(sizes, key=lambda known: abs(known - grade))[:2])
    names = " and ".join(f"{kind}{known}" for known in nearest)
    raise OutsideValidity(f"{kind}{grade} is not in the table; the nearest are {names}.")
