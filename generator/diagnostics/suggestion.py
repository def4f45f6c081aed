"""The known name that an author most likely meant."""

from collections.abc import Iterable
from difflib import get_close_matches


def nearest_name(word: str, known: Iterable[str]) -> str | None:
    """Give the known name closest to a word, or nothing when none is near."""
    matches = get_close_matches(word, sorted(set(known)), n=1, cutoff=0.6)
    return matches[0] if matches else None


def did_you_mean(word: str, known: Iterable[str]) -> str:
    """Give a hint sentence with the nearest known name, or an empty text."""
    nearest = nearest_name(word, known)
    return f"did you mean '{nearest}'?" if nearest else ""
