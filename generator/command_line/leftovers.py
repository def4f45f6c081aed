"""What a command that was stopped hard left behind: put back, cleared away, or named."""

import os
import shutil
import time
from collections.abc import Iterator
from pathlib import Path

UNFINISHED, EARLIER = ".new-", ".old-"
# a command that still works is never cleared away from under its own feet
AN_HOUR = 3600


def leftovers(folder: Path) -> Iterator[Path]:
    """Return unfinished and earlier folders that stand in a folder."""
    if folder.is_dir():
        yield from (p for p in sorted(folder.iterdir()) if p.name.startswith((UNFINISHED, EARLIER)))


def put_back(folder: Path, inside: str) -> None:
    """Bring a folder back that a command had moved aside when it was stopped.

    inside  the name under which it was moved
    """
    if folder.exists():
        return
    for place in leftovers(folder.parent):
        if place.name.startswith(EARLIER) and (place / inside).is_dir():
            os.replace(place / inside, folder)
            return


def clear_away(folder: Path) -> None:
    """Take out of a folder what was left there more than an hour ago."""
    for place in leftovers(folder):
        if time.time() - place.lstat().st_mtime > AN_HOUR and not place.is_symlink():
            shutil.rmtree(place, ignore_errors=True)
