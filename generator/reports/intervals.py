"""What a count of right answers shows: a share with its interval, and no more than that.

Interval: Wilson's score interval (E. B. Wilson, Journal of the American Statistical Association
22, 1927). Fewer than ten answers bear no verdict: common practice.
"""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from fractions import Fraction
from typing import Literal

from generator.assembly.forms import ONE_SIDED_95, TWO_SIDED_95, effective_number, wilson_interval
from generator.quantities import NO_BREAK_SPACE, number_text, round_to_step
from generator.reports.answered_papers import Answer

Standing = Literal["shown", "not yet", "more answers needed", "too few questions to say"]
FEWEST = 10
METHOD = (
    "Intervals are Wilson's score intervals at 95 % (E. B. Wilson, Journal of the American "
    "Statistical Association 22, 1927)."
)


@dataclass(frozen=True, slots=True)
class Share:
    """A share of marks or of answers.

    share   0 to 1, exact
    number  of equally heavy questions that tell as much
    """

    share: Fraction
    number: Fraction

    @property
    def interval(self) -> tuple[float, float]:
        """Return the interval of the share at 95 %, 0 to 1."""
        return wilson_interval(float(self.share), float(self.number), TWO_SIDED_95)

    @property
    def lower_bound(self) -> float:
        """Return the bound that the share lies above, at 95 % on one side."""
        return wilson_interval(float(self.share), float(self.number), ONE_SIDED_95)[0]

    @property
    def upper_bound(self) -> float:
        """Return the bound that the share lies below, at 95 % on one side."""
        return wilson_interval(float(self.share), float(self.number), ONE_SIDED_95)[1]

    def standing(self, percent: int) -> Standing:
        """Compare with a standard: shown, not yet, or no verdict where the answers bear none."""
        if self.number < FEWEST:
            return "too few questions to say"
        if self.lower_bound >= percent / 100:
            return "shown"
        return "not yet" if self.upper_bound < percent / 100 else "more answers needed"

    @property
    def in_words(self) -> str:
        """Write the share with its interval, such as '70 % (48 % to 85 %)'."""
        low, high = self.interval
        return f"{percent(self.share)} ({percent(low)} to {percent(high)})"


def share_of_marks(answers: Sequence[Answer]) -> Share | None:
    """Return the share of the marks of some answers; None for no answers.

    Heavy questions tell less than as many light ones; `effective_number` says how many.
    """
    if not answers:
        return None
    marks = [answer.marks for answer in answers]
    points = sum((answer.mark.share * answer.marks for answer in answers), Fraction(0))
    return Share(points / sum(marks), effective_number(marks))


def share_of_answers(answers: Iterable[Answer]) -> Share | None:
    """Return the mean share of some answers, each weighing the same; None for no answers."""
    shares = [answer.mark.share for answer in answers]
    if not shares:
        return None
    return Share(sum(shares, Fraction(0)) / len(shares), Fraction(len(shares)))


def percent(share: Fraction | float) -> str:
    """Write a share as a whole percent, half up, that does not break over a line."""
    whole = round_to_step(Fraction(share) * 100, Fraction(1), "half")
    return f"{number_text(whole)}{NO_BREAK_SPACE}%"


def marks_text(points: Fraction) -> str:
    """Write marks with one decimal where they are not whole, half up."""
    return number_text(round_to_step(points, Fraction(1, 10), "half"))
