"""What modules and objectives are called, and where the course teaches them."""

from collections.abc import Mapping
from dataclasses import dataclass

from generator.bank import Bank, objective_of

TO_PRACTISE = ("study", "both")


@dataclass(frozen=True, slots=True)
class CourseNames:
    """Names of one edition, in the order of the outline.

    modules     title of each module by its name
    objectives  text of each objective by 'module/objective'
    lessons     modules that have a lesson
    practised   objectives that have study questions of their own
    """

    modules: Mapping[str, str]
    objectives: Mapping[str, str]
    lessons: frozenset[str] = frozenset()
    practised: frozenset[str] = frozenset()

    def module(self, name: str) -> str:
        """Return the title of a module; its name in words where the outline no longer has it."""
        return self.modules.get(name) or _in_words(name)

    def objective(self, name: str) -> str:
        """Return the text of an objective; its name in words where the outline no longer has it."""
        return self.objectives.get(name) or _in_words(name)

    def place(self, name: str) -> int:
        """Return the place of a module or an objective in the outline; strangers come last."""
        listed = self.objectives if "/" in name else self.modules
        return list(listed).index(name) if name in listed else len(listed)


def course_names(bank: Bank) -> CourseNames:
    """Return the names that a bank states."""
    return CourseNames(
        modules={module.module: module.title for module in bank.modules},
        objectives=dict(bank.objectives),
        lessons=frozenset(module.module for module in bank.taught),
        practised=frozenset(
            objective_of(name)
            for name, entry in bank.items.items()
            if entry.record.use in TO_PRACTISE
        ),
    )


def _in_words(name: str) -> str:
    words = name.rpartition("/")[2].replace("_", " ")
    return words[:1].upper() + words[1:]
