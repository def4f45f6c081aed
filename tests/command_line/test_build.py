"""`guidecoat build`: the course and a specimen; the one file only when it is asked for."""

import shutil
from pathlib import Path

import pytest

from tests.bank.small_bank import REPOSITORY
from tests.command_line.running import run

ONE_FILE = "course_in_one_file.html"


@pytest.fixture(scope="module")
def project(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """Copy what a build reads, so that the outputs of this folder stay as they are."""
    folder = tmp_path_factory.mktemp("project")
    for name in ("question_bank", "course", "site_theme"):
        shutil.copytree(REPOSITORY / name, folder / name)
    shutil.copy(REPOSITORY / "mkdocs.yml", folder)
    return folder


def test_the_course_in_one_file_comes_when_asked_for_and_goes_when_not(project: Path) -> None:
    result = run(project, "build", "--single-file")
    assert result.exit_code == 0, result.output
    told = result.output.splitlines()
    pages = len(list((project / "site").glob("*.html"))) - 1
    assert told[0] == f"site/index.html and {pages - 1} more pages"
    assert told[1].startswith(f"site/{ONE_FILE}, ")
    assert (project / "site" / ONE_FILE).stat().st_size > 1_000_000
    result = run(project, "build")
    assert result.exit_code == 0
    assert ONE_FILE not in result.output
    assert not (project / "site" / ONE_FILE).exists()
    assert (project / "printed" / "specimen-A-key.pdf").is_file()


def test_a_broken_lesson_leaves_the_earlier_site_as_it_was(project: Path) -> None:
    assert run(project, "build").exit_code == 0
    before = {p.name: p.read_bytes() for p in (project / "site").glob("*.html")}
    lesson = project / "course" / "mixing.md"
    text = lesson.read_text("utf-8")
    lesson.write_text(text + "\n```oops\n```\n", encoding="utf-8")
    result = run(project, "build", "--single-file")
    lesson.write_text(text, encoding="utf-8")
    assert result.exit_code == 1
    assert "course/mixing.md" in result.stderr
    assert {p.name: p.read_bytes() for p in (project / "site").glob("*.html")} == before
