"""Lesson pages: the author's Markdown with the records filled in."""

from generator.website.context import BuiltPage, PageContext, SiteContext, rendered
from generator.website.figures import panel_strip
from generator.website.pages.blocks import SOURCES_HERE, lesson_blocks, sources_html


def lesson_page(name: str, desk: SiteContext) -> tuple[BuiltPage, tuple[str, ...]]:
    """Build a lesson or another page of words; give its cautions with it."""
    text = desk.course.lessons[name]
    draft = desk.draft(f"course/{name}.md", text)
    body = rendered(text, draft, lesson_blocks(desk))
    if SOURCES_HERE in body:
        body = body.replace(SOURCES_HERE, sources_html(draft, desk))
    module = desk.course.module_named(name)
    title, rest = split_title(body, draft, module.title if module else name)
    contents = tuple(heading for heading in draft.headings if heading.level == 2)
    html = desk.fill(
        "pages/lesson.html",
        draft,
        module=module,
        title=title,
        body=rest,
        strip=panel_strip(module, desk.course) if module else "",
        headings=contents,
        has_questions=bool(desk.course.questions.get(name)),
    )
    return BuiltPage(f"{name}.html", html, title, "lesson", contents), tuple(draft.cautions)


def split_title(body: str, draft: PageContext, fallback: str) -> tuple[str, str]:
    """Return the first heading's words and the body without it; report where there is none."""
    first = draft.headings[0] if draft.headings else None
    if first is None or first.level != 1:
        draft.line = 1
        draft.report("lesson-title", "the lesson does not begin with a heading of the first level")
        return fallback, body
    start, _, after = body.partition("</h1>")
    return first.text, start[: start.index("<h1")] + after.lstrip("\n")
