"""How even a set of papers came out, and how close to the counting bound."""

from collections.abc import Sequence
from dataclasses import dataclass
from fractions import Fraction

from generator.assembly.search.counting_bound import fewest_repeats
from generator.assembly.search.papers import EXPECTED, MARKS, SECONDS, Papers


@dataclass(frozen=True, slots=True)
class Balance:
    """What can be said about a set of papers.

    repeats      times that a question stands on one paper more than it has values for
    bound        the fewest repeats that counting allows
    overlap      mean share of a paper that another one has too
    most_shared  the most questions that any two papers have in common
    expected     lowest and highest expected share of the marks, 0 to 1
    minutes      lowest and highest expected time
    met_again    questions that a person had met before and meets again
    """

    repeats: int
    bound: int
    overlap: Fraction
    most_shared: int
    expected: tuple[Fraction, Fraction]
    minutes: tuple[Fraction, Fraction]
    met_again: int

    def in_words(self, pass_percent: int, minutes: int) -> str:
        """Say how the papers came out, in a sentence or two.

        pass_percent, minutes  of the plan
        """
        low, high = (f"{float(100 * share):.0f}" for share in self.expected)
        short, long = (f"{float(time):.0f}" for time in self.minutes)
        lines = [
            f"An average apprentice should score about {_span(low, high)} % (pass {pass_percent} %)"
            f" in {_span(short, long)} of {minutes} minutes."
        ]
        if self.most_shared:
            lines.append(
                f"Two of these papers share {float(100 * self.overlap):.0f} % of their questions "
                f"on average, {self.most_shared} at most."
            )
        if self.met_again:
            lines.append(f"{_times(self.met_again)} a person meets a question again.")
        return " ".join(lines)


def balance_of(papers: Papers) -> Balance:
    """Measure a set of papers."""
    demand = papers.demand
    shares = [Fraction(sums[EXPECTED], 1000 * (sums[MARKS] or 1)) for sums in papers.sums]
    minutes = [Fraction(sums[SECONDS], 60) for sums in papers.sums]
    return Balance(
        repeats=papers.repeats,
        bound=fewest_repeats(papers.pool, demand),
        overlap=mean_overlap([len(forms) for forms in papers.holders], demand.length, demand.forms),
        most_shared=_most_shared(papers),
        expected=(min(shares), max(shares)),
        minutes=(min(minutes), max(minutes)),
        met_again=sum(
            place in demand.met(form)
            for form in range(demand.forms)
            for place in papers.chosen(form)
        ),
    )


def mean_overlap(uses: Sequence[int], length: int, forms: int) -> Fraction:
    """Return the mean share of a paper that another one has too, exactly, over all pairs.

    uses  for each question the papers that hold it
    """
    pairs = length * forms * (forms - 1)
    return Fraction(sum(count * (count - 1) for count in uses), pairs) if pairs else Fraction(0)


def _most_shared(papers: Papers) -> int:
    held = [set(papers.chosen(form)) for form in range(papers.demand.forms)]
    return max((len(a & b) for i, a in enumerate(held) for b in held[:i]), default=0)


def _span(low: str, high: str) -> str:
    return low if low == high else f"{low} to {high}"


def _times(count: int) -> str:
    return "Once" if count == 1 else f"{count} times"
