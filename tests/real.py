"""The real bank and course: read, judged and built once, for every test that looks at them.

Banks are kept in memory, once for each test process. What is built lies in a folder that test
processes side by side share: the first that needs it makes it, and the others wait for it.
"""

import fcntl
import os
import shutil
import subprocess
import sys
from collections.abc import Callable, Mapping
from functools import cache
from pathlib import Path

from generator.bank import Bank, load_bank
from generator.diagnostics import Problem
from generator.questions import Askable, askables
from generator.website.context.course import Course
from generator.website.gather import read_course
from generator.workflows.checking import whole_project
from generator.workflows.project import Project

ROOT = Path(__file__).parents[1]
BANK = ROOT / "question_bank"
LESSONS = ROOT / "course"
INPUTS = ("question_bank", "course", "site_theme", "mkdocs.yml")
# a building machine as unlike the second one of test_reproducible as can be
SURROUNDINGS = {"PYTHONHASHSEED": "1", "TZ": "UTC", "LC_ALL": "C.UTF-8"}
SAID = "said.txt"


@cache
def real_bank() -> Bank:
    """Read the bank and its lessons without running the rules."""
    bank, problems = load_bank(BANK, LESSONS)
    assert bank is not None
    assert [problem for problem in problems if problem.severity == "error"] == []
    return bank


@cache
def real_askables() -> tuple[Askable, ...]:
    """Return every question that the bank can ask."""
    return askables(real_bank())


@cache
def real_findings() -> tuple[Bank | None, tuple[Problem, ...]]:
    """Read the project as `guidecoat check` does; return the bank and every problem."""
    return whole_project(Project(ROOT))


@cache
def real_course() -> Course:
    """Read the course with its study questions, as a build does."""
    course, _ = read_course(BANK, LESSONS, ROOT / "site_theme")
    assert course is not None
    return course


def made_once(folder: Path, make: Callable[[Path], object]) -> Path:
    """Return a folder that the first process to ask for it makes; the others wait until it is."""
    with folder.with_suffix(".lock").open("w") as lock:
        fcntl.flock(lock, fcntl.LOCK_EX)
        if not folder.is_dir():
            unfinished = folder.with_suffix(".unfinished")
            shutil.rmtree(unfinished, ignore_errors=True)
            make(unfinished)
            unfinished.rename(folder)
    return folder


def copy_of_the_project(folder: Path) -> Path:
    """Copy what the authors wrote into a folder."""
    folder.mkdir(parents=True)
    for name in INPUTS:
        source = ROOT / name
        copy = shutil.copytree if source.is_dir() else shutil.copy
        copy(source, folder / name)
    return folder


def run_apart(project: Path, surroundings: Mapping[str, str], *command: str) -> str:
    """Run one command in a process of its own, with its own clock zone, locale and hash seed."""
    done = subprocess.run(
        [sys.executable, "-m", "generator", *command],
        cwd=project,
        env={**os.environ, "PYTHONPATH": str(ROOT), **surroundings},
        capture_output=True,
        text=True,
        timeout=900,
    )
    assert done.returncode == 0, done.stderr
    return done.stdout


def build_whole(folder: Path, surroundings: Mapping[str, str] = SURROUNDINGS) -> Path:
    """Copy the project and make all that comes of it: site, one file, specimen, a small issue."""
    project = copy_of_the_project(folder)
    said = run_apart(project, surroundings, "build", "--single-file")
    (project / SAID).write_text(said, "utf-8")
    run_apart(project, surroundings, "issue", "numbers_only", "--forms", "2", "--seed", "spring")
    return project


def contents(folder: Path) -> dict[str, bytes]:
    """Read every file of a folder by its path."""
    return {
        path.relative_to(folder).as_posix(): path.read_bytes()
        for path in sorted(folder.rglob("*"))
        if path.is_file()
    }
