"""Forms as they are marked today: as they were issued, with the corrections of their issue."""

import sqlite3
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from typing import Any

from generator.marking.answers import corrected_form
from generator.records.issues import forms_of, unfrozen
from generator.records.sittings.corrections import corrections_of

Plain = Mapping[str, Any]
Changes = Sequence[tuple[str, Plain]]


@dataclass(frozen=True, slots=True)
class IssuedForm:
    """A form in its issue.

    row      its number in the records
    content  plain JSON with the corrections of the issue
    """

    row: int
    issue: int
    blueprint: str
    label: str
    person: str
    content: Plain


def changes_of(connection: sqlite3.Connection, issue: int) -> Changes:
    """Return the item and the change of each correction of an issue, oldest first."""
    return tuple((c.item, c.change) for c in corrections_of(connection, issue))


def corrected_forms(
    connection: sqlite3.Connection, issue: int, further: Changes = ()
) -> Mapping[str, Plain]:
    """Return the plain JSON of every form of an issue by its label, with the issue's corrections.

    further  changes that come on top
    """
    changes = (*changes_of(connection, issue), *further)
    return {
        form.label: corrected_form(form.content, changes) for form in forms_of(connection, issue)
    }


def issued_forms(
    connection: sqlite3.Connection, form_ids: Iterable[str]
) -> Mapping[str, IssuedForm]:
    """Return forms by the ids on their papers; an unknown id and a voided issue give nothing."""
    found: dict[str, IssuedForm] = {}
    changes: dict[int, Changes] = {}
    for form_id in dict.fromkeys(form_ids):
        row = connection.execute(_FORM, (form_id,)).fetchone()
        if row is None:
            continue
        number = int(row["issue"])
        if number not in changes:
            changes[number] = changes_of(connection, number)
        (form,) = unfrozen(connection, [row])
        content = corrected_form({**form.content, "person": form.person}, changes[number])
        place = (int(row["id"]), number, str(row["blueprint"]), form.label, form.person)
        found[form_id] = IssuedForm(*place, content)
    return found


def voided_forms(connection: sqlite3.Connection, form_ids: Iterable[str]) -> Mapping[str, int]:
    """Return the numbers of the voided issues in which forms stand, by form id."""
    found = {}
    for form_id in form_ids:
        row = connection.execute(
            "SELECT f.issue FROM forms f JOIN issues i ON i.id = f.issue"
            " WHERE f.form_id = ? AND f.form_id <> '' AND i.state = 'voided' ORDER BY f.id DESC",
            (form_id,),
        ).fetchone()
        if row is not None:
            found[form_id] = int(row["issue"])
    return found


_FORM = (
    "SELECT f.id, f.issue, i.blueprint, f.label, f.content, f.questions,"
    " coalesce(p.code, '') AS person FROM forms f JOIN issues i ON i.id = f.issue"
    " LEFT JOIN people p ON p.id = f.person"
    " WHERE f.form_id = ? AND f.form_id <> '' AND i.state <> 'voided'"
)
