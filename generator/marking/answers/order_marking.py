"""Marking of an order of steps: every order that keeps the pairs is right."""

from collections import Counter
from collections.abc import Iterable, Mapping, Sequence
from fractions import Fraction
from typing import Any

from generator.bank import closure
from generator.marking.answers.marks import Finding, Mark, marked
from generator.marking.answers.options_marking import known_letters

Spots = Mapping[str, int]


def mark_order(key: Mapping[str, Any], letters: Sequence[str]) -> Mark:
    """Mark an order by the share of precedences kept; a dangerous pair turned round gives 0.

    Counts every 'first before then' that follows from the pairs, so that one early slip costs what
    it breaks and no more. A step left out or written twice keeps none of its precedences.
    """
    steps = [step["letter"] for step in key["steps"]]
    known_letters(letters, steps)
    written = [letter.strip().upper() for letter in letters if letter.strip()]
    times = Counter(written)
    once = {letter: spot for spot, letter in enumerate(written) if times[letter] == 1}
    broken = _turned_round(key["pairs"], written)
    share = Fraction(0)
    if not any(pair["class"] == "danger" for pair in broken):
        share = kept_share(steps, [(pair["first"], pair["then"]) for pair in key["pairs"]], once)
    return marked(share, [*_said(broken), *_unplaced(steps, times)])


def kept_share(steps: Iterable[str], pairs: Iterable[tuple[str, str]], spots: Spots) -> Fraction:
    """Return the share of all implied precedences that an order keeps.

    spots  the place of each step that stands in the order once
    A missing step that no pair names counts as one precedence lost, so that only a whole order is
    fully right.
    """
    implied = closure(pairs)
    tied = {step for pair in implied for step in pair}
    loose = sum(step not in spots for step in steps if step not in tied)
    kept = sum(a in spots and b in spots and spots[a] < spots[b] for a, b in implied)
    return Fraction(kept, len(implied) + loose) if len(implied) + loose else Fraction(1)


def _turned_round(
    pairs: Iterable[Mapping[str, Any]], written: Sequence[str]
) -> list[Mapping[str, Any]]:
    spot = {letter: place for place, letter in reversed(list(enumerate(written)))}
    return [
        pair
        for pair in pairs
        if pair["first"] in spot
        and pair["then"] in spot
        and spot[pair["first"]] > spot[pair["then"]]
    ]


def _said(broken: Iterable[Mapping[str, Any]]) -> list[Finding]:
    return [
        Finding("pair", f"{pair['first']} before {pair['then']}", pair["reason"]) for pair in broken
    ]


def _unplaced(steps: Iterable[str], times: Mapping[str, int]) -> list[Finding]:
    found = []
    for step in steps:
        if times[step] == 0:
            found.append(Finding("step", step, f"Step {step} is left out."))
        elif times[step] > 1:
            found.append(Finding("step", step, f"Step {step} is there more than once."))
    return found
