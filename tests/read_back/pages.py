"""Cut the text of a printed paper, key or marking guide into its questions."""

import re
from dataclasses import dataclass

from tests.printing.pdf_reading import page_texts, squeezed

FOOT = re.compile(r"Form \S+ Edition \S+ Seed .{1,60}? Id \w+ Page \d+ of \d+$")
CONSTANTS = "Units and constants –"
MUST = r"(MUST BE RIGHT )?"
TASKS = "number and unit|one answer|one or more answers|put in order|match|written answer"
PAPER_HEAD = re.compile(rf"Question (\d+) {MUST}({TASKS}) · (\d+) marks?")
KEY_HEAD = re.compile(rf"Question (\d+) {MUST}(\d+) marks? ([a-z_0-9]+(?:/[a-z_0-9]+)+)")
GUIDE_HEAD = re.compile(rf"Question (\d+) {MUST}(\d+) marks?()")
LIST_HEAD = "No. Answer Marks"


@dataclass(frozen=True, slots=True)
class Part:
    """One question as it is printed.

    heading  its kind on a paper, its name on a key
    body     all that stands below the heading, with single spaces
    must     whether its heading says that it must be right
    """

    must: bool
    marks: int
    heading: str
    body: str

    @property
    def tight(self) -> str:
        """Return the body without spaces: a reader of PDF guesses where they were."""
        return squeezed(self.body)


def printed_text(document: bytes) -> str:
    """Read all pages of a PDF without the line at their foot."""
    return " ".join(FOOT.sub("", page).strip() for page in page_texts(document))


def paper_parts(text: str) -> dict[int, Part]:
    """Read the questions of a question paper by their numbers."""
    found = _cut(text.split(CONSTANTS)[0], PAPER_HEAD)
    return {
        int(number): Part(bool(must), int(marks), task, body)
        for (number, must, task, marks), body in found
    }


def key_parts(text: str) -> dict[int, Part]:
    """Read the questions of an answer key by their numbers."""
    return _with_names(text, KEY_HEAD)


def guide_parts(text: str) -> dict[int, Part]:
    """Read the questions of a marking guide by their numbers."""
    return _with_names(text, GUIDE_HEAD)


def _with_names(text: str, head: re.Pattern[str]) -> dict[int, Part]:
    return {
        int(number): Part(bool(must), int(marks), name, body)
        for (number, must, marks, name), body in _cut(text, head)
    }


def answers_at_a_glance(text: str) -> str:
    """Read the list at the top of a key, as one line of number, answer and marks."""
    top = text[: next(KEY_HEAD.finditer(text)).start()]
    lines = top.split(LIST_HEAD, 1)[1].replace(LIST_HEAD, " ")
    return " ".join(lines.split("* More than one order")[0].split())


def _cut(text: str, head: re.Pattern[str]) -> list[tuple[tuple[str, ...], str]]:
    heads = list(head.finditer(text))
    ends = [following.start() for following in heads] + [len(text)]
    return [
        (start.groups(), text[start.end() : end].strip())
        for start, end in zip(heads, ends[1:], strict=True)
    ]
