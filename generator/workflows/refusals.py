"""Why a workflow did nothing, and what it asks before it goes on: data for terminal and page."""

from collections.abc import Callable, Iterable
from dataclasses import dataclass
from functools import wraps
from typing import ParamSpec, TypeVar

from generator.diagnostics import Problem

P = ParamSpec("P")
T = TypeVar("T")


@dataclass(frozen=True, slots=True)
class Refused:
    """Why nothing was done; a workflow returns it instead of its result.

    sentence  for a person; empty where the problems say it all
    problems  what is wrong at which place, where a file is to blame
    misuse    whether something else must be asked for; otherwise bank, files or records must change
    """

    sentence: str
    problems: tuple[Problem, ...] = ()
    misuse: bool = False


@dataclass(frozen=True, slots=True)
class NeedsConfirmation:
    """What a person must say yes to before a workflow goes on.

    stakes    what would be lost or changed
    question  the question itself
    """

    stakes: str
    question: str


def refused_with(problems: Iterable[Problem], nothing: str = "nothing was written") -> Refused:
    """Return the refusal of files with problems, which are counted in its sentence."""
    # wording knows forms and questions; a refusal must be at hand before any of them is loaded
    from generator.wording import counted

    found = tuple(problems)
    return Refused(f"{counted(len(found), 'error')}; {nothing}", found)


def refusing(*kinds: type[Exception]) -> Callable[[Callable[P, T]], Callable[P, T | Refused]]:
    """Let a workflow return as data what the rooms below it raise with one sentence.

    kinds  the exceptions that are meant for a person
    """

    def around(work: Callable[P, T]) -> Callable[P, T | Refused]:
        @wraps(work)
        def worked(*args: P.args, **kwargs: P.kwargs) -> T | Refused:
            try:
                return work(*args, **kwargs)
            except kinds as refused:
                return Refused(str(refused))

        return worked

    return around
