"""Opens the training records: one SQLite file, readable by its owner only, moved forward safely."""

import os
import shutil
import sqlite3
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import TypeAlias

from generator.records.store.migrations import STEPS

# the open records, for those above who hand them on and never look inside
Records: TypeAlias = sqlite3.Connection
FILE_NAME = "training_records.sqlite"
WAIT_SECONDS = 30
OWNER_ONLY = 0o600
OWNER_FOLDER = 0o700
# bytes that the files beside the records need
ROOM = 100_000
# what group and others may do
OTHERS = 0o077


class RecordsRefused(Exception):
    """The records cannot be used; the text says why and what to do."""


@contextmanager
def open_records(folder: Path) -> Iterator[sqlite3.Connection]:
    """Open the records of a folder, making or moving them forward where needed.

    folder  made readable by its owner only when it does not exist
    Raises RecordsRefused for a folder that cannot be written, a damaged file, or one that a
    later version of the program has written.
    """
    try:
        connection = _connected(folder)
    except (OSError, sqlite3.Error) as error:
        raise RecordsRefused(_reason(folder, error)) from error
    try:
        yield connection
    except sqlite3.Error as error:
        raise RecordsRefused(_reason(folder, error)) from error
    finally:
        connection.close()


def _connected(folder: Path) -> sqlite3.Connection:
    folder.mkdir(mode=OWNER_FOLDER, parents=True, exist_ok=True)
    path = folder / FILE_NAME
    # made before SQLite opens it, so that there is no moment at which others could read it
    make_private(path)
    connection = sqlite3.connect(path, timeout=WAIT_SECONDS, isolation_level=None)
    try:
        connection.row_factory = sqlite3.Row
        connection.execute("PRAGMA foreign_keys = ON")
        connection.execute("PRAGMA journal_mode = WAL")
        connection.execute("PRAGMA synchronous = FULL")
        connection.execute("PRAGMA secure_delete = ON")
        _moved_forward(connection)
    except BaseException:
        connection.close()
        raise
    return connection


def _moved_forward(connection: sqlite3.Connection) -> None:
    if _version(connection) == len(STEPS):
        return
    with writing(connection):
        version = _version(connection)
        if version > len(STEPS):
            raise RecordsRefused(
                "these records were written by a later version of guidecoat; update the program"
            )
        for step in STEPS[version:]:
            for statement in _statements(step):
                connection.execute(statement)
        connection.execute(f"PRAGMA user_version = {len(STEPS)}")


def _statements(step: str) -> Iterator[str]:
    return (part for part in step.split(";") if part.strip())


def _version(connection: sqlite3.Connection) -> int:
    return int(connection.execute("PRAGMA user_version").fetchone()[0])


@contextmanager
def writing(connection: sqlite3.Connection) -> Iterator[None]:
    """Hold the one write lock; all changes inside happen together or not at all.

    Inside a writing that is under way it is part of that one.
    """
    if connection.in_transaction:
        yield
        return
    connection.execute("BEGIN IMMEDIATE")
    try:
        yield
        connection.execute("COMMIT")
    except BaseException:
        # a full disk has rolled back already
        if connection.in_transaction:
            connection.execute("ROLLBACK")
        raise


def integrity_problems(connection: sqlite3.Connection) -> tuple[str, ...]:
    """Return what the file's own check finds wrong; None when it is whole."""
    found = [str(row[0]) for row in connection.execute("PRAGMA integrity_check")]
    found += [f"{row[0]} row {row[1]}" for row in connection.execute("PRAGMA foreign_key_check")]
    return tuple(text for text in found if text != "ok")


def make_private(path: Path) -> None:
    """Make a file where there is none, and let its owner only read it."""
    os.close(os.open(path, os.O_CREAT | os.O_RDWR, OWNER_ONLY))
    if path.stat().st_mode & OTHERS:
        path.chmod(OWNER_ONLY)


def _reason(folder: Path, error: Exception) -> str:
    said = str(error)
    place = folder.name
    if isinstance(error, FileExistsError | NotADirectoryError):
        return f"'{place}' is a file and cannot hold the records; move it away"
    if "full" in said or "No space" in said or ("disk I/O" in said and _no_room(folder)):
        return f"the disk that holds '{place}' is full; nothing was changed"
    if isinstance(error, PermissionError) or "readonly" in said or "unable to open" in said:
        return f"the folder '{place}' cannot be written; check who owns it"
    if "malformed" in said or "not a database" in said or "disk image" in said:
        return f"the records in '{place}' are damaged; put a backup in their place"
    if "locked" in said:
        return f"another program kept the records in '{place}' locked; try again"
    return f"the records in '{place}' cannot be used: {said}"


def _no_room(folder: Path) -> bool:
    # a disk without room for the file beside the records is only told as an error of the disk
    try:
        return shutil.disk_usage(folder).free < ROOM
    except OSError:
        return False
