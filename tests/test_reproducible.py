"""The same inputs give the same bytes, wherever and whenever the course is built."""

import os
import shutil
import subprocess
import sys
from pathlib import Path

import pytest

ROOT = Path(__file__).parents[1]
INPUTS = ("question_bank", "course", "site_theme", "mkdocs.yml")
BUILDS = {
    "bay": {"PYTHONHASHSEED": "1", "TZ": "UTC", "LC_ALL": "C.UTF-8"},
    "trailer bay/second": {"PYTHONHASHSEED": "2", "TZ": "Asia/Tokyo", "LC_ALL": "C"},
}


def project_in(folder: Path) -> Path:
    """Copy what the authors wrote into a folder."""
    folder.mkdir(parents=True)
    for name in INPUTS:
        source = ROOT / name
        copy = shutil.copytree if source.is_dir() else shutil.copy
        copy(source, folder / name)
    return folder


def build(project: Path, surroundings: dict[str, str], *command: str) -> None:
    """Run one command in a project, with its own clock zone, locale and hash seed."""
    done = subprocess.run(
        [sys.executable, "-m", "generator", *command],
        cwd=project,
        env={**os.environ, "PYTHONPATH": str(ROOT), **surroundings},
        capture_output=True,
        text=True,
        timeout=300,
    )
    assert done.returncode == 0, done.stderr


def contents(folder: Path) -> dict[str, bytes]:
    """Read every file of a folder by its path."""
    return {
        path.relative_to(folder).as_posix(): path.read_bytes()
        for path in sorted(folder.rglob("*"))
        if path.is_file()
    }


@pytest.fixture(scope="module")
def built(tmp_path_factory):
    root = tmp_path_factory.mktemp("builds")
    projects = []
    for name, surroundings in BUILDS.items():
        project = project_in(root / name)
        build(project, surroundings, "build")
        build(project, surroundings, "issue", "numbers_only", "--forms", "2", "--seed", "spring")
        projects.append(project)
    return projects


@pytest.mark.parametrize("folder", ["site", "printed"])
def test_two_builds_of_the_same_inputs_are_the_same_to_the_byte(built, folder):
    one, two = (contents(project / folder) for project in built)
    assert one.keys() == two.keys()
    assert [name for name in one if one[name] != two[name]] == []


def test_the_builds_made_a_site_and_papers(built):
    for project in built:
        pages = [name for name in contents(project / "site") if name.endswith(".html")]
        papers = contents(project / "printed")
        assert len(pages) > 20
        # the specimen; two forms of four papers, their class key and the table for answers
        assert len(papers) == 3 + 2 * 4 + 2
        tables = {name for name, data in papers.items() if not data.startswith(b"%PDF")}
        assert tables == {"issue-1/answers.csv"}


def test_no_path_of_the_building_machine_is_left_in_the_output(built):
    for project in built:
        traces = (str(project).encode(), str(ROOT).encode())
        for folder in ("site", "printed"):
            for name, data in contents(project / folder).items():
                assert not any(trace in data for trace in traces), name


def test_building_changes_nothing_that_the_authors_wrote(built):
    for name in ("question_bank", "course", "site_theme"):
        assert contents(built[0] / name) == contents(built[1] / name)
        assert contents(built[0] / name).keys() == contents(ROOT / name).keys()
