"""All that `check` and `build` look at: the bank, its rules and texts, letters, files, settings."""

from collections.abc import Iterator
from pathlib import Path

from generator.bank import Bank, ScalarNode, Verdicts, written_texts
from generator.diagnostics import Place, Problem, sorted_problems
from generator.printing import PrintingRefused, unsettable
from generator.workflows.checking.fillable_plans import blueprint_problems
from generator.workflows.checking.loading import read_and_check
from generator.workflows.project import Project


def whole_project(
    project: Project, verdicts: Verdicts | None = None
) -> tuple[Bank | None, tuple[Problem, ...]]:
    """Return the bank with every problem that keeps a course or a paper from being made.

    verdicts  of an earlier check, for records that have not changed
    """
    bank, problems = read_and_check(project, verdicts)
    found = [*problems, *_of_files(project)]
    if bank is not None:
        found += _said_once(_of_texts(project, bank), problems)
        found += blueprint_problems(bank, problems)
    return bank, sorted_problems(found)


def _of_files(project: Project) -> Iterator[Problem]:
    from generator.website import settings_problems
    from generator.website.figures import drawing_problems
    from generator.website.offline import stray_files

    yield from settings_problems(project.settings)
    yield from stray_files(project.course, project.theme)
    yield from drawing_problems(project.course)


def _of_texts(project: Project, bank: Bank) -> Iterator[Problem]:
    from generator.website.pages import course_problems

    if project.theme.is_dir():
        yield from course_problems(bank, project.theme)
        yield from _signs_without_font(bank, project.fonts)


def _said_once(found: Iterator[Problem], before: tuple[Problem, ...]) -> Iterator[Problem]:
    """Leave out what a rule of the bank says of the same words already."""
    said = {problem.place for problem in before}
    return (problem for problem in found if problem.place not in said)


def _signs_without_font(bank: Bank, fonts: Path) -> Iterator[Problem]:
    texts = tuple(written_texts(bank))
    try:
        missing = unsettable((text.text for text in texts), fonts)
    except PrintingRefused as refused:
        place = Place("site_theme/fonts_print", 1, 1)
        yield Problem(place, "error", "sign-without-font", str(refused))
        return
    for character in missing:
        for text in (text for text in texts if character in text.text):
            message = f"no typeface of the papers has '{character}' (U+{ord(character):04X})"
            hint = "write it in words, or with characters that the papers have"
            yield Problem(_place(text, character), "error", "sign-without-font", message, hint)


def _place(text: ScalarNode, character: str) -> Place:
    return text.place if text.block else text.inner.shifted(text.text.index(character))
