"""The course home, the list of lessons and the learner's own panel."""

from generator.website.context import BuiltPage, Course, SiteContext, page_parts
from generator.website.figures import panel_strips
from generator.website.pages.blocks import lesson_blocks
from generator.website.questions import Written

NO_WORDS = "# Guidecoat\n\n## Your panel\n\n```modules\n```\n"


def home_page(desk: SiteContext) -> BuiltPage:
    """Build the course home from the author's words; the panel stands where they ask for it."""
    draft = desk.draft("course/index.md")
    text = desk.course.lessons.get("index", NO_WORDS)
    parts = page_parts(text, draft, lesson_blocks(desk))
    first, *others = parts or (None,)
    html = desk.fill(
        "pages/home.html",
        draft,
        title=draft.headings[0].text if draft.headings else desk.course.title,
        lead=first.html if first else "",
        parts=others,
        counts=counts(desk.course),
    )
    return BuiltPage("index.html", html, desk.course.title, "home")


def lessons_page(desk: SiteContext) -> BuiltPage:
    """List the modules in the order the work goes, with what each one teaches."""
    taught = {module.module for module in desk.course.taught_modules()}
    html = desk.fill("pages/lessons.html", desk.draft("question_bank/outline.yml"), taught=taught)
    return BuiltPage("lessons.html", html, "Lessons", "lessons")


def progress_page(desk: SiteContext, written: Written) -> BuiltPage:
    """Show the learner's panel objective by objective, with save, load and delete."""
    html = desk.fill(
        "pages/progress.html",
        desk.draft("question_bank/outline.yml"),
        strips=panel_strips(desk.course),
        places={
            one.module: written[one.module].places(one.module) if one.module in written else {}
            for one in desk.course.modules
        },
    )
    return BuiltPage("progress.html", html, "Your panel", "progress")


def counts(course: Course) -> dict[str, int]:
    """Count the records that can be looked up."""
    return {
        "procedures": len(course.procedures),
        "faults": len(course.faults),
        "tables": len(course.tables),
    }
