"""Where the right options stand: shuffled by chance, with an alarm when chance looks unlikely."""

from collections import Counter
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from math import erfc, exp, factorial, gamma, prod, sqrt

from generator.assembly.forms.form import Form
from generator.questions import ChoiceKey

IMPROBABLE = 0.01
# below this many expected at each position the exact multinomial is used
FEWEST_EXPECTED = 5


@dataclass(frozen=True, slots=True)
class PositionAlarm:
    """Key positions that chance alone would seldom give.

    counts  how often the key stands first, second and so on
    chance  of counts as uneven as these or more
    """

    counts: tuple[int, ...]
    chance: float

    def in_words(self) -> str:
        """Say what was found."""
        most = max(self.counts)
        letter = "ABCDEFGH"[self.counts.index(most)]
        return f"{letter} is the right answer {most} times of {sum(self.counts)}"


def position_alarms(form: Form) -> tuple[PositionAlarm, ...]:
    """Return an alarm for each number of options whose key positions are improbable."""
    return tuple(_alarms(form))


def _alarms(form: Form) -> Iterator[PositionAlarm]:
    by_options: dict[int, Counter[int]] = {}
    for entry in form.questions:
        key = entry.question.key
        if entry.question.kind == "choice" and isinstance(key, ChoiceKey):
            place = next(i for i, option in enumerate(key.options) if option.right)
            by_options.setdefault(len(key.options), Counter())[place] += 1
    for options, places in sorted(by_options.items()):
        counts = tuple(places[place] for place in range(options))
        chance = chance_of_counts(counts)
        if chance < IMPROBABLE:
            yield PositionAlarm(counts, chance)


def chance_of_counts(counts: Sequence[int]) -> float:
    """Return the chance of counts as uneven as these or more, where all positions are alike.

    The exact multinomial below FEWEST_EXPECTED a position, else chi-square.
    """
    if len(counts) < 2 or not sum(counts):
        return 1.0
    if sum(counts) < FEWEST_EXPECTED * len(counts):
        return exact_chance(counts)
    expected = sum(counts) / len(counts)
    statistic = sum((count - expected) ** 2 for count in counts) / expected
    return chi_square_tail(statistic, len(counts) - 1)


def exact_chance(counts: Sequence[int]) -> float:
    """Return the chance of all counts that are no likelier than these (exact multinomial)."""
    total, places = sum(counts), len(counts)
    mine = _ways(counts)
    unlikely = sum(ways for other in _compositions(total, places) if (ways := _ways(other)) <= mine)
    return float(unlikely) / float(places) ** total


def _ways(counts: Sequence[int]) -> int:
    return factorial(sum(counts)) // prod(factorial(count) for count in counts)


def _compositions(total: int, places: int) -> Iterator[tuple[int, ...]]:
    if places == 1:
        yield (total,)
        return
    for first in range(total + 1):
        for rest in _compositions(total - first, places - 1):
            yield (first, *rest)


def chi_square_tail(statistic: float, freedom: int) -> float:
    """Return the chance that chi-square reaches a value, by recurrence in degrees of freedom."""
    half = statistic / 2
    tail = erfc(sqrt(half)) if freedom % 2 else exp(-half)
    start = 1 if freedom % 2 else 2
    for degrees in range(start, freedom, 2):
        tail += half ** (degrees / 2) * exp(-half) / gamma(degrees / 2 + 1)
    return tail
