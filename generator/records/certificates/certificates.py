"""Training certificates: what a person's records show on the day, frozen with the trainer's name.

A certificate repeats the records; the trainer who signs it certifies, not the program.
"""

import json
import sqlite3
from collections.abc import Iterator
from dataclasses import dataclass
from datetime import date
from typing import Any

from generator.records.certificates.certificate_content import certificate_content
from generator.records.people import person_id, person_of
from generator.records.store import RecordsRefused, note, plain_text, writing

Plain = dict[str, Any]
SIGNERS = ("trainer", "lead")


@dataclass(frozen=True, slots=True)
class Certificate:
    """A certificate as it was issued.

    content  plain JSON: person, trainer, papers, practice, topics, dates, reminders, not_said;
             those issued by an earlier version have no reminders
    """

    number: int
    person: str
    issued: str
    content: Plain


@dataclass(frozen=True, slots=True)
class Training:
    """What the bank says about the training.

    edition  of the bank, as the foot of every paper names it
    plans    names of the plans whose papers serve the certificate
    """

    edition: str
    plans: frozenset[str]


def certify(
    connection: sqlite3.Connection,
    code: str,
    trainer: str,
    training: Training,
    at: str,
    today: date,
) -> Certificate:
    """Freeze a certificate for a person from the records as they stand.

    Raises RecordsRefused with every part that is missing and what supplies it, or when the trainer
    is the person, or is neither trainer nor lead.
    """
    with writing(connection):
        row, person = person_of(connection, code)
        trainer_row, signer = person_of(connection, trainer)
        if row == trainer_row:
            raise RecordsRefused("nobody certifies themselves; name another trainer")
        if signer.role not in SIGNERS:
            raise RecordsRefused(f"'{trainer}' is a {signer.role}; a trainer or lead signs")
        content = certificate_content(
            connection, person, signer, training.edition, training.plans, today
        )
        issued = today.isoformat()
        number = connection.execute(
            "INSERT INTO certificates (person, trainer, content, issued) VALUES (?, ?, ?, ?)",
            (row, trainer_row, plain_text(content), issued),
        ).lastrowid
        assert number is not None
        note(connection, at, "certificate", f"certificate {number}")
    return Certificate(number, code, issued, content)


def certificates_of(connection: sqlite3.Connection, code: str) -> tuple[Certificate, ...]:
    """Return the certificates of a person, oldest first; raises RecordsRefused for nobody."""
    rows = connection.execute(
        f"{_CERTIFICATES} WHERE c.person = ? ORDER BY c.id", (person_id(connection, code),)
    )
    return tuple(map(_certificate, rows))


def certificate_of(connection: sqlite3.Connection, number: int) -> Certificate:
    """Return a certificate by its number; raises RecordsRefused when there is none."""
    row = connection.execute(f"{_CERTIFICATES} WHERE c.id = ?", (number,)).fetchone()
    if row is None:
        raise RecordsRefused(f"there is no certificate {number} in the records")
    return _certificate(row)


def all_certificates(connection: sqlite3.Connection) -> Iterator[Certificate]:
    """Return every certificate, by number."""
    return map(_certificate, connection.execute(f"{_CERTIFICATES} ORDER BY c.id"))


_CERTIFICATES = (
    "SELECT c.id, p.code AS person, c.issued, c.content FROM certificates c"
    " JOIN people p ON p.id = c.person"
)


def _certificate(row: sqlite3.Row) -> Certificate:
    return Certificate(int(row["id"]), row["person"], row["issued"], json.loads(row["content"]))
