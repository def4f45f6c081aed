"""Question pages: every study item of a module, grouped by objective."""

from generator.bank.records import Module
from generator.website.addresses import questions_address
from generator.website.course import Course, Question, Variants, objective_id
from generator.website.desk import Desk
from generator.website.draft import BuiltPage, Heading
from generator.website.panel_picture import mist_patterns, panel_strip
from generator.website.question_html import objective_of, question_html

Group = tuple[Heading, list[Variants]]


def question_page(module: Module, desk: Desk) -> BuiltPage:
    """Build the questions of one module."""
    draft = desk.draft("question_bank")
    shown, number = [], 0
    groups = grouped(module, desk.course)
    for heading, items in groups:
        written = []
        for variants in items:
            number += 1
            draft.path = record_file(variants[0])
            written.append(question_html(variants, draft, desk, f"Question {number}"))
        shown.append({"anchor": heading.anchor, "text": heading.text, "questions": written})
    html = desk.fill(
        "pages/questions.html",
        draft,
        module=module,
        groups=shown,
        total=number,
        strip=panel_strip(module, desk.course),
        patterns=mist_patterns(),
        has_lesson=module.module in desk.course.lessons,
    )
    contents = tuple(heading for heading, _ in groups)
    title = f"{module.title}: questions"
    return BuiltPage(questions_address(module.module), html, title, "questions", contents)


def grouped(module: Module, course: Course) -> list[Group]:
    """Give each objective that has items with them, in the outline's order."""
    groups = []
    for objective in module.objectives:
        name = objective_id(module, objective)
        items = [
            variants
            for variants in course.questions.get(module.module, ())
            if objective_of(variants[0]) == name
        ]
        if items:
            anchor = objective.objective.replace("_", "-")
            groups.append((Heading(2, anchor, objective.text), items))
    return groups


def record_file(question: Question) -> str:
    """Give the author's file that a question comes from."""
    parts = str(question["id"]).split("/")
    if parts[0] in ("procedures", "faults", "tables"):
        return f"question_bank/{parts[0]}/{parts[1]}.yml"
    return f"question_bank/items/{'/'.join(parts[:2])}.yml"
