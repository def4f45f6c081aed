"""A report as one page that needs nothing beside it: no script, no address but the course's own."""

from collections.abc import Mapping
from functools import cache
from pathlib import Path
from typing import Any

from jinja2 import Environment
from markupsafe import Markup

from generator.website.context import lesson_address, questions_address, theme_templates
from generator.website.offline import licences, policy_without_script, with_fonts
from generator.wording import html_of_line


def report_page(content: Mapping[str, Any], *, theme: Path, site: str) -> bytes:
    """Return a report as HTML; the same content, theme and place give the same bytes.

    content  the plain JSON of a report as `generator.reports` gives it
    theme    folder of the site's theme
    site     where the built course lies as seen from the page, such as '../../../site/'
    """
    style = _style(theme)
    html = _environment(theme).get_template(f"reports/{content['kind']}.html")
    text = html.render(
        report=content,
        policy=policy_without_script(style),
        style=Markup(style),
        licences=Markup(licences(theme / "assets")),
        lesson=lambda module: f"{site}{lesson_address(module)}",
        practice=lambda objective: f"{site}{_practice(objective)}",
    )
    return text.encode("utf-8")


def _practice(objective: str) -> str:
    module, _, name = objective.partition("/")
    return f"{questions_address(module)}#{name.replace('_', '-')}"


@cache
def _environment(theme: Path) -> Environment:
    made = theme_templates(theme)
    made.filters["inline"] = lambda text: Markup(html_of_line(text))
    made.filters["drawing"] = Markup
    return made


@cache
def _style(theme: Path) -> str:
    own = (theme / "reports" / "report.css").read_text("utf-8")
    ground = (theme / "assets" / "css" / "ground.css").read_text("utf-8")
    return with_fonts(ground.replace("url(../", "url(") + own, theme / "assets")
