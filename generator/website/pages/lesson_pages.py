"""Lesson pages: the author's Markdown with the records filled in."""

import re
from collections.abc import Iterator, Sequence

from generator.website.context import (
    BuiltPage,
    PageContext,
    PagePart,
    PageSection,
    SiteContext,
    page_parts,
)
from generator.website.figures import panel_strip
from generator.website.pages.blocks import lesson_blocks, sources_html

# a study question that a lesson shows
_ASKED = re.compile(r"^[ >]*(?:```|~~~)+ *question +(\S+)", re.MULTILINE)


def lesson_page(name: str, desk: SiteContext) -> tuple[BuiltPage, tuple[str, ...]]:
    """Build a lesson or another page of words; return its cautions with it."""
    course, text = desk.course, desk.course.lessons[name]
    module = course.module_named(name)
    counted = [course.items_of(module, entry) for entry in module.objectives] if module else []
    asked = [course.question_named(found[1]) for found in _ASKED.finditer(text)]
    inputs = (text, counted, asked, bool(course.questions.get(name)))
    return desk.memory.page(f"lesson {name}", inputs, lambda: _built(name, desk))


def _built(name: str, desk: SiteContext) -> tuple[BuiltPage, tuple[str, ...]]:
    text = desk.course.lessons[name]
    draft = desk.draft(f"course/{name}.md", text)
    parts = page_parts(text, draft, lesson_blocks(desk))
    module = desk.course.module_named(name)
    title = page_title(draft, module.title if module else name)
    contents = tuple(heading for heading in draft.headings if heading.level == 2)
    html = desk.fill(
        "pages/lesson.html",
        draft,
        module=module,
        title=title,
        body="".join(_shown(parts, sources_html(draft, desk))),
        strip=panel_strip(module, desk.course) if module else "",
        headings=contents,
        has_questions=bool(desk.course.questions.get(name)),
    )
    path = f"{name}.html"
    sections = tuple(_sections(parts, title))
    page = BuiltPage(path, html, title, "lesson", contents, sections=sections)
    return page, tuple(draft.cautions)


def page_title(draft: PageContext, fallback: str) -> str:
    """Return the words of the first heading; report where it is not of the first level."""
    first = draft.headings[0] if draft.headings else None
    if first is None or first.level != 1:
        draft.line = 1
        draft.report("lesson-title", "the lesson does not begin with a heading of the first level")
        return fallback
    return first.text


def _shown(parts: Sequence[PagePart], sources: str) -> Iterator[str]:
    """Return the HTML of each part; the title stands above them, and sources come in last."""
    is_titled = False
    for part in parts:
        is_title = not is_titled and part.heading is not None
        is_titled = is_titled or is_title
        if not (is_title and part.heading is not None and part.heading.level == 1):
            yield part.heading_html
        yield sources if part.is_late else part.html


def _sections(parts: Sequence[PagePart], title: str) -> Iterator[PageSection]:
    """Return the words of the page, cut at its headings of the second level."""
    section = PageSection(title, "", "")
    for part in parts:
        if part.heading is not None and part.heading.level == 2:
            yield section
            section = PageSection(part.heading.text, part.heading.anchor, "")
        section = section._replace(words=f"{section.words} {part.words}".strip())
    yield section
