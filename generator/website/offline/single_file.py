"""The whole course in one file: it opens by a double click and needs nothing beside it."""

from collections.abc import Sequence
from pathlib import Path
from typing import NamedTuple

from generator.website.context import BuiltPage, theme_templates
from generator.website.offline.page_sections import Section, page_sections
from generator.website.offline.self_contained import (
    data_address,
    licences,
    policy,
    whole_script,
    with_fonts,
)

ONE_FILE = "course_in_one_file.html"
SCRIPTS = ("check_index.js", "assets/course.js", "search_list.js", "assets/search.js")


class OneFile(NamedTuple):
    """What the one-file course is filled with; script and style stand in its policy."""

    title: str
    top: str
    foot: str
    icon: str
    sections: tuple[Section, ...]
    script: str
    style: str
    licences: str

    @property
    def policy(self) -> str:
        """Return the content policy: only this script and this style, and no address at all."""
        return policy(self.script, self.style)


def one_file(site: Path, pages: Sequence[BuiltPage], site_name: str, theme: Path) -> str:
    """Write a finished site as one document; the same site gives the same bytes.

    site   folder of the site, for its scripts, style and typefaces
    pages  in reading order; the first one is the course home
    """
    templates = theme_templates(theme)
    frame, sections = page_sections(pages, site_name, templates)
    filled = OneFile(
        title=sections[0].title,
        top=frame.top,
        foot=frame.foot,
        icon=data_address(site / "assets" / "mark.svg", "image/svg+xml"),
        sections=sections,
        script=_script(site, theme),
        style=_style(site),
        licences=licences(site / "assets"),
    )
    return templates.get_template("one_file.html").render(one=filled)


def _script(site: Path, theme: Path) -> str:
    own = (theme / "assets" / "js" / "one_file.js").read_text(encoding="utf-8")
    text = "".join((site / path).read_text(encoding="utf-8") for path in SCRIPTS) + own
    return whole_script(text)


def _style(site: Path) -> str:
    folder = site / "assets"
    text = (folder / "course.css").read_text(encoding="utf-8")
    return with_fonts(text, folder)
