"""What pure guessing scores: exact distributions over kinds, options and part marks."""

from collections import Counter
from collections.abc import Iterable, Mapping, Sequence
from fractions import Fraction
from math import comb, factorial, lcm

from generator.bank import closure

# whole-number weights of each share of the marks; divided by their sum they are chances
Outcomes = Mapping[Fraction, int]
NEVER: Outcomes = {Fraction(0): 1}


def one_of(options: int) -> Outcomes:
    """Return the outcomes of choosing one of some options at random."""
    return {Fraction(1): 1, Fraction(0): options - 1} if options > 1 else {Fraction(1): 1}


def all_or_nothing(right: int, ways: int) -> Outcomes:
    """Return the outcomes where some of all equally likely answers are right and none in part."""
    return {Fraction(1): right, Fraction(0): ways - right}


def ticks(right: int, wrong: int) -> Outcomes:
    """Return the outcomes of ticking options at random, at least one.

    The share is right ticks less wrong ones over all right options, never below 0.
    """
    found: Counter[Fraction] = Counter()
    for hits in range(right + 1):
        for false in range(wrong + 1):
            if hits + false:
                share = max(Fraction(0), Fraction(hits - false, right))
                found[share] += comb(right, hits) * comb(wrong, false)
    return found


def pairs(rows: int, letters: int, each_once: bool = True) -> Outcomes:
    """Return the outcomes of joining rows to letters at random; the share is that of right rows.

    each_once  no letter is used twice, as a guesser does where every row has its own letter
    """
    if not each_once:
        return {
            Fraction(hits, rows): comb(rows, hits) * (letters - 1) ** (rows - hits)
            for hits in range(rows + 1)
        }
    return {Fraction(hits, rows): _exactly(hits, rows, letters) for hits in range(rows + 1)}


def _exactly(hits: int, rows: int, letters: int) -> int:
    """Count the ways to give rows letters, each once, with exactly so many in the right place."""
    rest = rows - hits
    free = letters - hits
    wrong = sum(
        (1 - 2 * (j % 2)) * comb(rest, j) * factorial(free - j) // factorial(letters - rows)
        for j in range(rest + 1)
    )
    return comb(rows, hits) * wrong


def orders(
    steps: Sequence[str],
    before: Iterable[tuple[str, str]],
    dangers: Iterable[tuple[str, str]] = (),
) -> Outcomes:
    """Return the outcomes of putting steps in a random order.

    before   the pairs that score: the share is that of kept precedences, implied ones among them
    dangers  pairs of which one turned round leaves nothing
    """
    implied = closure(before)
    harmful = set(dangers)
    # for each set of placed steps: how many ways keep so many precedences
    ways: dict[int, Counter[int]] = {0: Counter({0: 1})}
    for _ in steps:
        further: dict[int, Counter[int]] = {}
        for placed, counts in ways.items():
            for place, step in enumerate(steps):
                if placed >> place & 1:
                    continue
                there = [s for i, s in enumerate(steps) if placed >> i & 1]
                if any((step, other) in harmful for other in there):
                    continue
                kept = sum((other, step) in implied for other in there)
                target = further.setdefault(placed | 1 << place, Counter())
                for already, count in counts.items():
                    target[already + kept] += count
        ways = further
    found: Counter[Fraction] = Counter()
    for kept, count in ways.get((1 << len(steps)) - 1, Counter()).items():
        found[Fraction(kept, len(implied)) if implied else Fraction(1)] += count
    found[Fraction(0)] += factorial(len(steps)) - sum(found.values())
    return found


def chance_to_reach(
    marked: Iterable[tuple[int, Outcomes]], needed: Fraction | int, gate: Iterable[Outcomes] = ()
) -> Fraction:
    """Return the chance that a guesser reaches a score and gets every gate question wholly right.

    marked  marks and outcomes of each question that is no gate
    needed  marks that these have to bring; what the gate brings is taken off beforehand
    gate    outcomes of the questions that must be right
    """
    opened = Fraction(1)
    for outcomes in gate:
        opened *= Fraction(outcomes.get(Fraction(1), 0), sum(outcomes.values()))
    return opened * _tail(list(marked), Fraction(needed))


def _tail(marked: list[tuple[int, Outcomes]], needed: Fraction) -> Fraction:
    scale = lcm(1, *(share.denominator for _, outcomes in marked for share in outcomes))
    goal = max(0, -(-needed.numerator * scale // needed.denominator))
    # simple questions first, so that part marks meet few scores
    marked.sort(key=lambda entry: len(entry[1]))
    left = sum(marks * scale * max(outcomes) for marks, outcomes in marked)
    # in parts of a mark; scores at the goal stand together, those that cannot reach it drop out
    scores: Counter[int] = Counter({0: 1})
    total = 1
    for marks, outcomes in marked:
        left -= marks * scale * max(outcomes)
        total *= sum(outcomes.values())
        after: Counter[int] = Counter()
        for share, weight in outcomes.items():
            gained = int(share * marks * scale)
            for score, count in scores.items():
                if score + gained + left >= goal:
                    after[min(score + gained, goal)] += count * weight
        scores = after
    return Fraction(scores[goal], total)
