"""A small sound project, copied where a test may break it, and what is found in it."""

import shutil
from pathlib import Path

from generator.bank import Bank, Entry
from generator.bank.models import NumericItem
from generator.bank.reading.record_reading import read_record
from generator.bank.reading.yaml_source import read_yaml
from generator.diagnostics import Place, Problem
from generator.workflows.checking import whole_project
from generator.workflows.project import Project

SMALL_PROJECT = Path(__file__).parent / "small_project"
NUMERIC_HEAD = "kind: numeric\nlevel: apply\nuse: study\nsource: common_practice\n"
REPOSITORY = Path(__file__).parents[2]


def small_project(folder: Path) -> Path:
    """Copy the small project into a folder and give its root."""
    root = folder / "project"
    shutil.copytree(SMALL_PROJECT, root, symlinks=True)
    # the theme is the real one, linked from wherever the copy lies
    (root / "site_theme").unlink()
    (root / "site_theme").symlink_to(REPOSITORY / "site_theme")
    return root


def put(root: Path, path: str, text: str) -> None:
    """Write a file of a project; the text '(removed)' takes it away.

    Paths of lessons start with course/, and mkdocs.yml lies at the top; the rest is the bank's.
    """
    at_top = path.startswith("course/") or path == "mkdocs.yml"
    target = root / path if at_top else root / "question_bank" / path
    if text.strip() == "(removed)":
        target.unlink()
        return
    target.parent.mkdir(parents=True, exist_ok=True)
    text = text.removesuffix("(cut)\n")
    raw = text.replace("(byte FF)", "\udcff").replace("(byte 07)", "\x07")
    target.write_bytes(raw.encode("utf-8", "surrogateescape"))


def everything_found(root: Path) -> tuple[Bank | None, tuple[Problem, ...]]:
    """Read a project as `guidecoat check` does; give the bank and every problem."""
    return whole_project(Project(root))


def said(problem: Problem) -> str:
    """Return a problem's place, severity, message and rule as one line."""
    return f"{problem.place}: {problem.severity}: {problem.message} [{problem.rule}]"


def numeric_item(text: str) -> Entry[NumericItem]:
    """Return a numeric item from its YAML, which must be sound in form."""
    node, problems = read_yaml(NUMERIC_HEAD + text, "item.yml")
    assert node is not None
    record, more = read_record(NumericItem, node)
    assert record is not None, (problems, more)
    return Entry("film_build/coats/item", record, node, Place("item.yml", 1, 1))
