"""What a site is made of: plain records, texts and solved questions, with no files behind them."""

from collections.abc import Mapping
from dataclasses import dataclass, field
from typing import TypeAlias

from generator.bank.models import (
    Belief,
    DataSheet,
    Fault,
    Hazard,
    Module,
    Objective,
    Procedure,
    Source,
    Table,
    Term,
)
from generator.issued import IssuedQuestion

Question: TypeAlias = IssuedQuestion
Variants: TypeAlias = tuple[Question, ...]


@dataclass(frozen=True, slots=True)
class Course:
    """Everything that pages are made from.

    title      name of the course
    modules    in the order of the outline
    lessons    lesson name to its Markdown
    figures    figure name to its SVG
    questions  module name to its study items; each item is one or more solved variants
    rows       table name to its rows, wherever they were written down
    relations  numeric item to the relation that its answer turns on
    places     titles of the places where the shop works
    """

    title: str
    modules: tuple[Module, ...]
    lessons: Mapping[str, str] = field(default_factory=dict)
    figures: Mapping[str, str] = field(default_factory=dict)
    procedures: Mapping[str, Procedure] = field(default_factory=dict)
    faults: Mapping[str, Fault] = field(default_factory=dict)
    tables: Mapping[str, Table] = field(default_factory=dict)
    rows: Mapping[str, tuple[tuple[str, ...], ...]] = field(default_factory=dict)
    sources: Mapping[str, Source] = field(default_factory=dict)
    hazards: Mapping[str, Hazard] = field(default_factory=dict)
    terms: Mapping[str, Term] = field(default_factory=dict)
    data_sheets: Mapping[str, DataSheet] = field(default_factory=dict)
    beliefs: Mapping[str, Belief] = field(default_factory=dict)
    questions: Mapping[str, tuple[Variants, ...]] = field(default_factory=dict)
    relations: Mapping[str, str] = field(default_factory=dict)
    places: tuple[str, ...] = ()

    def is_theirs(self, question: Question) -> bool:
        """Return whether a question asks the rule of a place where the shop does not work."""
        place = str(question.get("place") or "")
        return bool(place) and place not in self.places

    def module_named(self, name: str) -> Module | None:
        """Return the module with this name."""
        return next((module for module in self.modules if module.module == name), None)

    def taught_modules(self) -> tuple[Module, ...]:
        """Return the modules that have a lesson or questions here."""
        return tuple(
            module
            for module in self.modules
            if module.module in self.lessons or self.questions.get(module.module)
        )

    def question_named(self, item: str) -> Variants | None:
        """Return the variants of one study item, by its full id."""
        for items in self.questions.values():
            for variants in items:
                if variants[0]["id"] == item:
                    return variants
        return None

    def items_of(self, module: Module, objective: Objective) -> int:
        """Count the study items of an objective that a page can mark itself."""
        return sum(
            1
            for variants in self.questions.get(module.module, ())
            if variants[0]["objective"].rpartition("/")[2] == objective.objective
            and variants[0]["kind"] != "written"
            and not self.is_theirs(variants[0])
        )


def objective_id(module: Module, objective: Objective) -> str:
    """Return the name that progress is stored under."""
    return f"{module.module}/{objective.objective}"
