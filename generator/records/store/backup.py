"""A copy of the records while they are in use, and what a copy that is put back must show."""

import os
import sqlite3
import tempfile
from pathlib import Path

from generator.records.store.database import RecordsRefused, integrity_problems, make_private


def back_up(connection: sqlite3.Connection, target: Path) -> int:
    """Copy the records to a new file that its owner only can read, and give its size in bytes.

    The file has its name only once it is whole. Raises RecordsRefused for a name that is taken, a
    folder that is not there, or a copy that fails its own check.
    """
    if target.exists():
        raise RecordsRefused(f"'{target.name}' is there already; give another name")
    if not target.parent.is_dir():
        raise RecordsRefused(f"there is no folder '{target.parent.name}' for the backup")
    try:
        with tempfile.TemporaryDirectory(dir=target.parent, prefix=".new-") as temporary:
            unfinished = Path(temporary) / target.name
            make_private(unfinished)
            _copy(connection, unfinished)
            os.replace(unfinished, target)
    except (OSError, sqlite3.Error) as error:
        reason = "the disk is full" if _is_full(error) else str(error)
        raise RecordsRefused(
            f"the backup '{target.name}' could not be written: {reason}"
        ) from error
    return target.stat().st_size


def _copy(connection: sqlite3.Connection, target: Path) -> None:
    copy = sqlite3.connect(target, isolation_level=None)
    try:
        connection.backup(copy)
        # one file that can be carried away, without a second one beside it
        copy.execute("PRAGMA journal_mode = DELETE")
        found = integrity_problems(copy)
        if found:
            raise RecordsRefused(f"the copy is damaged and was thrown away: {found[0]}")
    finally:
        copy.close()


def _is_full(error: Exception) -> bool:
    return "full" in str(error) or "No space" in str(error)
