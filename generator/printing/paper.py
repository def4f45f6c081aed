"""Make the three papers of a form: question paper, answer sheet and answer key."""

from collections.abc import Mapping
from pathlib import Path
from typing import Any, Literal

from generator.printing.key_content import answer_key_content
from generator.printing.paper_content import question_paper_content
from generator.printing.sheet_content import answer_sheet_content
from generator.printing.typesetter import typeset

PaperSize = Literal["a4", "letter"]


def question_paper(
    form: Mapping[str, Any], *, paper: PaperSize, fonts: Path, large_print: bool = False
) -> bytes:
    """Set the question paper of a form as a tagged PDF, without any key.

    `form` is the plain JSON of one form; `fonts` is the folder with the font files.
    `large_print` sets the text in 18 pt. Raises PrintingRefused when it cannot be set.
    """
    content = question_paper_content(form) | sheet_of_paper(paper, large_print)
    return typeset("question_paper", content, fonts=fonts)


def answer_sheet(
    form: Mapping[str, Any], *, paper: PaperSize, fonts: Path, large_print: bool = False
) -> bytes:
    """Set the answer sheet of a form as a tagged PDF, with a code that holds the form only.

    Arguments and errors are those of `question_paper`.
    """
    content = answer_sheet_content(form) | sheet_of_paper(paper, large_print)
    return typeset("answer_sheet", content, fonts=fonts)


def answer_key(
    form: Mapping[str, Any], *, paper: PaperSize, fonts: Path, large_print: bool = False
) -> bytes:
    """Set the answer key of a form as a tagged PDF, with bands, working, reasons and sources.

    Arguments and errors are those of `question_paper`.
    """
    content = answer_key_content(form) | sheet_of_paper(paper, large_print)
    return typeset("answer_key", content, fonts=fonts)


def sheet_of_paper(paper: PaperSize, large_print: bool) -> dict[str, Any]:
    """Give what every template is told of the paper it is printed on."""
    return {"paper": {"a4": "a4", "letter": "us-letter"}[paper], "large_print": large_print}
