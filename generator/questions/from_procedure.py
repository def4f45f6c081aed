"""Questions that follow from a procedure record."""

from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass

from generator.bank import Bank, Entry, module_of
from generator.bank.precedence import closure
from generator.bank.records import Pair, Procedure
from generator.questions.lettering import Answer, lettered, unlike
from generator.questions.ordering import Scored, drawable_subsets, order_key, scored_procedure
from generator.questions.question import Key
from generator.questions.stream import Stream

DISTRACTORS = 3


@dataclass(frozen=True, slots=True)
class Derived:
    """A question before sources and cautions are put to it."""

    kind: str
    level: str
    stem: str
    key: Key


Maker = Callable[[Bank, Entry[Procedure], Stream], Derived | None]


def put_in_order(bank: Bank, entry: Entry[Procedure], stream: Stream) -> Derived | None:
    """Ask for the order of some steps, where few enough orders are right."""
    scored = scored_procedure(entry.record)
    subsets = drawable_subsets(scored)
    if not subsets:
        return None
    steps = stream.choose(subsets)
    stem = (
        f"Put these steps of '{entry.record.title}' in a safe and sound order. "
        "Some steps of the whole job are not shown."
    )
    return Derived("order", "apply", stem, order_key(scored, steps, stream))


def what_comes_next(bank: Bank, entry: Entry[Procedure], stream: Stream) -> Derived | None:
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
    listed = "; ".join(_lower(scored.steps[name]) for name in done[-3:])
    stem = (
        f"{entry.record.title}: you have just done this: {listed}. "
        "Which of these steps may come next?"
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
    return f"Not yet: '{_lower(scored.steps[first])}' comes first. {scored.reasons[pair]}"


def what_comes_before(bank: Bank, entry: Entry[Procedure], stream: Stream) -> Derived | None:
    """Ask which step must be done before another, against steps that must come after it."""
    scored = scored_procedure(entry.record)
    after = closure(scored.reasons)
    cases = [
        (first, then, tuple(c for b, c in sorted(after) if b == then))
        for first, then in scored.reasons
    ]
    cases = [case for case in cases if len(case[2]) >= 2]
    if not cases:
        return None
    first, then, later = stream.choose(cases)
    wrong = stream.sample(later, DISTRACTORS)
    says = f"This comes after '{_lower(scored.steps[then])}', not before it."
    answers: list[Answer] = [(scored.steps[first], True, scored.reasons[first, then])]
    answers += [(scored.steps[name], False, says) for name in wrong]
    stem = (
        f"{entry.record.title}: which of these must be done before you "
        f"{_lower(scored.steps[then])}?"
    )
    return Derived("choice", "apply", stem, lettered(answers, stream))


def which_is_missing(bank: Bank, entry: Entry[Procedure], stream: Stream) -> Derived | None:
    """Show the procedure with a gap and ask for the step that belongs there."""
    steps = [step for step in entry.record.steps if not step.optional]
    scored = scored_procedure(entry.record)
    tied = {name for pair in scored.reasons for name in pair}
    places = [p for p in range(1, len(steps) - 1) if steps[p].step in tied]
    others = unlike(stream.shuffled(_foreign_steps(bank, entry)), ())
    if not places or len(others) < DISTRACTORS:
        return None
    gap = stream.choose(places)
    reason = next(why for pair, why in scored.reasons.items() if steps[gap].step in pair)
    answers: list[Answer] = [(steps[gap].does, True, reason)]
    answers += [
        (text, False, f"That is a step of '{title}'.") for text, title in others[:DISTRACTORS]
    ]
    before, after = _lower(steps[gap - 1].does), _lower(steps[gap + 1].does)
    stem = (
        f"A card for '{entry.record.title}' has lost a step. It stood between "
        f"'{before}' and '{after}'. Which step is it?"
    )
    return Derived("choice", "recall", stem, lettered(answers, stream))


def _foreign_steps(bank: Bank, entry: Entry[Procedure]) -> list[tuple[str, str]]:
    own = [_words(step.does) for step in entry.record.steps]
    module = module_of(entry.record.objective)
    return [
        (step.does, other.record.title)
        for other in bank.procedures.values()
        if module_of(other.record.objective) != module
        for step in other.record.steps
        if not step.optional and all(not words & _words(step.does) for words in own)
    ]


def what_goes_wrong(bank: Bank, entry: Entry[Procedure], stream: Stream) -> Derived | None:
    """Ask what follows when two steps are done the wrong way round."""
    steps = {step.step: step.does for step in entry.record.steps}
    others = [
        (pair, other.record.title)
        for other in bank.procedures.values()
        if other.name != entry.name
        for pair in _harmful(other)
    ]
    harms = {pair.harm for pair, _ in others}
    own = [pair for pair in _harmful(entry) if len(harms - {pair.harm}) >= DISTRACTORS]
    if not own:
        return None
    asked = stream.choose(own)
    wrong = _different_harms(asked, stream.shuffled(others))
    answers: list[Answer] = [(asked.goes_wrong or "", True, asked.reason)]
    answers += [
        (pair.goes_wrong or "", False, f"That follows from a slip in '{title}'.")
        for pair, title in wrong[:DISTRACTORS]
    ]
    stem = (
        f"{entry.record.title}: someone does '{_lower(steps[asked.then])}' before "
        f"'{_lower(steps[asked.first])}'. What is likely to go wrong?"
    )
    return Derived("choice", "diagnose", stem, lettered(answers, stream))


def _harmful(entry: Entry[Procedure]) -> list[Pair]:
    return [pair for pair in entry.record.pairs if pair.scores and pair.goes_wrong and pair.harm]


def _different_harms(asked: Pair, others: Sequence[tuple[Pair, str]]) -> list[tuple[Pair, str]]:
    harms = {asked.harm}
    wrong = []
    for pair, title in others:
        if pair.harm not in harms:
            harms.add(pair.harm)
            wrong.append((pair, title))
    return wrong


_SMALL = {
    "with",
    "from",
    "that",
    "this",
    "then",
    "until",
    "before",
    "after",
    "over",
    "into",
    "them",
}


def _words(text: str) -> set[str]:
    words = {word.strip(".,;:'()").lower() for word in text.split()}
    return {word for word in words if len(word) > 3 and word not in _SMALL}


def _lower(text: str) -> str:
    plain = text.rstrip(".")
    keep = len(plain) > 1 and (plain[1].isupper() or plain[1].isdigit())
    return plain if keep else plain[:1].lower() + plain[1:]


FROM_PROCEDURE: dict[str, Maker] = {
    "order": put_in_order,
    "next": what_comes_next,
    "before": what_comes_before,
    "missing": which_is_missing,
    "goes_wrong": what_goes_wrong,
}
