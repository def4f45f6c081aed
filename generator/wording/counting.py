"""Counts, lists, shares and odds in words."""

from collections.abc import Sequence
from fractions import Fraction
from math import floor, log10

from generator.quantities import NO_BREAK_SPACE, number_text, round_to_step

# Past this a guesser's odds say nothing more to a person.
_LONGEST_ODDS = 1_000_000


def counted(count: int, one: str, several: str = "") -> str:
    """Return a count with the word that fits it: 1 error, 2 errors.

    several  the word for any count but one; with an s where it is not given
    """
    return f"{count} {one if count == 1 else several or f'{one}s'}"


def listed(words: Sequence[str]) -> str:
    """Return words as a sentence lists them: one, two and three."""
    return " and ".join([", ".join(words[:-1])] * bool(words[1:]) + list(words[-1:]))


def questions_named(numbers: Sequence[int]) -> str:
    """Return question numbers with their word: question 3; questions 3, 7."""
    return f"{'question' if len(numbers) == 1 else 'questions'} {', '.join(map(str, numbers))}"


def percent(share: Fraction | float) -> str:
    """Return a share as a whole percent, half up, that does not break over a line."""
    whole = round_to_step(Fraction(share) * 100, Fraction(1), "half")
    return f"{number_text(whole)}{NO_BREAK_SPACE}%"


def odds(chance: Fraction) -> str:
    """Return a chance above 0 as odds, such as '1 time in 16'."""
    return f"1 time in {int(round_to_step(1 / chance, Fraction(1), 'half')):,}"


def rough_odds(chance: float) -> str:
    """Return a chance above 0 as odds of two digits, such as 'about 1 time in 4,000'."""
    if chance > 2 / 3:
        return "nearly every time"
    times = 1 / chance
    if times > _LONGEST_ODDS:
        return f"less than 1 time in {_LONGEST_ODDS:,}"
    digits = 1 - floor(log10(times))
    return f"about 1 time in {round(times, min(digits, 0)):,.0f}"
