"""The whole course in one file: it opens by a double click and needs nothing beside it."""

import json
import re
from collections.abc import Iterable, Mapping, Sequence
from pathlib import Path
from typing import NamedTuple

from generator.website.context import theme_templates
from generator.website.offline.page_sections import Section, page_sections
from generator.website.offline.self_contained import (
    BrokenScript,
    data_address,
    licences,
    policy,
    whole_script,
    with_fonts,
)

ONE_FILE = "course_in_one_file.html"
SCRIPTS = ("assets/course.js", "search_list.js", "assets/search.js")
_PART = re.compile(r'Guidecoat\.parts\[("[^"]+")\]=(.*);\n\Z', re.DOTALL)


class OneFile(NamedTuple):
    """What the frame of the one-file course is filled with; script and style stand in its policy.

    parts  part name to (item, method) of its questions, which stand in the pages already
    """

    title: str
    top: str
    foot: str
    patterns: str
    icon: str
    sections: tuple[Section, ...]
    script: str
    style: str
    parts: Mapping[str, list[tuple[str, str]]]
    licences: str

    @property
    def policy(self) -> str:
        """Return the content policy: only this script and this style, and no address at all."""
        return policy(self.script, self.style)


def one_file(site: Path, pages: Sequence[str], theme: Path) -> str:
    """Write a finished site as one document; the same site gives the same bytes.

    pages  file names in reading order; the first one is the course home
    """
    texts = [(site / page).read_text(encoding="utf-8") for page in pages]
    frame, sections = page_sections(pages, texts)
    parts = sorted((site / "parts").glob("**/*.js"))
    filled = OneFile(
        title=sections[0].title,
        top=frame.top,
        foot=frame.foot,
        patterns=frame.patterns,
        icon=data_address(site / "assets" / "mark.svg", "image/svg+xml"),
        sections=sections,
        script=_script(site, theme),
        style=_style(site),
        parts=dict(_part(path.read_text(encoding="utf-8")) for path in parts),
        licences=licences(site / "assets"),
    )
    writer = theme_templates(theme)
    return writer.get_template("one_file.html").render(one=filled, parts=_block(filled.parts))


def _script(site: Path, theme: Path) -> str:
    own = (theme / "assets" / "js" / "one_file.js").read_text(encoding="utf-8")
    text = "".join((site / path).read_text(encoding="utf-8") for path in SCRIPTS) + own
    return whole_script(text)


def _style(site: Path) -> str:
    folder = site / "assets"
    text = (folder / "course.css").read_text(encoding="utf-8")
    return with_fonts(text, folder)


def _part(script: str) -> tuple[str, list[tuple[str, str]]]:
    found = _PART.search(script)
    if found is None:
        raise BrokenScript("a part of the questions is not in the form that pages load")
    questions: Iterable[Mapping[str, str]] = json.loads(found[2])
    return json.loads(found[1]), [(one["id"], one["method"]) for one in questions]


def _block(value: Mapping[str, object]) -> str:
    text = json.dumps(value, ensure_ascii=False, sort_keys=True, separators=(",", ":"))
    return text.replace("<", "\\u003c")
