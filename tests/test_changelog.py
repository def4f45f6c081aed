"""The changelog tells of the edition that pyproject.toml names, and of each edition once."""

import re
import tomllib
from pathlib import Path

ROOT = Path(__file__).parents[1]
VERSION = tomllib.loads((ROOT / "pyproject.toml").read_text("utf-8"))["project"]["version"]
READERS = ("For the instructor:", "For the apprentice:", "For the shop:", "For the author:")
PARTS = dict(
    re.findall(
        r"^## ([^\n]+)\n(.*?)(?=^## |\Z)",
        (ROOT / "CHANGELOG.md").read_text("utf-8"),
        re.MULTILINE | re.DOTALL,
    )
)
NUMBERED = [heading for heading in PARTS if re.fullmatch(r"\d+\.\d+\.\d+", heading)]


def number(version: str) -> tuple[int, ...]:
    return tuple(map(int, version.split(".")))


def test_the_current_edition_is_the_newest_one_told() -> None:
    assert NUMBERED[0] == VERSION


def test_editions_stand_from_the_newest_to_the_oldest() -> None:
    assert sorted(NUMBERED, key=number, reverse=True) == NUMBERED
    assert set(PARTS) - set(NUMBERED) <= {"Coming next"}
    assert next(iter(PARTS)) in ("Coming next", VERSION)


def test_the_current_edition_speaks_to_everybody() -> None:
    told = PARTS[VERSION]
    assert [reader for reader in READERS if f"\n{reader}\n\n- " not in told] == []
