"""Which papers are in the records already, by their ids or by what was asked for."""

import sqlite3
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass

from generator.records.issues.frozen_forms import FrozenForm
from generator.records.store import RecordsRefused


@dataclass(frozen=True, slots=True)
class FormPlace:
    """Where a form stands: the number of its issue and its label there."""

    issue: int
    label: str


@dataclass(frozen=True, slots=True)
class IssueLine:
    """An issue in a list: how many forms it has, and how many of them were answered."""

    number: int
    blueprint: str
    issued: str
    voided: bool
    void_reason: str
    forms: int
    sittings: int


def all_issues(connection: sqlite3.Connection) -> tuple[IssueLine, ...]:
    """Return every issue, oldest first."""
    rows = connection.execute(
        "SELECT i.id, i.blueprint, i.issued, i.state, i.void_reason,"
        " count(DISTINCT f.id) AS forms, count(s.id) AS sittings FROM issues i"
        " LEFT JOIN forms f ON f.issue = i.id"
        " LEFT JOIN sittings s ON s.form = f.id AND s.replaced = 0 GROUP BY i.id ORDER BY i.id"
    )
    return tuple(
        IssueLine(
            number=int(row["id"]),
            blueprint=row["blueprint"],
            issued=row["issued"],
            voided=row["state"] == "voided",
            void_reason=row["void_reason"],
            forms=int(row["forms"]),
            sittings=int(row["sittings"]),
        )
        for row in rows
    )


def voided_words(issue: int) -> str:
    """Say that an issue does not count, and how to use it again."""
    return (
        f"issue {issue} was voided; its marks do not count. To use it again: "
        f"guidecoat records void {issue} --take-back --reason ..."
    )


def forms_by_id(connection: sqlite3.Connection, form_ids: Iterable[str]) -> Mapping[str, FormPlace]:
    """Find forms by the ids that their papers carry; voided issues do not count."""
    found = {}
    for form_id in form_ids:
        row = connection.execute(
            "SELECT f.issue, f.label FROM forms f JOIN issues i ON i.id = f.issue"
            " WHERE f.form_id = ? AND f.form_id <> '' AND i.state <> 'voided'",
            (form_id,),
        ).fetchone()
        if row is not None:
            found[form_id] = FormPlace(int(row["issue"]), row["label"])
    return found


def ids_of_forms(connection: sqlite3.Connection) -> tuple[str, ...]:
    """Return the id of every form in use, in the order of issuing."""
    rows = connection.execute(
        "SELECT f.form_id FROM forms f JOIN issues i ON i.id = f.issue"
        " WHERE f.form_id <> '' AND i.state <> 'voided' ORDER BY f.id"
    )
    return tuple(row["form_id"] for row in rows)


def same_request(
    connection: sqlite3.Connection,
    blueprint: str,
    seed: str,
    bank_hash: str,
    seats: Sequence[tuple[str, str]],
) -> int | None:
    """Return the issue in use that answers the same request, if there is one.

    seats  label and person's code of each form, in order
    """
    rows = connection.execute(
        "SELECT id FROM issues WHERE blueprint = ? AND seed = ? AND bank_hash = ?"
        " AND state <> 'voided' ORDER BY id",
        (blueprint, seed, bank_hash),
    )
    for number in [int(row["id"]) for row in rows]:
        if _seats(connection, number) == tuple(seats):
            return number
    return None


def _seats(connection: sqlite3.Connection, number: int) -> tuple[tuple[str, str], ...]:
    rows = connection.execute(
        "SELECT f.label, coalesce(p.code, '') AS person FROM forms f"
        " LEFT JOIN people p ON p.id = f.person WHERE f.issue = ? ORDER BY f.id",
        (number,),
    )
    return tuple((row["label"], row["person"]) for row in rows)


def refuse_issued_before(connection: sqlite3.Connection, forms: Sequence[FrozenForm]) -> None:
    """Raise RecordsRefused when a form stands in an issue that is in use."""
    known = forms_by_id(connection, (form.form_id for form in forms))
    for form_id, place in known.items():
        raise RecordsRefused(
            f"form {form_id} was issued before, as form {place.label} of issue {place.issue}; "
            f"take another seed, or void issue {place.issue} first"
        )
