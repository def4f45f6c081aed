"""A page while it is written, and a page that is done."""

from dataclasses import dataclass, field
from typing import NamedTuple

from generator.diagnostics import Place, Problem
from generator.website.course import Course


class Heading(NamedTuple):
    """A heading on a page: its level, anchor and words."""

    level: int
    anchor: str
    text: str


class BuiltPage(NamedTuple):
    """A finished page.

    path      file name in the site
    html      what stands inside the page frame
    contents  headings of the second level, for the page's own contents list
    """

    path: str
    html: str
    title: str
    kind: str
    contents: tuple[Heading, ...] = ()
    before: tuple[str, str] | None = None
    after: tuple[str, str] | None = None


class SiteFile(NamedTuple):
    """A file that pages load besides the theme's own; `path` is its place in the site."""

    path: str
    text: str


@dataclass(slots=True)
class Draft:
    """Collects what a page turns up while it is rendered.

    path      the author's file, for problems
    problems  may be shared by the pages of one site
    cautions  the author's own cautions that the page has said
    told      hazards that the page has told in full
    """

    course: Course
    path: str
    problems: list[Problem] = field(default_factory=list)
    headings: list[Heading] = field(default_factory=list)
    cited: list[str] = field(default_factory=list)
    cautions: list[str] = field(default_factory=list)
    told: set[str] = field(default_factory=set)
    anchors: set[str] = field(default_factory=set)
    line: int = 1

    def cite(self, key: str) -> None:
        """Note a source of this page, once."""
        if key not in self.cited:
            self.cited.append(key)

    def report(self, rule: str, message: str, hint: str = "") -> None:
        """Note a problem at the line that is being rendered."""
        self.problems.append(Problem(Place(self.path, self.line, 1), "error", rule, message, hint))

    def free_anchor(self, wanted: str) -> str:
        """Give an anchor that no other heading of the page has."""
        anchor, count = wanted, 1
        while anchor in self.anchors:
            count += 1
            anchor = f"{wanted}-{count}"
        self.anchors.add(anchor)
        return anchor
