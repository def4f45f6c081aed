"""A form to be answered on a screen, as one page that needs nothing beside it.

The page holds no key, keeps what is answered on its device, and saves it as a file that
`generator.marking.tables.answers_file` reads.
"""

from collections.abc import Mapping
from functools import cache
from html import escape
from pathlib import Path
from typing import Any, NamedTuple

from jinja2 import Environment
from markdown_it import MarkdownIt
from markupsafe import Markup

from generator.website.context import TABLE_START, script_of, style_of, theme_templates
from generator.website.exam.exam_content import sitting_content
from generator.website.figures import mist_patterns, question_strip
from generator.website.offline import data_address, licences, policy, whole_script, with_fonts

STYLES = ("ground", "pages", "questions", "on_screen")
# in the order they lean on one another; `exam_start` sets the page going
SCRIPTS = (
    "type",
    "elements",
    "numbers",
    "read_answers",
    "reorder_steps",
    "exam_store",
    "exam_time",
    "exam_answers",
    "exam_file",
    "exam_questions",
    "exam_hand_in",
    "exam_start",
)


class _SharedAssets(NamedTuple):
    """What is the same on the page of every form."""

    script: str
    style: str
    icon: str
    licences: str
    writer: Environment


def sitting_page(form: Mapping[str, Any], *, fonts: Path) -> bytes:
    """Return the page of one form as HTML; the same form and theme give the same bytes.

    form   its plain JSON as issued
    fonts  the theme's folder of print typefaces; the theme around it has all that a page needs
    Raises OSError where a file of the theme is missing.
    """
    content = sitting_content(form)
    stock = _stock(fonts.resolve().parent)
    html = stock.writer.get_template("on_screen.html").render(
        form=content,
        policy=policy(stock.script, stock.style),
        script=stock.script,
        style=stock.style,
        icon=stock.icon,
        licences=stock.licences,
        patterns=mist_patterns(),
        panel=question_strip([question["number"] for question in content["questions"]]),
    )
    return html.encode("utf-8")


@cache
def _stock(theme: Path) -> _SharedAssets:
    assets = theme / "assets"
    return _SharedAssets(
        whole_script("".join(script_of(theme, name) for name in SCRIPTS)),
        with_fonts("".join(style_of(theme, name) for name in STYLES), assets),
        data_address(assets / "mark.svg", "image/svg+xml"),
        licences(assets),
        _writer(theme),
    )


def _writer(theme: Path) -> Environment:
    made = theme_templates(theme)
    made.globals["prose"] = lambda text: Markup(_reader().render(text))
    made.globals["phrase"] = lambda text: Markup(_reader().renderInline(text))
    return made


@cache
def _reader() -> MarkdownIt:
    """Read texts of the bank; a link keeps its words and a picture its description."""
    reader = MarkdownIt("commonmark", {"html": False}).enable("table")
    reader.disable(["code", "heading", "lheading", "reference"])
    for rule in ("link_open", "link_close"):
        reader.add_render_rule(rule, lambda *_: "")
    reader.add_render_rule("image", lambda _, tokens, at, *__: escape(tokens[at].content))
    reader.add_render_rule("table_open", lambda *_: TABLE_START)
    reader.add_render_rule("table_close", lambda *_: "</table></div>\n")
    for name in ("td_open", "th_open"):
        # an attribute 'style' would break the page's content policy
        reader.add_render_rule(name, lambda _, tokens, at, *__: f"<{tokens[at].tag}>")
    return reader
