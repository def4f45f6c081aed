"""What `check` made of a damage: seen at its line, seen elsewhere, harmless, or not seen."""

from collections.abc import Sequence
from dataclasses import dataclass
from pathlib import Path
from typing import Literal

from markdown_it import MarkdownIt

from generator.bank import Bank
from generator.bank.nodes import to_plain
from generator.bank.reading.yaml_source import read_yaml
from generator.diagnostics import Problem
from tests.damage.damage import Damage
from tests.damage.papers import damaged
from tests.damage.reuse import Reused

Outcome = Literal["right line", "elsewhere", "harmless", "mechanical", "semantic"]
OUTCOMES: tuple[Outcome, ...] = ("right line", "elsewhere", "harmless", "mechanical", "semantic")
NEAR = 2


@dataclass(frozen=True, slots=True)
class Judged:
    """A damage and what became of it; `said` is the message nearest to it."""

    damage: Damage
    outcome: Outcome
    said: str = ""


def judge(damage: Damage, reused: Reused) -> Judged:
    """Do a damage, check, and say whether it was seen.

    Harmless is only what is proved: the same records, the same pages, the same settings.
    """
    root = reused.project.root
    before = (root / "mkdocs.yml").read_text("utf-8")
    with damaged(root, damage.changes):
        bank, problems = reused.check()
        found = [problem for problem in problems if problem.severity != "note"]
        if found:
            return _seen(damage, found)
        assert bank is not None
        settings = (root / "mkdocs.yml").read_text("utf-8")
    if same_course(reused.bank, bank) and _plain(before) == _plain(settings):
        return Judged(damage, "harmless")
    return Judged(damage, "semantic" if damage.trade else "mechanical")


def _seen(damage: Damage, found: Sequence[Problem]) -> Judged:
    nearest = min(found, key=lambda problem: _distance(damage, problem))
    near = _distance(damage, nearest) <= NEAR
    said = f"{nearest.place}: {nearest.message} [{nearest.rule}]"
    return Judged(damage, "right line" if near else "elsewhere", said)


def _distance(damage: Damage, problem: Problem) -> int:
    if problem.place.path != damage.path:
        return 1_000_000
    return min(abs(problem.place.line - line) for line in damage.lines)


def same_course(one: Bank, other: Bank) -> bool:
    """Say whether two banks hold the same records and their lessons make the same pages."""
    return _records(one) == _records(other) and _pages(one) == _pages(other)


def _records(bank: Bank) -> tuple[object, ...]:
    groups = (bank.sources, bank.items, bank.procedures, bank.faults, bank.tables, bank.glossary)
    whole = (*groups, bank.hazards, bank.places, bank.blueprints)
    named = tuple([(name, e.record) for name, e in group.items()] for group in whole)
    return named, bank.sheet, bank.modules, bank.figures


def _pages(bank: Bank) -> list[tuple[str, str]]:
    shown = MarkdownIt().enable("table")
    return [(lesson.name, shown.render(lesson.text)) for lesson in bank.lessons]


def _plain(settings: str) -> object:
    node, _ = read_yaml(settings, "mkdocs.yml")
    return to_plain(node) if node else None


def checked_plainly(root: Path, damage: Damage) -> tuple[Problem, ...]:
    """Return what the plain `check` finds, with nothing reused."""
    from generator.workflows.checking import whole_project
    from generator.workflows.project import Project

    with damaged(root, damage.changes):
        return whole_project(Project(root))[1]
