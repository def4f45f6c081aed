"""Forms as they are marked today: as they were issued, with the corrections of their issue."""

import sqlite3
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass

from generator.issued import IssuedForm
from generator.marking.answers import Change, corrected_form
from generator.records.issues import forms_of, unfrozen
from generator.records.sittings.corrections import corrections_of

Changes = Sequence[tuple[str, Change]]


@dataclass(frozen=True, slots=True)
class StoredForm:
    """A form in its issue.

    row          its number in the records
    content      with the corrections of the issue
    corrections  how many those are
    """

    row: int
    issue: int
    blueprint: str
    label: str
    person: str
    content: IssuedForm
    corrections: int = 0


def changes_of(connection: sqlite3.Connection, issue: int) -> Changes:
    """Return the item and the change of each correction of an issue, oldest first."""
    return tuple((c.item, c.change) for c in corrections_of(connection, issue))


def corrected_forms(
    connection: sqlite3.Connection, issue: int, further: Changes = ()
) -> Mapping[str, IssuedForm]:
    """Return every form of an issue by its label, with the issue's corrections.

    further  changes that come on top
    """
    changes = (*changes_of(connection, issue), *further)
    return {
        form.label: corrected_form(form.content, changes) for form in forms_of(connection, issue)
    }


def issued_forms(
    connection: sqlite3.Connection, form_ids: Iterable[str]
) -> Mapping[str, StoredForm]:
    """Return forms by the ids on their papers; an unknown id and a voided issue have none."""
    found: dict[str, StoredForm] = {}
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
        found[form_id] = StoredForm(*place, content, len(changes[number]))
    return found


def up_to_date(
    connection: sqlite3.Connection, form_ids: Iterable[str], loaded: Mapping[str, StoredForm]
) -> Mapping[str, StoredForm]:
    """Return forms by the ids on their papers; those loaded before are read again only if changed.

    loaded  as `issued_forms` gave them a while ago
    """
    ids = tuple(dict.fromkeys(form_ids))
    same = {n: loaded[n] for n in ids if n in loaded and _is_same(connection, loaded[n])}
    again = issued_forms(connection, (form_id for form_id in ids if form_id not in same))
    return {**same, **again}


def _is_same(connection: sqlite3.Connection, form: StoredForm) -> bool:
    """Return whether a form is in use, for the same person and with no further correction."""
    row = connection.execute(
        "SELECT coalesce(p.code, '') AS person, i.state,"
        " (SELECT count(*) FROM corrections c WHERE c.issue = i.id) AS corrections"
        " FROM forms f JOIN issues i ON i.id = f.issue LEFT JOIN people p ON p.id = f.person"
        " WHERE f.id = ?",
        (form.row,),
    ).fetchone()
    now = (form.person, form.corrections)
    return row is not None and row["state"] != "voided" and (row[0], row[2]) == now


def voided_forms(connection: sqlite3.Connection, form_ids: Iterable[str]) -> Mapping[str, int]:
    """Return the numbers of the voided issues that hold the forms, by form id."""
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
