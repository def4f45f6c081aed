"""Written questions kept from one build of a running preview to the next."""

from collections.abc import Callable

from generator.website.context import Course, Variants


class QuestionMemory:
    """Gives the text of a question again as long as it and what it shows are unchanged."""

    def __init__(self) -> None:
        self._around: object = None
        self._kept: dict[tuple[str, str], tuple[Variants, str]] = {}

    def begin(self, course: Course) -> None:
        """Begin a build; where what questions cite or link to has changed, all is forgotten."""
        around = (
            course.sources,
            course.places,
            course.relations,
            *map(tuple, (course.lessons, course.questions, course.terms, course.procedures)),
            *map(tuple, (course.faults, course.tables)),
        )
        if around != self._around:
            self._around, self._kept = around, {}

    def forget(self) -> None:
        """Forget all: what has a problem must be told again by the next build."""
        self._kept = {}

    def text(self, variants: Variants, label: str, write: Callable[[], str]) -> str:
        """Return the text of a question under its label, written anew only where it must be."""
        key = (str(variants[0]["id"]), label)
        kept = self._kept.get(key)
        if kept is None or kept[0] != variants:
            kept = self._kept[key] = (variants, write())
        return kept[1]
