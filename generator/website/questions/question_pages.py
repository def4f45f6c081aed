"""Question pages: every study item of a module, grouped by objective."""

from typing import NamedTuple

from generator.bank.models import Module, Objective
from generator.website.context import (
    BuiltPage,
    Course,
    Heading,
    Question,
    SiteContext,
    Variants,
    objective_id,
    questions_address,
)
from generator.website.figures import mist_patterns, panel_strip
from generator.website.questions.packing import PAGE_BYTES, packed
from generator.website.questions.question_html import objective_of, question_html
from generator.website.questions.question_parts import parts_index


class Group(NamedTuple):
    """Some items of one objective."""

    heading: Heading
    items: tuple[Variants, ...]


def written_questions(module: Module, desk: SiteContext) -> dict[str, str]:
    """Write every study item of a module as a form, by its id; numbered through the module."""
    draft = desk.draft("question_bank")
    written: dict[str, str] = {}
    for group in grouped(module, desk.course):
        for variants in group.items:
            draft.path = record_file(variants[0])
            label = f"Question {len(written) + 1}"
            written[str(variants[0]["id"])] = question_html(variants, draft, desk, label)
    return written


def question_pages(
    module: Module, desk: SiteContext, written: dict[str, str]
) -> tuple[BuiltPage, ...]:
    """Build the questions of one module: one page, or several where there are very many."""
    sheets = question_sheets(module, desk.course)
    pages = []
    for number, groups in enumerate(sheets, start=1):
        html = desk.fill(
            "pages/questions.html",
            desk.draft("question_bank"),
            module=module,
            groups=groups,
            written=written,
            place=(number, len(sheets)),
            objectives=objective_places(module, desk.course),
            total=len(written),
            strip=panel_strip(module, desk.course),
            patterns=mist_patterns(),
            has_lesson=module.module in desk.course.lessons,
            index=parts_index(desk.course, (module,)),
        )
        title = f"{module.title}: questions" + (f", sheet {number}" if number > 1 else "")
        contents = tuple(group.heading for group in groups)
        path = questions_address(module.module, number)
        pages.append(BuiltPage(path, html, title, "questions", contents))
    return tuple(pages)


def question_sheets(module: Module, course: Course) -> tuple[tuple[Group, ...], ...]:
    """Return the groups of each page; an objective may go on over the end of one."""
    groups = grouped(module, course)
    heading_of = {item[0]["id"]: group.heading for group in groups for item in group.items}
    sheets = []
    for run in packed((item for group in groups for item in group.items), PAGE_BYTES):
        headings = dict.fromkeys(heading_of[item[0]["id"]] for item in run)
        sheets.append(
            tuple(
                Group(heading, tuple(i for i in run if heading_of[i[0]["id"]] == heading))
                for heading in headings
            )
        )
    return tuple(sheets)


def objective_places(module: Module, course: Course) -> dict[str, tuple[str, str]]:
    """Return the words of each objective that has items, and where its first one stands."""
    found: dict[str, tuple[str, str]] = {}
    for number, groups in enumerate(question_sheets(module, course), start=1):
        for group in groups:
            place = f"{questions_address(module.module, number)}#{group.heading.anchor}"
            found.setdefault(group.heading.anchor.replace("-", "_"), (group.heading.text, place))
    return found


def grouped(module: Module, course: Course) -> tuple[Group, ...]:
    """Return each objective that has items with them, in the outline's order."""
    groups = (Group(_heading(one), items_of(module, one, course)) for one in module.objectives)
    return tuple(group for group in groups if group.items)


def items_of(module: Module, objective: Objective, course: Course) -> tuple[Variants, ...]:
    """Return the items of one objective."""
    name = objective_id(module, objective)
    asked = course.questions.get(module.module, ())
    return tuple(variants for variants in asked if objective_of(variants[0]) == name)


def _heading(objective: Objective) -> Heading:
    return Heading(2, objective.objective.replace("_", "-"), objective.text)


def record_file(question: Question) -> str:
    """Return the author's file that a question comes from."""
    parts = str(question["id"]).split("/")
    if parts[0] in ("procedures", "faults", "tables"):
        return f"question_bank/{parts[0]}/{parts[1]}.yml"
    return f"question_bank/items/{'/'.join(parts[:2])}.yml"
