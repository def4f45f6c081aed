"""Forms as the files that an instructor prints, copies and marks from."""

from collections.abc import Callable, Iterable, Iterator, Sequence
from dataclasses import dataclass
from functools import partial
from typing import Any

from generator.issued import IssuedForm
from generator.marking.tables import answer_table
from generator.printing import (
    PaperSize,
    answer_key,
    answer_sheet,
    class_key,
    feedback_sheet,
    marking_guide,
    question_paper,
    side_by_side,
)
from generator.website.exam import sitting_page
from generator.workflows.project import Project

_SHEETS = (("questions", question_paper), ("answer-sheet", answer_sheet), ("key", answer_key))
_AFTERWARDS = (("feedback", feedback_sheet), ("marking-guide", marking_guide))
# filled in by hand, so never written over
ANSWERS = "answers.csv"


@dataclass(frozen=True, slots=True)
class PaperSettings:
    """What papers are printed with; kept in the records, so that they can be printed again.

    on_screen  whether a page to answer on a screen goes with each form
    """

    paper: PaperSize = "a4"
    large_print: bool = False
    on_screen: bool = False


def paper_files(
    project: Project, form: IssuedForm, settings: PaperSettings
) -> Iterator[tuple[str, bytes]]:
    """Return name and bytes of question paper, answer sheet and key of a form."""
    return _set(project, form, settings, _SHEETS)


def issue_files(
    project: Project,
    forms: Sequence[IssuedForm],
    settings: PaperSettings,
    watched: Callable[[Sequence[IssuedForm]], Iterable[IssuedForm]] = iter,
) -> dict[str, bytes]:
    """Return every file of an issue by its name; no name holds a person.

    watched  goes through the forms one by one, so that somebody can be told how far it is
    """
    files: dict[str, bytes] = {}
    made = side_by_side(partial(_all_of_form, project, form, settings) for form in forms)
    for _, of_form in zip(watched(forms), made, strict=True):
        files.update(of_form)
    files["class-key.pdf"] = class_key(forms, **_layout(project, settings))
    files[ANSWERS] = answer_table(forms).encode("utf-8")
    return files


def _all_of_form(project: Project, form: IssuedForm, settings: PaperSettings) -> dict[str, bytes]:
    files = dict(_set(project, form, settings, (*_SHEETS, *_AFTERWARDS)))
    if settings.on_screen:
        files[f"{_start(form)}-on-screen.html"] = sitting_page(form, fonts=project.fonts)
    return files


def _set(
    project: Project,
    form: IssuedForm,
    settings: PaperSettings,
    makers: Iterable[tuple[str, Callable[..., bytes | None]]],
) -> Iterator[tuple[str, bytes]]:
    for name, make in makers:
        data = make(form, **_layout(project, settings))
        if data is not None:
            yield f"{_start(form)}-{name}.pdf", data


def _start(form: IssuedForm) -> str:
    return f"{form['blueprint']}-{form['form']}"


def _layout(project: Project, settings: PaperSettings) -> dict[str, Any]:
    return {
        "paper": settings.paper,
        "fonts": project.fonts,
        "large_print": settings.large_print,
    }
