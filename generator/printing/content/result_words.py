"""Say in plain words what luck can do on a form, and what a score shows."""

from collections.abc import Mapping
from math import floor, log10
from typing import Any

from generator.printing.content.form_facts import marks_text

# Past this a guesser's odds say nothing more to a person.
_LONGEST_ODDS = 1_000_000


def luck_in_words(form: Mapping[str, Any]) -> str:
    """State the chance that somebody who guesses everything passes; empty where none is known."""
    chance = form.get("guesser_passes")
    if chance is None:
        return ""
    if chance == 0:
        return (
            "Somebody who guesses every answer cannot pass: "
            "a number or a written answer counts as never guessed."
        )
    return f"Somebody who guesses every answer passes {odds_in_words(float(chance))}."


def odds_in_words(chance: float) -> str:
    """Write a chance above 0 as odds of two figures, such as about 1 time in 4,000."""
    if chance > 2 / 3:
        return "nearly every time"
    times = 1 / chance
    if times > _LONGEST_ODDS:
        return f"less than 1 time in {_LONGEST_ODDS:,}"
    digits = 1 - floor(log10(times))
    return f"about 1 time in {round(times, min(digits, 0)):,.0f}"


def mastery_in_words(form: Mapping[str, Any]) -> str:
    """State the score from which the standard is shown; empty where nothing was reckoned.

    The score comes with the form: Wilson's lower bound (1927), one-sided, at 95 %.
    """
    if "mastery_marks" not in form:
        return ""
    standard, shown = f"{form['pass_percent']}\u00a0%", form["mastery_marks"]
    if shown is None:
        return (
            f"Even full marks only suggest that the person knows {standard} of the subject: "
            "the paper is too short to show it."
        )
    start = (
        f"From {marks_text(int(shown))} on, the paper shows that the person knows {standard} of "
        "the subject (lower bound at 95\u00a0%)."
    )
    if int(shown) <= int(form["pass_marks"]):
        return start
    return f"{start} A pass below that only suggests it."
