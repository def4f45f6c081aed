"""The bank in memory: every record under its name, with the place it came from."""

from collections.abc import Mapping
from dataclasses import dataclass, field
from typing import Any, Generic, TypeVar

from generator.bank.models import (
    BankSheet,
    Belief,
    Blueprint,
    DataSheet,
    Fault,
    Giveaways,
    Hazard,
    Item,
    Module,
    Procedure,
    RulePlace,
    Source,
    Table,
    Term,
)
from generator.bank.nodes import Node, key_place, place_of, text_place
from generator.diagnostics import Place, Problem, Severity

R_co = TypeVar("R_co", covariant=True)


@dataclass(frozen=True, slots=True)
class Entry(Generic[R_co]):
    """A record, its name in the bank, and the node it was read from.

    written  the record's own lines of its file, or empty where nobody kept them
    kept     what was worked out from the record and is asked for again and again
    """

    name: str
    record: R_co
    node: Node
    start: Place
    written: str = field(default="", compare=False, repr=False)
    kept: dict[str, Any] = field(init=False, default_factory=dict, compare=False, repr=False)

    def place(self, *path: str | int) -> Place:
        """Return the place of the value at a path, or of the record's own name."""
        return place_of(self.node, *path) if path else self.start

    def key(self, *path: str | int) -> Place:
        """Return the place of a name inside the record."""
        return key_place(self.node, *path)

    def problem(
        self, severity: Severity, rule: str, message: str, *path: str | int, hint: str = ""
    ) -> Problem:
        """Return a problem at the value at a path."""
        return Problem(self.place(*path), severity, rule, message, hint)

    def problem_inside(
        self, rule: str, message: str, column: int, *path: str | int, hint: str = ""
    ) -> Problem:
        """Return an error at a column inside the text at a path."""
        return Problem(text_place(self.node, column, *path), "error", rule, message, hint)


@dataclass(frozen=True, slots=True)
class Lesson:
    """A lesson as the author wrote it.

    name  the file's name without its ending; the module's `lesson`
    path  how the file is named in messages
    """

    name: str
    path: str
    text: str


@dataclass(frozen=True, slots=True)
class Bank:
    """Everything the authors stated, read and typed.

    unread  what could not be read and was reported, as 'group/name', or 'group/*' for a whole file
    """

    sheet: BankSheet
    modules: tuple[Module, ...]
    sources: Mapping[str, Entry[Source]]
    items: Mapping[str, Entry[Item]]
    procedures: Mapping[str, Entry[Procedure]]
    faults: Mapping[str, Entry[Fault]]
    tables: Mapping[str, Entry[Table]]
    glossary: Mapping[str, Entry[Term]]
    blueprints: Mapping[str, Entry[Blueprint]]
    hazards: Mapping[str, Entry[Hazard]] = field(default_factory=dict)
    places: Mapping[str, Entry[RulePlace]] = field(default_factory=dict)
    data_sheets: Mapping[str, Entry[DataSheet]] = field(default_factory=dict)
    beliefs: Mapping[str, Entry[Belief]] = field(default_factory=dict)
    giveaways: Entry[Giveaways] | None = None
    lessons: tuple[Lesson, ...] = ()
    figures: tuple[str, ...] = ()
    outline_node: Node | None = None
    unread: frozenset[str] = frozenset()

    def was_unread(self, group: str, name: str) -> bool:
        """Return whether a name may belong to something that could not be read."""
        file = f"{group}/{name}".rpartition("/")[0]
        return f"{group}/{name}" in self.unread or f"{file}/*" in self.unread

    @property
    def is_partly_read(self) -> bool:
        """Return whether anything could not be read, so that nothing can be called absent."""
        return bool(self.unread)

    def outline_problem(self, rule: str, message: str, *path: str | int) -> Problem:
        """Return an error at a path inside the outline."""
        place = place_of(self.outline_node, *path) if self.outline_node else Place("", 1, 1)
        return Problem(place, "error", rule, message)

    @property
    def objectives(self) -> Mapping[str, str]:
        """Return the text of every objective under 'module/objective'."""
        return {
            f"{module.module}/{objective.objective}": objective.text
            for module in self.modules
            for objective in module.objectives
        }

    @property
    def taught(self) -> tuple[Module, ...]:
        """Return the modules that have a lesson."""
        return tuple(module for module in self.modules if module.lesson)


def module_of(objective: str) -> str:
    """Return the module part of 'module/objective' or of an item's id."""
    return objective.split("/", 1)[0]


def objective_of(item_name: str) -> str:
    """Return 'module/objective' of an item's id."""
    return "/".join(item_name.split("/")[:2])
