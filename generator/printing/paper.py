"""Make the papers of a form, and the key of a whole class."""

from collections.abc import Mapping, Sequence
from pathlib import Path
from typing import Any, Literal

from generator.printing.answer_sheet import PAPERS, DoesNotFit, answer_sheet_content
from generator.printing.content import (
    Sheet,
    answer_key_content,
    class_key_content,
    feedback_sheet_content,
    marking_guide_content,
    question_paper_content,
)
from generator.printing.typesetter import PrintingRefused, typeset

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
    """Set the answer sheet of a form as a tagged PDF, with a code that holds the form's id only.

    Arguments and errors are those of `question_paper`.
    """
    try:
        content = answer_sheet_content(form, large_print) | sheet_of_paper(paper, large_print)
    except DoesNotFit as refused:
        message = f"Cannot print the answer sheet of form {form['form']}: {refused}."
        raise PrintingRefused(message) from refused
    return typeset("answer_sheet", content, fonts=fonts)


def answer_key(
    form: Mapping[str, Any], *, paper: PaperSize, fonts: Path, large_print: bool = False
) -> bytes:
    """Set the answer key of a form as a tagged PDF, with bands, working, reasons and sources.

    Arguments and errors are those of `question_paper`.
    """
    content = answer_key_content(form) | sheet_of_paper(paper, large_print)
    return typeset("answer_key", content, fonts=fonts)


def class_key(
    forms: Sequence[Mapping[str, Any]], *, paper: PaperSize, fonts: Path, large_print: bool = False
) -> bytes:
    """Set the answers of all forms of a class as a tagged PDF: numbers down, forms across.

    `forms` are the plain JSON of the forms, at least one. The other arguments and the errors are
    those of `question_paper`.
    """
    if not forms:
        raise PrintingRefused("Cannot print the class key: there is no form.")
    sheet = Sheet(PAPERS[paper]["width"], PAPERS[paper]["height"])
    content = class_key_content(forms, sheet, large_print) | sheet_of_paper(paper, large_print)
    return typeset("class_key", content, fonts=fonts)


def marking_guide(
    form: Mapping[str, Any], *, paper: PaperSize, fonts: Path, large_print: bool = False
) -> bytes | None:
    """Set how the written answers of a form are marked as a tagged PDF, or give nothing.

    Nothing is given where no answer is written. Arguments and errors are those of
    `question_paper`.
    """
    content = marking_guide_content(form)
    if content is None:
        return None
    return typeset("marking_guide", content | sheet_of_paper(paper, large_print), fonts=fonts)


def feedback_sheet(
    form: Mapping[str, Any], *, paper: PaperSize, fonts: Path, large_print: bool = False
) -> bytes:
    """Set the sheet that a person gets back as a tagged PDF: results to tick, without any key.

    Arguments and errors are those of `question_paper`.
    """
    content = feedback_sheet_content(form) | sheet_of_paper(paper, large_print)
    return typeset("feedback_sheet", content, fonts=fonts)


def sheet_of_paper(paper: PaperSize, large_print: bool) -> dict[str, Any]:
    """Return what every template is told of the paper it is printed on."""
    return {"paper": {"a4": "a4", "letter": "us-letter"}[paper], "large_print": large_print}
