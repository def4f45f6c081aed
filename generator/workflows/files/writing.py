"""Writes that leave the earlier output whole when something fails."""

import os
import shutil
import tempfile
from collections.abc import Callable, Mapping
from pathlib import Path

from generator.workflows.files.leftovers import EARLIER, UNFINISHED, clear_away, put_back

_ASIDE = "site"


def write_files(folder: Path, contents: Mapping[str, bytes]) -> tuple[Path, ...]:
    """Write files into a folder, each replaced in one step; nothing is left half-written."""
    folder.mkdir(parents=True, exist_ok=True)
    with tempfile.TemporaryDirectory(dir=folder.parent, prefix=UNFINISHED) as temporary:
        clear_away(folder.parent, Path(temporary))
        for name, data in contents.items():
            (Path(temporary) / name).write_bytes(data)
        for name in contents:
            os.replace(Path(temporary) / name, folder / name)
    return tuple(folder / name for name in contents)


def replace_folder(folder: Path, fill: Callable[[Path], None]) -> None:
    """Fill a new folder and put it in the old one's place; on failure the old one stays.

    An old one that an earlier run had moved aside when it was stopped is put back first.
    """
    folder.parent.mkdir(parents=True, exist_ok=True)
    put_back(folder, _ASIDE)
    new = Path(tempfile.mkdtemp(dir=folder.parent, prefix=UNFINISHED))
    clear_away(folder.parent, new)
    try:
        fill(new)
        new.chmod(0o755)
        old = Path(tempfile.mkdtemp(dir=folder.parent, prefix=EARLIER))
        if folder.exists():
            os.replace(folder, old / _ASIDE)
        os.replace(new, folder)
        shutil.rmtree(old)
    finally:
        shutil.rmtree(new, ignore_errors=True)
