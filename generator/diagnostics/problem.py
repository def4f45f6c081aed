"""What is wrong at a place, said in the author's words."""

from collections.abc import Iterable
from dataclasses import dataclass
from typing import Literal

from generator.diagnostics.place import Place

Severity = Literal["error", "warning", "note"]


@dataclass(frozen=True, slots=True)
class Problem:
    """One thing for the author to look at.

    place     where it is
    severity  error stops the build; warning and note do not
    rule      the check's name in kebab-case; `guidecoat explain RULE` says more
    message   what is there and what was expected
    hint      what to write instead, or empty
    """

    place: Place
    severity: Severity
    rule: str
    message: str
    hint: str = ""


def sorted_problems(problems: Iterable[Problem]) -> tuple[Problem, ...]:
    """Return every problem once, in the order of the files."""
    unique = {(p.place, p.rule, p.message): p for p in problems}
    return tuple(unique[key] for key in sorted(unique))


def has_errors(problems: Iterable[Problem]) -> bool:
    """Say whether any problem must stop the build."""
    return any(problem.severity == "error" for problem in problems)
