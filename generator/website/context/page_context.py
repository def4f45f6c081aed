"""A page while it is written, and a page that is done."""

from dataclasses import dataclass, field
from typing import NamedTuple

from generator.diagnostics import Place, Problem
from generator.website.context.course import Course


class Heading(NamedTuple):
    """A heading on a page: its level, anchor and words."""

    level: int
    anchor: str
    text: str


class PageSection(NamedTuple):
    """What a search finds of a page: a heading, its anchor and the words below it."""

    title: str
    anchor: str
    words: str


class BuiltPage(NamedTuple):
    """A finished page.

    path      file name in the site
    html      what is inside the page frame
    contents  headings of the second level, for the page's own contents list
    sections  its words by heading, where a search finds them
    """

    path: str
    html: str
    title: str
    kind: str
    contents: tuple[Heading, ...] = ()
    before: tuple[str, str] | None = None
    after: tuple[str, str] | None = None
    sections: tuple[PageSection, ...] = ()


class SiteFile(NamedTuple):
    """A file that pages load besides the theme's own; `path` is its place in the site."""

    path: str
    text: str


@dataclass(slots=True)
class PageContext:
    """Collects what a page turns up while it is rendered.

    path      the author's file, for problems
    problems  may be shared by the pages of one site
    text      the author's text, where places in it are to be found
    line      the line that is being rendered
    base      lines before the text that is being rendered, inside a block
    cautions  the author's own cautions that the page has said
    told      hazards that the page has told in full
    heard     what a search finds of the block that is being written
    """

    course: Course
    path: str
    problems: list[Problem] = field(default_factory=list)
    headings: list[Heading] = field(default_factory=list)
    cited: list[str] = field(default_factory=list)
    cautions: list[str] = field(default_factory=list)
    told: set[str] = field(default_factory=set)
    anchors: set[str] = field(default_factory=set)
    heard: str = ""
    text: str = ""
    line: int = 1
    base: int = 0

    def cite(self, key: str) -> None:
        """Note a source of this page, once."""
        if key not in self.cited:
            self.cited.append(key)

    def report(
        self, rule: str, message: str, hint: str = "", sought: str = "", shift: int = 0
    ) -> None:
        """Note a problem at the line that is being rendered.

        sought  words of the author's text: the place is where they are from that line on
        shift   columns to the right of their start
        """
        place = self._place_of(sought) if sought else Place(self.path, self.line, 1)
        self.problems.append(Problem(place.shifted(shift), "error", rule, message, hint))

    def _place_of(self, sought: str) -> Place:
        lines = self.text.splitlines()
        for number in range(self.line, len(lines) + 1):
            column = lines[number - 1].find(sought)
            if column >= 0:
                return Place(self.path, number, column + 1)
        return Place(self.path, self.line, 1)

    def free_anchor(self, wanted: str) -> str:
        """Return an anchor that no other heading of the page has."""
        anchor, count = wanted, 1
        while anchor in self.anchors:
            count += 1
            anchor = f"{wanted}-{count}"
        self.anchors.add(anchor)
        return anchor
