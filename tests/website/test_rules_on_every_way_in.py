"""Nothing that the check refuses reaches a page, whichever way the site is built."""

import subprocess
import sys
from pathlib import Path

import pytest

from generator.website import SiteRefused, build_into
from generator.website.preview import Preview
from tests.bank.small_bank import put, small_project

TWO_RIGHT = """kind: choice
level: recall
use: study
source: common_practice
stem: What do you do first?
options:
  - text: Read the sheet
    right: true
    feedback: The sheet comes first.
  - text: Open the can
    right: true
    feedback: Not before the sheet was read.
  - text: Start the fan
    feedback: The fan comes after the sheet.
"""
ITEM = "items/filler/mix.yml"


@pytest.fixture
def project(tmp_path: Path) -> Path:
    """Return the small project."""
    return small_project(tmp_path)


def with_two_right(project: Path) -> None:
    """Add a choice with two right options beside the other items."""
    lines = TWO_RIGHT.splitlines(keepends=True)
    text = "two_right:\n" + "".join(f"  {line}" for line in lines)
    file = project / "question_bank" / ITEM
    put(project, ITEM, (file.read_text("utf-8") if file.is_file() else "") + "\n" + text)


def pages_of(folder: Path) -> dict[str, str]:
    """Return every page of a folder."""
    return {path.name: path.read_text("utf-8") for path in sorted(folder.glob("*.html"))}


def test_a_build_refuses_it_and_leaves_the_earlier_pages(project: Path, tmp_path: Path) -> None:
    site = tmp_path / "site"
    build_into(project / "mkdocs.yml", site)
    before = pages_of(site)
    with_two_right(project)
    with pytest.raises(SiteRefused, match="key-count"):
        build_into(project / "mkdocs.yml", site)
    assert pages_of(site) == before


def test_the_site_engine_called_by_hand_fails(project: Path) -> None:
    with_two_right(project)
    command = [sys.executable, "-m", "mkdocs", "build", "-q"]
    done = subprocess.run(command, cwd=project, capture_output=True, text=True, check=False)
    assert done.returncode != 0
    assert "[key-count]" in done.stdout + done.stderr
    assert not list((project / "site").glob("*.html"))


def test_a_preview_says_it_and_keeps_the_last_good_pages(project: Path, tmp_path: Path) -> None:
    site = tmp_path / "preview"
    pages = Preview(project / "mkdocs.yml", site)
    assert pages.refresh() == ""
    before, sound = pages_of(site), (project / "question_bank" / ITEM).read_text("utf-8")
    with_two_right(project)
    said = pages.refresh()
    assert "[key-count]" in said and f"question_bank/{ITEM}" in said
    assert pages_of(site) == before
    put(project, ITEM, sound)
    assert pages.refresh() == ""
    assert pages_of(site) == before


def test_a_preview_writes_only_the_pages_of_what_was_edited(project: Path, tmp_path: Path) -> None:
    site = tmp_path / "preview"
    pages = Preview(project / "mkdocs.yml", site)
    assert pages.refresh() == ""
    times = {path: path.stat().st_mtime_ns for path in site.rglob("*") if path.is_file()}
    lesson = project / "course" / "film_build.md"
    lesson.write_text(lesson.read_text("utf-8") + "\nOne more line.\n", "utf-8")
    assert pages.refresh() == ""
    assert "One more line." in pages_of(site)["film_build.html"]
    changed = {path.name for path, time in times.items() if path.stat().st_mtime_ns != time}
    assert changed == {"film_build.html", "search_list.js"}


def test_a_preview_gives_the_pages_of_a_fresh_build_after_edits(
    project: Path, tmp_path: Path
) -> None:
    kept = Preview(project / "mkdocs.yml", tmp_path / "kept")
    assert kept.refresh() == ""
    for path in sorted((project / "question_bank").rglob("*.yml")):
        text = path.read_text("utf-8")
        if "film" in text and "mil" not in text:
            path.write_text(text.replace("film ", "film, as said, ", 1), "utf-8")
            kept.refresh()
    fresh = Preview(project / "mkdocs.yml", tmp_path / "fresh")
    assert fresh.refresh() == kept.refresh()
    assert pages_of(tmp_path / "kept") == pages_of(tmp_path / "fresh")
