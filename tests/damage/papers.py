"""The real bank and course as bytes, and a copy of the project to damage single files of."""

import shutil
from collections.abc import Iterator, Mapping
from contextlib import contextmanager
from dataclasses import dataclass
from pathlib import Path

from tests.bank.small_bank import REPOSITORY

Files = Mapping[str, bytes]


@dataclass(frozen=True, slots=True)
class Spot:
    """A line of a file; lines count from 1."""

    path: str
    line: int
    text: str


def real_files() -> Files:
    """Return every file that a damage may touch, under its path in the project."""
    paths = [REPOSITORY / "mkdocs.yml", *(REPOSITORY / "course").glob("*.md")]
    paths += (REPOSITORY / "question_bank").rglob("*.yml")
    kept = (path for path in paths if path.name != "giveaways.yml")
    return {path.relative_to(REPOSITORY).as_posix(): path.read_bytes() for path in sorted(kept)}


def copied_project(folder: Path) -> Path:
    """Copy bank, course and settings into a folder and return its root; the theme is linked."""
    root = folder / "project"
    root.mkdir()
    for name in ("question_bank", "course"):
        shutil.copytree(REPOSITORY / name, root / name)
    shutil.copy(REPOSITORY / "mkdocs.yml", root)
    (root / "site_theme").symlink_to(REPOSITORY / "site_theme")
    return root


@contextmanager
def damaged(root: Path, changes: Mapping[str, bytes | None]) -> Iterator[None]:
    """Hold some files of a project damaged, None for a file that is gone; mend them after."""
    before = {path: (root / path).read_bytes() for path in changes if (root / path).exists()}
    try:
        for path, data in changes.items():
            if data is None:
                (root / path).unlink()
            else:
                (root / path).write_bytes(data)
        yield
    finally:
        for path in changes:
            if path in before:
                (root / path).write_bytes(before[path])
            else:
                (root / path).unlink()


def lines_of(files: Files, path: str) -> list[str]:
    """Return the lines of a file without their ends."""
    return files[path].decode("utf-8").split("\n")[:-1]


def spots(files: Files, group: str = "") -> list[Spot]:
    """Return every line of the files whose path begins with a group, by path and line."""
    return [
        Spot(path, number, text)
        for path in sorted(files)
        if path.startswith(group)
        for number, text in enumerate(lines_of(files, path), start=1)
    ]
