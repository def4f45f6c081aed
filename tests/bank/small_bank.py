"""A small sound project, copied where a test may break it, and what is found in it."""

import shutil
from pathlib import Path

from generator.bank import Bank
from generator.command_line.blueprints import blueprint_problems
from generator.command_line.project import Project, read_and_check
from generator.diagnostics import Problem

SMALL_PROJECT = Path(__file__).parent / "small_project"
REPOSITORY = Path(__file__).parents[2]


def small_project(folder: Path) -> Path:
    """Copy the small project into a folder and give its root."""
    root = folder / "project"
    shutil.copytree(SMALL_PROJECT, root)
    return root


def put(root: Path, path: str, text: str) -> None:
    """Write a file of a project; the text '(removed)' takes it away, lessons start with course/."""
    target = root / path if path.startswith("course/") else root / "question_bank" / path
    if text.strip() == "(removed)":
        target.unlink()
        return
    target.parent.mkdir(parents=True, exist_ok=True)
    target.write_bytes(text.replace("(byte FF)", "\udcff").encode("utf-8", "surrogateescape"))


def everything_found(root: Path) -> tuple[Bank | None, tuple[Problem, ...]]:
    """Read a project as `guidecoat check` does; give the bank and every problem."""
    bank, problems = read_and_check(Project(root))
    return bank, (*problems, *(blueprint_problems(bank) if bank else ()))


def said(problem: Problem) -> str:
    """Give a problem's place, gravity, message and rule as one line."""
    return f"{problem.place}: {problem.severity}: {problem.message} [{problem.rule}]"
