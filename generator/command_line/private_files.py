"""Files about people: readable by their owner only, whole or not there at all."""

import os
import shutil
import tempfile
from collections.abc import Iterable, Mapping
from pathlib import Path

from generator.command_line.leftovers import UNFINISHED, clear_away
from generator.records.store import OWNER_FOLDER, make_private


def write_private(path: Path, data: bytes) -> None:
    """Write one file in one step; its folder is made where there is none."""
    write_private_files(path.parent, [(path.name, data)])


def write_private_files(folder: Path, files: Iterable[tuple[str, bytes]]) -> tuple[Path, ...]:
    """Write files that only their owner may read, each to the disk as soon as it is made.

    They are moved into the folder once the last one is written; on failure none of them is there.
    """
    folder.mkdir(mode=OWNER_FOLDER, parents=True, exist_ok=True)
    clear_away(folder)
    names = []
    # inside the folder, as the one above it may belong to somebody else
    with tempfile.TemporaryDirectory(dir=folder, prefix=UNFINISHED) as temporary:
        for name, data in files:
            make_private(Path(temporary) / name)
            (Path(temporary) / name).write_bytes(data)
            names.append(name)
        for name in names:
            os.replace(Path(temporary) / name, folder / name)
    return tuple(folder / name for name in names)


def write_private_folder(folder: Path, contents: Mapping[str, bytes]) -> None:
    """Write a new folder in one step; raises FileExistsError for a folder that holds anything."""
    if folder.exists() and (not folder.is_dir() or any(folder.iterdir())):
        raise FileExistsError(17, "there already and not empty; name a new folder", str(folder))
    folder.parent.mkdir(parents=True, exist_ok=True)
    clear_away(folder.parent)
    # made by mkdtemp, so that nobody else can look in while it is filled
    unfinished = Path(tempfile.mkdtemp(dir=folder.parent, prefix=UNFINISHED))
    try:
        for name, data in contents.items():
            make_private(unfinished / name)
            (unfinished / name).write_bytes(data)
        if folder.exists():
            folder.rmdir()
        os.replace(unfinished, folder)
    finally:
        shutil.rmtree(unfinished, ignore_errors=True)
