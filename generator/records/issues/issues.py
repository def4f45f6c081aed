"""What was issued: frozen forms that can be printed again and are never changed."""

import json
import sqlite3
from collections import Counter
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from typing import Any

from generator.records.issues.frozen_forms import FrozenForm, forms_of, keep_form
from generator.records.issues.issued_before import refuse_issued_before
from generator.records.issues.stored_questions import items_and_versions, numbers_of
from generator.records.store import (
    Amendment,
    RecordsRefused,
    keep_amendment,
    note,
    plain_text,
    writing,
)


@dataclass(frozen=True, slots=True)
class Issue:
    """One act of issuing papers.

    settings  what the papers were printed with, such as the paper size
    state     pending until its papers were written, then issued; or voided
    """

    number: int
    blueprint: str
    title: str
    seed: str
    edition: str
    bank_hash: str
    settings: Mapping[str, Any]
    issued: str
    state: str
    void_reason: str
    forms: tuple[FrozenForm, ...]


def freeze(
    connection: sqlite3.Connection,
    *,
    blueprint: str,
    title: str,
    seed: str,
    edition: str,
    bank_hash: str,
    settings: Mapping[str, Any],
    forms: Sequence[FrozenForm],
    at: str,
    versions: Mapping[str, str] | None = None,
) -> int:
    """Keep an issue before its papers are written and give its number.

    versions  the version of each item by its id; the bank's hash stands in where none is known
    The issue stays pending until `papers_written`; a pending issue is finished or dropped when
    the program runs next. Raises RecordsRefused for a person who is not in the records, for a
    form that names a person anywhere but in its field `person`, and for one that stands in
    another issue already.
    """
    row = (blueprint, title, seed, edition, bank_hash, plain_text(settings), at)
    with writing(connection):
        refuse_issued_before(connection, forms)
        number = connection.execute(
            "INSERT INTO issues (blueprint, title, seed, edition, bank_hash, settings, issued,"
            " state) VALUES (?, ?, ?, ?, ?, ?, ?, 'pending')",
            row,
        ).lastrowid
        assert number is not None
        for form in forms:
            keep_form(connection, number, form, versions or {}, bank_hash)
        note(connection, at, "issue", f"issue {number}: {blueprint}, {len(forms)} forms")
    return number


def papers_written(connection: sqlite3.Connection, number: int) -> None:
    """Say that every paper of an issue is on the disk."""
    with writing(connection):
        connection.execute(
            "UPDATE issues SET state = 'issued' WHERE id = ? AND state = 'pending'", (number,)
        )


def drop_pending(connection: sqlite3.Connection, number: int) -> bool:
    """Forget an issue whose papers were never written; say whether there was one."""
    with writing(connection):
        where = "(SELECT id FROM issues WHERE id = ? AND state = 'pending')"
        connection.execute(f"DELETE FROM forms WHERE issue IN {where}", (number,))
        gone = connection.execute(
            "DELETE FROM issues WHERE id = ? AND state = 'pending'", (number,)
        )
        return gone.rowcount > 0


def pending_issues(connection: sqlite3.Connection) -> tuple[int, ...]:
    """Return the issues whose papers may be missing."""
    rows = connection.execute("SELECT id FROM issues WHERE state = 'pending' ORDER BY id")
    return tuple(int(row["id"]) for row in rows)


def void(connection: sqlite3.Connection, number: int, reason: str, at: str) -> None:
    """Take an issue out of use for a stated reason; it stays in the records.

    Raises RecordsRefused for an issue that is not there or was voided before.
    """
    if not reason.strip():
        raise RecordsRefused("say why the issue is voided")
    with writing(connection):
        issue = issue_of(connection, number)
        if issue.state == "voided":
            raise RecordsRefused(f"issue {number} was voided already: {issue.void_reason}")
        connection.execute(
            "UPDATE issues SET state = 'voided', void_reason = ?, voided = ? WHERE id = ?",
            (reason.strip(), at, number),
        )
        note(connection, at, "void", f"issue {number}")


def take_back_void(connection: sqlite3.Connection, number: int, reason: str, at: str) -> None:
    """Put a voided issue into use again; why it was voided stays in the records.

    Raises RecordsRefused for an issue that is not voided, and where its papers were issued again
    meanwhile.
    """
    with writing(connection):
        issue = issue_of(connection, number)
        if issue.state != "voided":
            raise RecordsRefused(f"issue {number} is in use; there is nothing to take back")
        refuse_issued_before(connection, issue.forms)
        before = f"voided: {issue.void_reason}"
        keep_amendment(connection, None, Amendment("issue", number, before, "in use", reason, at))
        connection.execute(
            "UPDATE issues SET state = 'issued', void_reason = '', voided = '' WHERE id = ?",
            (number,),
        )


def issue_of(connection: sqlite3.Connection, number: int) -> Issue:
    """Return an issue with its forms; raises RecordsRefused when there is none."""
    row = connection.execute("SELECT * FROM issues WHERE id = ?", (number,)).fetchone()
    if row is None:
        raise RecordsRefused(f"there is no issue {number} in the records")
    return Issue(
        number=number,
        blueprint=row["blueprint"],
        title=row["title"],
        seed=row["seed"],
        edition=row["edition"],
        bank_hash=row["bank_hash"],
        settings=json.loads(row["settings"]),
        issued=row["issued"],
        state=row["state"],
        void_reason=row["void_reason"],
        forms=forms_of(connection, number),
    )


def exposure(connection: sqlite3.Connection) -> Mapping[str, int]:
    """Count how often each item stands on a form that was issued and not voided."""
    counts = Counter[int]()
    for row in connection.execute(f"SELECT f.questions {_NOT_VOIDED}"):
        counts.update(numbers_of(row["questions"]))
    known = items_and_versions(connection)
    items = Counter[str]()
    for number, count in counts.items():
        items[known[number][0]] += count
    return dict(items)


def items_met(connection: sqlite3.Connection, person: str) -> frozenset[str]:
    """Return the items that stood on any form made for a person."""
    rows = connection.execute(
        f"SELECT f.questions {_NOT_VOIDED} AND f.person = (SELECT id FROM people WHERE code = ?)",
        (person,),
    )
    met = {number for row in rows for number in numbers_of(row["questions"])}
    known = items_and_versions(connection) if met else {}
    return frozenset(known[number][0] for number in met)


_NOT_VOIDED = "FROM forms f JOIN issues i ON i.id = f.issue WHERE i.state <> 'voided'"
