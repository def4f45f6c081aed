"""One style sheet and one script for every page: a phone waits for each file it has to ask for."""

import re
from pathlib import Path

from generator.website.context.page_context import SiteFile

_REMARK = re.compile(r"^[ \t]*/\*.*?\*/[ \t]*\n", re.MULTILINE | re.DOTALL)
_INDENT = re.compile(r"^[ \t]+", re.MULTILINE)
STYLES = ("ground", "pages", "questions", "checks", "figures")
PAPER = "paper"
# in the order they lean on one another; `start` sets the page going
SCRIPTS = (
    "type",
    "elements",
    "days",
    "numbers",
    "bands",
    "unit_words",
    "schedule",
    "progress",
    "panel",
    "marking",
    "load_questions",
    "read_answers",
    "reorder_steps",
    "feedback_words",
    "feedback",
    "answering",
    "question_forms",
    "questions",
    "one_at_a_time",
    "pick_questions",
    "check_session",
    "checks",
    "look_back",
    "print",
    "keep_panel",
    "start",
    "offline_updates",
)
BEFORE_UNITS = "elements"
SEARCH_SCRIPTS = ("search_index", "search")


def bundles(theme: Path, units: str) -> tuple[SiteFile, ...]:
    """Return the style sheet, the script of every page and the script of the search page.

    theme  folder with assets/css and assets/js
    units  the generated script of units
    """
    paper = f"@media print {{\n{style_of(theme, PAPER)}}}\n"
    styles = "".join(style_of(theme, name) for name in STYLES) + paper
    scripts = {name: script_of(theme, name) for name in SCRIPTS}
    scripts[BEFORE_UNITS] += units
    search = [script_of(theme, name) for name in SEARCH_SCRIPTS]
    return (
        SiteFile("assets/course.css", without_remarks(styles)),
        SiteFile("assets/course.js", without_remarks("".join(scripts.values()))),
        SiteFile("assets/search.js", without_remarks("".join(search))),
    )


def without_remarks(text: str) -> str:
    """Leave out what only a reader of the source needs: whole-line remarks, and indents."""
    return _INDENT.sub("", _REMARK.sub("", text))


def style_of(theme: Path, name: str) -> str:
    """Return a style sheet of the theme, written to stand in the folder above its own."""
    text = (theme / "assets" / "css" / f"{name}.css").read_text(encoding="utf-8")
    return text.replace("url(../", "url(")


def script_of(theme: Path, name: str) -> str:
    """Return a script of the theme."""
    return (theme / "assets" / "js" / f"{name}.js").read_text(encoding="utf-8")
