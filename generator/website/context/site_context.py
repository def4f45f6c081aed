"""The desk that pages are made at, and the words for sources."""

import json
from collections.abc import Mapping
from functools import partial
from pathlib import Path
from typing import Any

from markupsafe import Markup

from generator.bank import hazards_met
from generator.bank.models import SourceTag
from generator.diagnostics import Problem
from generator.issued import IssuedSource
from generator.quantities import UNITS
from generator.questions import lower_start
from generator.website.context.addresses import source_address
from generator.website.context.caution_boxes import caution_box, hazard_anchor
from generator.website.context.course import Course
from generator.website.context.page_context import PageContext
from generator.website.context.prose import phrase, prose
from generator.website.context.site_memory import SiteMemory
from generator.website.context.theme_templates import theme_templates
from generator.wording import TAG_WORDS, status_words


class SiteContext:
    """Where pages are made: the course, the theme's templates and the problems that turn up.

    The same course and theme give the same text.
    """

    def __init__(self, course: Course, theme: Path, memory: SiteMemory | None = None) -> None:
        self.course = course
        self.memory = memory or SiteMemory()
        self.problems: list[Problem] = []
        self._environment = theme_templates(theme)
        self._environment.filters["data_block"] = data_block
        self._environment.filters["lower_first"] = lower_start

    def draft(self, path: str, text: str = "") -> PageContext:
        """Begin a page; its problems are kept here.

        path  the author's file
        text  what the author wrote there, where places in it are to be found
        """
        return PageContext(self.course, path, self.problems, text=text)

    def fill(self, template: str, draft: PageContext, /, **values: Any) -> str:
        """Render a template; what a template calls works on this draft.

        values  what it shows; `prose` and the like among them take the place of our own
        """
        known = {
            "course": draft.course,
            "prose": lambda text: Markup(prose(text, draft)),
            "phrase": lambda text: Markup(phrase(text, draft)),
            "cited": partial(cited, draft),
            "caution_box": partial(caution_box, draft),
            "hazards_met": hazards_met,
            "hazard_anchor": hazard_anchor,
            "status_words": status_words,
            "symbol_of": symbol_of,
        }
        return self._environment.get_template(template).render(known | values)


def data_block(value: Mapping[str, Any]) -> Markup:
    """Write a value as JSON that cannot end its script element."""
    text = json.dumps(value, ensure_ascii=False, sort_keys=True, separators=(",", ":"))
    return Markup(text.replace("<", "\\u003c"))


def symbol_of(unit: str) -> str:
    """Return the symbol of a unit, or None for words and bare numbers."""
    return UNITS[unit].symbol if unit in UNITS else ""


def cited(draft: PageContext, tags: tuple[SourceTag, ...]) -> tuple[dict[str, str], ...]:
    """Return the words and the address of each source tag, and note what is cited."""
    return tuple(_cited_tag(draft, tag) for tag in tags)


def _cited_tag(draft: PageContext, tag: SourceTag) -> dict[str, str]:
    if not tag.is_published:
        return {"text": TAG_WORDS[tag.key], "address": "", "tag": tag.key, "status": ""}
    source = draft.course.sources.get(tag.key)
    if source is None:
        draft.report("unknown-source", f"there is no source '{tag.key}'")
        return {"text": tag.key, "address": "", "tag": "published", "status": ""}
    draft.cite(tag.key)
    text = f"{source.document}, {tag.place}" if tag.place else source.document
    return {
        "text": text,
        "address": source_address(tag.key),
        "tag": "published",
        "status": status_words(source.status),
    }


def cited_of_question(course: Course, sources: list[IssuedSource]) -> tuple[dict[str, str], ...]:
    """Return the words and the address of each source of a solved question."""
    return tuple(
        {
            "text": source["text"] if source["tag"] == "published" else TAG_WORDS[source["tag"]],
            "address": source_address(source["key"]) if source.get("key") in course.sources else "",
            "tag": source["tag"],
        }
        for source in sources
    )
