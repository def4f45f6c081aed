"""`check` of one damaged copy after another, where only what changed is read and solved again.

A file with the same bytes gives the same nodes, a node the same record, and a record with the same
text the same verdict. A test holds the outcome against the plain `check`.
"""

from collections.abc import Iterator, Mapping, Sequence
from functools import cache
from pathlib import Path
from typing import Any

from pytest import MonkeyPatch

from generator.assembly import shortages
from generator.bank import Bank, Node, Verdicts
from generator.bank.reading import loader
from generator.diagnostics import Problem, has_errors
from generator.printing.settable import unsettable
from generator.questions import Askable, askables
from generator.workflows.checking import project_problems as whole
from generator.workflows.checking import whole_project
from generator.workflows.project import Project


class Reused:
    """Reads and checks a project again and again.

    Problems of the list of giveaways are left out: the list is written by a command and changes
    with nearly every word, so it would count as seeing what nobody saw.
    """

    def __init__(self, root: Path, patch: MonkeyPatch) -> None:
        self.project = Project(root)
        self._known: Mapping[str, Any] = {}
        self._kept: list[Node] = []
        self._reuse_reading(patch)
        patch.setattr(whole, "unsettable", _missing_signs)
        patch.setattr(whole, "blueprint_problems", self._blueprints)
        sound = Verdicts("sound")
        bank, problems = whole_project(self.project, sound)
        assert bank is not None
        assert [p for p in problems if p.severity != "note"] == []
        self.bank = bank
        self._known = sound.used

    def check(self) -> tuple[Bank | None, tuple[Problem, ...]]:
        """Return the bank as it stands now, and every problem of the project."""
        return whole_project(self.project, Verdicts("sound", self._known))

    def _reuse_reading(self, patch: MonkeyPatch) -> None:
        read_yaml = cache(loader.read_yaml)
        plain_record = loader.read_record
        records: dict[tuple[type, int], Any] = {}

        def read_record(kind: type, node: Node) -> Any:
            key = (kind, id(node))
            if key not in records:
                # a node is held, so that its number is never given to another one
                self._kept.append(node)
                records[key] = plain_record(kind, node)
            return records[key]

        patch.setattr(loader, "read_yaml", read_yaml)
        patch.setattr(loader, "read_record", read_record)

    def _blueprints(self, bank: Bank, found: Sequence[Problem]) -> tuple[Problem, ...]:
        """Return the plans that cannot be filled, asked where a plan or the outline is new."""
        if has_errors(found) or not self._known or _plans(bank) == _plans(self.bank):
            return ()
        known = self._askables()
        return tuple(p for entry in bank.blueprints.values() for p in shortages(entry, bank, known))

    @cache  # noqa: B019
    def _askables(self) -> tuple[Askable, ...]:
        return tuple(askables(self.bank))


def _plans(bank: Bank) -> tuple[object, ...]:
    plans = tuple((name, entry.record) for name, entry in bank.blueprints.items())
    return plans, bank.modules, bank.sheet


@cache
def _signs_of_fonts(signs: frozenset[str], fonts: Path) -> tuple[str, ...]:
    return tuple(unsettable(signs, fonts))


def _missing_signs(texts: Iterator[str], fonts: Path) -> tuple[str, ...]:
    return _signs_of_fonts(frozenset(sign for text in texts for sign in text), fonts)
