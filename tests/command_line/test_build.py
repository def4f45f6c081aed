"""`guidecoat build`: the course and a specimen; the one file only when it is asked for."""

import shutil
from pathlib import Path

import pytest

from tests.command_line.running import run
from tests.real import SAID, contents

ONE_FILE = "course_in_one_file.html"


@pytest.fixture
def project(real_project: Path, tmp_path: Path) -> Path:
    """Copy a project that was built with its one file, so that the built one stays as it is."""
    return shutil.copytree(real_project, tmp_path / "project")


def test_the_course_in_one_file_comes_when_asked_for(real_project: Path) -> None:
    told = (real_project / SAID).read_text("utf-8").splitlines()
    pages = len(list((real_project / "site").glob("*.html"))) - 1
    assert told[0] == f"site/index.html and {pages - 1} more pages"
    assert told[1].startswith(f"site/{ONE_FILE}, ")
    assert (real_project / "site" / ONE_FILE).stat().st_size > 1_000_000
    assert (real_project / "printed" / "specimen-A-key.pdf").is_file()


def test_without_the_wish_it_goes_and_the_rest_is_the_same_to_the_byte(
    project: Path, real_site: Path
) -> None:
    result = run(project, "build")
    assert result.exit_code == 0, result.output
    assert ONE_FILE not in result.output
    assert not (project / "site" / ONE_FILE).exists()
    one, two = contents(project / "site"), contents(real_site)
    assert one.keys() == two.keys()
    assert [name for name in one if one[name] != two[name]] == []


def test_a_broken_lesson_leaves_the_earlier_site_as_it_was(project: Path) -> None:
    before = contents(project / "site")
    assert len(before) > 20
    lesson = project / "course" / "mixing.md"
    lesson.write_text(lesson.read_text("utf-8") + "\n```oops\n```\n", encoding="utf-8")
    result = run(project, "build", "--single-file")
    assert result.exit_code == 1
    assert "course/mixing.md" in result.stderr
    assert contents(project / "site") == before
