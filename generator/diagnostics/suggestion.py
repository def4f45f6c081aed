"""The known name that an author most likely meant."""

import re
from collections.abc import Iterable
from difflib import get_close_matches


def nearest_name(word: str, known: Iterable[str]) -> str | None:
    """Return the known name closest to a word, or None when none is near."""
    matches = get_close_matches(word, sorted(set(known)), n=1, cutoff=0.6)
    return matches[0] if matches else None


def did_you_mean(word: str, known: Iterable[str]) -> str:
    """Return a hint sentence with the nearest known name, or an empty text."""
    nearest = nearest_name(word, known)
    return f"did you mean '{nearest}'?" if nearest else ""


def nearest_code(code: str, codes: Iterable[str]) -> str:
    """Return a hint with the nearest code of a person, never one with another number in it.

    'Apprentice 22' and 'Apprentice 24' look alike and are two people.
    """
    return did_you_mean(code, (other for other in codes if _numbers(other) == _numbers(code)))


def _numbers(code: str) -> list[int]:
    return [int(figures) for figures in re.findall("[0-9]+", code)]
