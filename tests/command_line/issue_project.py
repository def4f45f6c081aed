"""A small course project with the theme, in which papers can be issued."""

import shutil
from pathlib import Path

from tests.bank.small_bank import REPOSITORY, small_project

ISSUE = ("issue", "quick_check", "--seed", "spring")
ROSTER = "code,name\nApprentice 01,Ann\nApprentice 02,\nApprentice 03,Cat\n"


def issuing_project(folder: Path) -> Path:
    """Make the project in a folder and give its root."""
    root = small_project(folder)
    (root / "site_theme").unlink()
    shutil.copytree(REPOSITORY / "site_theme", root / "site_theme")
    (root / "people.csv").write_text(ROSTER, "utf-8")
    return root


def printed(root: Path) -> dict[str, bytes]:
    """Return every file below printed/ by its path there."""
    folder = root / "printed"
    files = (path for path in sorted(folder.rglob("*")) if path.is_file())
    return {path.relative_to(folder).as_posix(): path.read_bytes() for path in files}
