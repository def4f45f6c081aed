"""Questions that follow from a procedure record."""

from collections.abc import Callable, Iterator, Sequence
from functools import cache

from generator.bank import Bank, Entry, closure
from generator.bank.models import Pair, Procedure
from generator.questions.derived.procedure_slips import what_goes_wrong, which_is_missing
from generator.questions.drawing import (
    Answer,
    Scored,
    SeededRandom,
    drawable_subsets,
    lettered,
    order_key,
    scored_procedure,
)
from generator.questions.question import Derived
from generator.questions.wording import lower_start
from generator.questions.worn import worn_words

DISTRACTORS = 3
# so many steps that were just done stand in a stem
SHOWN_STEPS = 3


Maker = Callable[[Bank, Entry[Procedure], SeededRandom], Derived | None]


def put_in_order(bank: Bank, entry: Entry[Procedure], stream: SeededRandom) -> Derived | None:
    """Ask for the order of some steps, where few enough orders are right."""
    scored = scored_procedure(entry.record)
    subsets = _subsets(entry.record)
    if not subsets:
        return None
    steps = stream.choose(subsets)
    stem = (
        f"Put these steps of '{entry.record.title}' in a safe, workable order. "
        f"Some steps of the whole job are not shown.{worn_words(bank, entry.record.wears)}"
    )
    return Derived("order", "apply", stem, order_key(scored, steps, stream))


@cache
def _subsets(procedure: Procedure) -> tuple[tuple[str, ...], ...]:
    return drawable_subsets(scored_procedure(procedure))


def what_comes_next(bank: Bank, entry: Entry[Procedure], stream: SeededRandom) -> Derived | None:
    """Ask which step may come next after a part of the work is done."""
    scored = scored_procedure(entry.record)
    names = tuple(scored.steps)
    cases = [case for done in range(1, len(names)) for case in _next_cases(scored, names[:done])]
    if not cases:
        return None
    done, key, waiting = stream.choose(cases)
    wrong = stream.sample(waiting, DISTRACTORS)
    right_text = scored.steps[key]
    answers: list[Answer] = [(right_text, True, "Everything that must come before it is done.")]
    answers += [(scored.steps[name], False, _not_yet(scored, name, done)) for name in wrong]
    listed = "; ".join(lower_start(scored.steps[name]) for name in done[-SHOWN_STEPS:])
    before = " and all before them" if len(done) > SHOWN_STEPS else ""
    stem = (
        f"{entry.record.title}. These steps{before} are done: {listed}."
        f"{worn_words(bank, entry.record.wears)} What may come next?"
    )
    return Derived("choice", "apply", stem, lettered(answers, stream))


def _next_cases(
    scored: Scored, done: tuple[str, ...]
) -> Iterator[tuple[tuple[str, ...], str, tuple[str, ...]]]:
    rest = [name for name in scored.steps if name not in done]
    waiting = tuple(name for name in rest if _unmet(scored, name, done))
    for name in rest:
        if name not in waiting and len(waiting) >= 2 and _follows(scored, name, done):
            yield done, name, waiting


def _follows(scored: Scored, name: str, done: Sequence[str]) -> bool:
    return any((earlier, name) in scored.reasons for earlier in done)


def _unmet(scored: Scored, name: str, done: Sequence[str]) -> list[tuple[str, str]]:
    return [pair for pair in scored.reasons if pair[1] == name and pair[0] not in done]


def _not_yet(scored: Scored, name: str, done: Sequence[str]) -> str:
    first, _ = pair = _unmet(scored, name, done)[0]
    return f"Not yet: '{lower_start(scored.steps[first])}' comes first. {scored.reasons[pair]}"


def what_comes_before(bank: Bank, entry: Entry[Procedure], stream: SeededRandom) -> Derived | None:
    """Ask which step must be done before another, against steps that must come after it."""
    scored = scored_procedure(entry.record)
    after = closure(scored.reasons)
    cases = [
        (first, then, tuple(c for b, c in sorted(after) if b == then))
        for first, then in scored.reasons
    ]
    cases = [case for case in cases if len(case[2]) >= 2]
    return _before(entry, scored, *stream.choose(cases), stream) if cases else None


def must_come_before(entry: Entry[Procedure], pair: Pair, stream: SeededRandom) -> Derived | None:
    """Ask what must be done before a step, of one pair; None where too few steps follow it."""
    scored = scored_procedure(entry.record)
    if (pair.first, pair.then) not in scored.reasons:
        return None
    later = tuple(c for b, c in sorted(closure(scored.reasons)) if b == pair.then)
    return _before(entry, scored, pair.first, pair.then, later, stream) if len(later) >= 2 else None


def _before(
    entry: Entry[Procedure],
    scored: Scored,
    first: str,
    then: str,
    later: tuple[str, ...],
    stream: SeededRandom,
) -> Derived:
    wrong = stream.sample(later, DISTRACTORS)
    says = f"This comes after '{lower_start(scored.steps[then])}', not before it."
    answers: list[Answer] = [(scored.steps[first], True, scored.reasons[first, then])]
    answers += [(scored.steps[name], False, says) for name in wrong]
    stem = (
        f"{entry.record.title}. You are about to {lower_start(scored.steps[then])}. "
        "Which of these must be done already?"
    )
    return Derived("choice", "apply", stem, lettered(answers, stream))


FROM_PROCEDURE: dict[str, Maker] = {
    "order": put_in_order,
    "next": what_comes_next,
    "before": what_comes_before,
    "missing": which_is_missing,
    "goes_wrong": what_goes_wrong,
}
