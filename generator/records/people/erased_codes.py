"""Codes of people who were erased: a fingerprint stays, so that no old roster brings them back.

The fingerprint is SHA-256 of the code as it is read out; it cannot be read back into a code.
"""

import re
import sqlite3
from collections.abc import Iterable
from hashlib import sha256

from generator.records.store import RecordsRefused


def keep_fingerprint(connection: sqlite3.Connection, code: str) -> None:
    """Remember that a code was erased, inside the writing that is under way."""
    connection.execute(
        "INSERT INTO erased_codes (digest) VALUES (?) ON CONFLICT DO NOTHING", (_fingerprint(code),)
    )


def was_erased(connection: sqlite3.Connection, code: str) -> bool:
    """Say whether the person with this code was erased."""
    row = connection.execute(
        "SELECT 1 FROM erased_codes WHERE digest = ?", (_fingerprint(code),)
    ).fetchone()
    return row is not None


def refuse_erased(connection: sqlite3.Connection, codes: Iterable[str]) -> None:
    """Raise RecordsRefused where a roster holds the code of somebody who was erased."""
    gone = [code for code in codes if was_erased(connection, code)]
    if gone:
        named = ", ".join(f"'{code}'" for code in gone)
        one = len(gone) == 1
        raise RecordsRefused(
            f"{named} {'was' if one else 'were'} erased from these records; take "
            f"{'that line' if one else 'those lines'} out of the roster. Somebody who comes back "
            "gets a new code"
        )


def _fingerprint(code: str) -> bytes:
    spoken = re.sub(r"[\s._-]+", " ", code).strip().casefold()
    return sha256(f"code of an erased person: {spoken}".encode()).digest()
