"""Question pages: every study item of a module, grouped by objective."""

from generator.bank.models import Module
from generator.website.context import BuiltPage, SiteContext, questions_address
from generator.website.figures import panel_strip
from generator.website.questions.question_parts import parts_index
from generator.website.questions.written_questions import ModuleQuestions


def question_pages(
    module: Module, desk: SiteContext, written: ModuleQuestions
) -> tuple[BuiltPage, ...]:
    """Build the questions of one module: one page, or several where there are many."""
    pages = []
    for number, groups in enumerate(written.sheets, start=1):
        html = desk.fill(
            "pages/questions.html",
            desk.draft("question_bank"),
            module=module,
            groups=groups,
            written=written.html,
            place=(number, len(written.sheets)),
            objectives=written.places(module.module),
            total=len(written.html),
            strip=panel_strip(module, desk.course),
            has_lesson=module.module in desk.course.lessons,
            index=parts_index(desk.course, {module.module: written}),
        )
        title = f"{module.title}: questions" + (f", sheet {number}" if number > 1 else "")
        contents = tuple(group.heading for group in groups)
        path = questions_address(module.module, number)
        pages.append(BuiltPage(path, html, title, "questions", contents))
    return tuple(pages)
