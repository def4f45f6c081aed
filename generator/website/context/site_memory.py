"""What a running preview keeps from one build to the next: texts whose inputs did not change."""

from collections.abc import Callable
from typing import TypeVar

from generator.website.context.course import Course, Variants

T = TypeVar("T")


class SiteMemory:
    """Returns a text again as long as it and what it shows are unchanged."""

    def __init__(self) -> None:
        self._cited: object = None
        self._records: object = None
        self._questions: dict[tuple[str, str], tuple[Variants, str]] = {}
        self._pages: dict[str, tuple[object, object]] = {}

    def begin(self, course: Course) -> None:
        """Begin a build; what shows a record that has changed is forgotten."""
        cited = (
            course.sources,
            course.places,
            course.relations,
            *map(tuple, (course.lessons, course.questions, course.terms, course.procedures)),
            *map(tuple, (course.faults, course.tables)),
        )
        if cited != self._cited:
            self._cited, self._questions = cited, {}
        shown = (course.title, course.modules, course.figures, course.hazards, course.terms)
        said = (course.data_sheets, course.beliefs)
        records = (*shown, *said, course.procedures, course.faults, course.tables, course.rows)
        if (cited, records) != self._records:
            self._records, self._pages = (cited, records), {}

    def forget(self) -> None:
        """Forget all: what has a problem must be told again by the next build."""
        self._questions, self._pages = {}, {}

    def question(self, variants: Variants, label: str, write: Callable[[], str]) -> str:
        """Return the text of a question under its label, written anew only where it must be."""
        key = (str(variants[0]["id"]), label)
        kept = self._questions.get(key)
        if kept is None or kept[0] != variants:
            kept = self._questions[key] = (variants, write())
        return kept[1]

    def page(self, name: str, inputs: object, make: Callable[[], T]) -> T:
        """Return what was made under a name from records and these inputs, or make it anew."""
        kept = self._pages.get(name)
        if kept is None or kept[0] != inputs:
            made = make()
            self._pages[name] = (inputs, made)
            return made
        return kept[1]  # type: ignore[return-value]
