"""Say in plain words what luck can do on a form, and what a score shows."""

from generator.issued import IssuedForm
from generator.wording import marks_text, rough_odds


def luck_in_words(form: IssuedForm) -> str:
    """State the chance that somebody who guesses everything passes; empty where none is known."""
    chance = form.get("guesser_passes")
    if chance is None:
        return ""
    if chance == 0:
        return (
            "Somebody who guesses every answer cannot pass: "
            "a number or a written answer counts as never guessed."
        )
    return f"Somebody who guesses every answer passes {rough_odds(float(chance))}."


def mastery_in_words(form: IssuedForm) -> str:
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
