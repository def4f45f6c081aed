"""Every study question written once, and parted into sheets and data files by size."""

from collections.abc import Iterable
from functools import partial
from typing import NamedTuple

from generator.bank.models import Module, Objective
from generator.issued import objective_name
from generator.website.context import (
    Course,
    Heading,
    Question,
    SiteContext,
    Variants,
    objective_id,
    questions_address,
)
from generator.website.questions.packing import PAGE_BYTES, PART_BYTES, packed
from generator.website.questions.question_html import question_html


class Group(NamedTuple):
    """Some items of one objective."""

    heading: Heading
    items: tuple[Variants, ...]


class ModuleQuestions(NamedTuple):
    """The questions of one module.

    html    item id to its text on the page
    sheets  the groups of each page; an objective may go on over the end of one
    parts   objective to its parts, each a run of items that a page can mark, sorted by item
    """

    html: dict[str, str]
    sheets: tuple[tuple[Group, ...], ...]
    parts: dict[str, tuple[tuple[Variants, ...], ...]]

    def places(self, module: str) -> dict[str, tuple[str, str]]:
        """Return the words of each objective that has items, and where its first one stands."""
        found: dict[str, tuple[str, str]] = {}
        for number, groups in enumerate(self.sheets, start=1):
            for group in groups:
                place = f"{questions_address(module, number)}#{group.heading.anchor}"
                name = group.heading.anchor.replace("-", "_")
                found.setdefault(name, (group.heading.text, place))
        return found

    def sheets_of(self, objective: str) -> list[int]:
        """Return the numbers of the sheets that an objective stands on."""
        anchor = objective.rpartition("/")[2].replace("_", "-")
        return [
            number
            for number, groups in enumerate(self.sheets, start=1)
            if any(group.heading.anchor == anchor for group in groups)
        ]


Written = dict[str, ModuleQuestions]


def written_course(desk: SiteContext) -> Written:
    """Write the questions of every module that has some."""
    modules = (m for m in desk.course.modules if desk.course.questions.get(m.module))
    return {module.module: written_questions(module, desk) for module in modules}


def written_questions(module: Module, desk: SiteContext) -> ModuleQuestions:
    """Write every study item of a module, numbered through the module."""
    draft = desk.draft("question_bank")
    groups = grouped(module, desk.course)
    html: dict[str, str] = {}
    for variants in (item for group in groups for item in group.items):
        draft.path = record_file(variants[0])
        label = f"Question {len(html) + 1}"
        html[str(variants[0]["id"])] = desk.memory.question(
            variants, label, partial(question_html, variants, draft, desk, label)
        )
    sizes = {name: len(text.encode()) for name, text in html.items()}

    def size_of(variants: Variants) -> int:
        return sizes[str(variants[0]["id"])]

    sheets = _sheets(groups, packed((i for g in groups for i in g.items), PAGE_BYTES, size_of))
    parts = {
        name: packed(items, PART_BYTES, size_of)
        for name, items in _marked(module, desk.course)
        if items
    }
    return ModuleQuestions(html, sheets, parts)


def _sheets(
    groups: tuple[Group, ...], runs: Iterable[tuple[Variants, ...]]
) -> tuple[tuple[Group, ...], ...]:
    heading_of = {item[0]["id"]: group.heading for group in groups for item in group.items}
    sheets = []
    for run in runs:
        headings = dict.fromkeys(heading_of[item[0]["id"]] for item in run)
        sheets.append(
            tuple(
                Group(heading, tuple(i for i in run if heading_of[i[0]["id"]] == heading))
                for heading in headings
            )
        )
    return tuple(sheets)


def _marked(module: Module, course: Course) -> Iterable[tuple[str, list[Variants]]]:
    """Return what a page can mark; a rule of a place where the shop is not stays on its page."""
    for entry in module.objectives:
        items = [
            item
            for item in items_of(module, entry, course)
            if item[0]["kind"] != "written" and not course.is_theirs(item[0])
        ]
        yield objective_id(module, entry), sorted(items, key=lambda item: str(item[0]["id"]))


def grouped(module: Module, course: Course) -> tuple[Group, ...]:
    """Return each objective that has items with them, in the outline's order."""
    groups = (Group(_heading(one), items_of(module, one, course)) for one in module.objectives)
    return tuple(group for group in groups if group.items)


def items_of(module: Module, objective: Objective, course: Course) -> tuple[Variants, ...]:
    """Return the items of one objective."""
    name = objective_id(module, objective)
    asked = course.questions.get(module.module, ())
    return tuple(variants for variants in asked if objective_name(variants[0]) == name)


def _heading(objective: Objective) -> Heading:
    return Heading(2, objective.objective.replace("_", "-"), objective.text)


def record_file(question: Question) -> str:
    """Return the author's file that a question comes from."""
    parts = str(question["id"]).split("/")
    if parts[0] in ("procedures", "faults", "tables"):
        return f"question_bank/{parts[0]}/{parts[1]}.yml"
    return f"question_bank/items/{'/'.join(parts[:2])}.yml"
