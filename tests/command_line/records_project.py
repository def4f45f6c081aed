"""A course project with the real bank and fonts, and records of its own in a folder for tests."""

import shutil
from collections.abc import Iterator
from pathlib import Path

import pytest

from generator.workflows.checking import loading
from tests.bank.small_bank import REPOSITORY
from tests.real import real_bank

CODES = "code,name\nApprentice 01,Ann Example\nApprentice 02,\n"


@pytest.fixture
def shop(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Iterator[Path]:
    """Return the root of a project whose bank is read once for all tests."""
    root = tmp_path / "shop"
    (root / "question_bank").mkdir(parents=True)
    (root / "site_theme").mkdir()
    (root / "site_theme" / "fonts_print").symlink_to(REPOSITORY / "site_theme" / "fonts_print")
    shutil.copy(REPOSITORY / "mkdocs.yml", root)
    monkeypatch.setattr(loading, "load_bank", lambda bank, lessons: (real_bank(), ()))
    (root / "roster.csv").write_text(CODES, "utf-8")
    (root / "trainers.csv").write_text("code,name\nTrainer 1,Tess Model\n", "utf-8")
    yield root
