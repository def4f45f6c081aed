"""Writes that leave the earlier output whole when something fails."""

import os
import shutil
import tempfile
from collections.abc import Callable, Mapping
from pathlib import Path


def write_files(folder: Path, contents: Mapping[str, bytes]) -> tuple[Path, ...]:
    """Write files into a folder, each replaced in one step; nothing is left half-written."""
    folder.mkdir(parents=True, exist_ok=True)
    with tempfile.TemporaryDirectory(dir=folder.parent, prefix=".new-") as temporary:
        for name, data in contents.items():
            (Path(temporary) / name).write_bytes(data)
        for name in contents:
            os.replace(Path(temporary) / name, folder / name)
    return tuple(folder / name for name in contents)


def replace_folder(folder: Path, fill: Callable[[Path], None]) -> None:
    """Fill a new folder and put it in the old one's place; on failure the old one stays."""
    folder.parent.mkdir(parents=True, exist_ok=True)
    new = Path(tempfile.mkdtemp(dir=folder.parent, prefix=".new-"))
    try:
        fill(new)
        new.chmod(0o755)
        old = Path(tempfile.mkdtemp(dir=folder.parent, prefix=".old-"))
        if folder.exists():
            os.replace(folder, old / "site")
        os.replace(new, folder)
        shutil.rmtree(old)
    finally:
        shutil.rmtree(new, ignore_errors=True)
