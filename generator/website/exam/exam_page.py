"""A form to be answered on a screen, as one page that needs nothing beside it.

The page holds no key, keeps what is answered on its device, and saves it as a file that
`generator.marking.tables.answers_file` reads.
"""

from functools import cache
from pathlib import Path
from typing import NamedTuple

from jinja2 import Environment
from markupsafe import Markup

from generator.issued import IssuedForm
from generator.website.context import script_of, style_of, theme_templates
from generator.website.exam.exam_content import sitting_content
from generator.website.figures import mist_patterns, question_strip
from generator.website.offline import data_address, licences, policy, whole_script, with_fonts
from generator.wording import html_of_line, html_of_text

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


def sitting_page(form: IssuedForm, *, fonts: Path) -> bytes:
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
    made.globals["prose"] = lambda text: Markup(html_of_text(text))
    made.globals["phrase"] = lambda text: Markup(html_of_line(text))
    return made
