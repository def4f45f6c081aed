"""Takes a person out of the records: no code and no name is left anywhere in the file.

What a person answered stays without them, for statistics. SQLite overwrites what is deleted with
zeros, but a copy of a moved row may stay in the slack of its old page; so the tables that hold
codes, names or free texts are emptied, which clears whole pages, and written again.
"""

import sqlite3
from dataclasses import dataclass

from generator.records.leaving.redaction import clean_answers, clean_texts
from generator.records.people import keep_fingerprint, person_of
from generator.records.store import RecordsRefused, note, writing

# links from rows that stay to people who may go
LINKS = (
    ("forms", "person"),
    ("sittings", "person"),
    ("sittings", "marker"),
    ("corrections", "decided_by"),
    ("observations", "observer"),
    ("certificates", "trainer"),
)
OWNED = ("observations", "dated_facts", "certificates", "amendments")
# tables with codes, names or free texts; all of them small
NAMING = ("people", "issues", "corrections", *OWNED, "diary")


@dataclass(frozen=True, slots=True)
class Erased:
    """What is left to do by hand after a person was erased.

    row           the number the person had, by which files were named
    certificates  of the person; their printed files must go too
    reprint       of other people, which named the person
    pages_clear   False while another program keeps old pages in the file beside the records
    """

    row: int
    certificates: tuple[int, ...]
    reprint: tuple[int, ...]
    pages_clear: bool


def erase_person(connection: sqlite3.Connection, code: str, at: str) -> Erased:
    """Erase a person; raises RecordsRefused for nobody.

    A fingerprint of the code stays, so that an old roster does not bring the person back.

    A nickname that somebody typed into a note cannot be known and stays.
    """
    # SQLite changes this setting only outside a transaction; links are cut by hand
    connection.execute("PRAGMA foreign_keys = OFF")
    try:
        with writing(connection):
            row, own, reprint, typed = _take_out(connection, code)
            note(connection, at, "erase", "one person erased")
            for table in NAMING:
                _write_afresh(connection, table)
            _refuse_loose_ends(connection)
        if typed:
            # answers lie in big tables, so only those who typed their name wait for this
            connection.execute("VACUUM")
    finally:
        connection.execute("PRAGMA foreign_keys = ON")
    busy = connection.execute("PRAGMA wal_checkpoint(TRUNCATE)").fetchone()[0]
    return Erased(row, own, reprint, pages_clear=not busy)


def _take_out(
    connection: sqlite3.Connection, code: str
) -> tuple[int, tuple[int, ...], tuple[int, ...], bool]:
    row, person = person_of(connection, code)
    own = _numbers(connection, "SELECT id FROM certificates WHERE person = ?", row)
    typed = clean_answers(connection, row, person)
    for table, column in LINKS:
        connection.execute(f"UPDATE {table} SET {column} = NULL WHERE {column} = ?", (row,))
    for table in OWNED:
        connection.execute(f"DELETE FROM {table} WHERE person = ?", (row,))
    connection.execute("DELETE FROM people WHERE id = ?", (row,))
    keep_fingerprint(connection, code)
    return row, own, clean_texts(connection, person), typed


def _numbers(connection: sqlite3.Connection, query: str, row: int) -> tuple[int, ...]:
    return tuple(int(found[0]) for found in connection.execute(query, (row,)))


def _write_afresh(connection: sqlite3.Connection, table: str) -> None:
    rows = [tuple(row) for row in connection.execute(f"SELECT * FROM {table} ORDER BY rowid")]
    connection.execute(f"DELETE FROM {table}")
    if rows:
        places = ", ".join("?" * len(rows[0]))
        connection.executemany(f"INSERT INTO {table} VALUES ({places})", rows)


def _refuse_loose_ends(connection: sqlite3.Connection) -> None:
    for table in dict.fromkeys([*(table for table, _ in LINKS), *OWNED]):
        if connection.execute(f"PRAGMA foreign_key_check({table})").fetchone() is not None:
            raise RecordsRefused(f"nothing was erased: the table '{table}' has loose ends")
