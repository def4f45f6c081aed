"""Reports on real papers: a class that sat the new-hire check and the final paper."""

from collections.abc import Mapping
from datetime import date
from functools import cache
from pathlib import Path
from tempfile import TemporaryDirectory
from typing import Any

from generator.reports import (
    analyse_pool,
    class_report,
    course_names,
    paperwork_of,
    person_report,
    pooled,
    procedure_names,
    profile,
    sat_issue,
)
from tests.records.real_bank import real_bank
from tests.reports.sat import apprentices, issued, real_forms, records_with, sit, some_wrong

TODAY = date(2026, 11, 25)


@cache
def real_reports(blueprint: str, people: int, every: int = 2) -> Mapping[str, dict[str, Any]]:
    """Return the reports of a class of which the person at place n misses every (n + every)-th.

    The person and the profile are those who missed most.
    """
    class_of = apprentices(people)
    codes = tuple(person.code for person in class_of)
    names = course_names(real_bank())
    with TemporaryDirectory() as folder, records_with(Path(folder), class_of) as connection:
        forms = real_forms(blueprint, codes)
        number = issued(connection, forms, codes)
        for place, form in enumerate(forms):
            count = len(form["questions"])
            sit(connection, number, form, some_wrong(*range(1, count + 1, place + every)))
        sat = sat_issue(connection, number)
        worst = sat.papers[0]
        known = paperwork_of(connection, worst.person)
        procedures = procedure_names(real_bank())
        return {
            "person": person_report(worst, names),
            "class": class_report(sat, names, analyse_pool(pooled(connection, [sat.issue.number]))),
            "profile": profile(worst, names, known, procedures, TODAY),
        }
