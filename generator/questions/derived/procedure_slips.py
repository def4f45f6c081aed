"""Questions on slips in a procedure: a step left out, two steps the wrong way round.

Wrong options come from the same job first, so that the topic alone does not give the key away;
they are wrong because the stated pairs force them elsewhere.
"""

from collections.abc import Iterator, Sequence

from generator.bank import Bank, Entry, closure, module_of
from generator.bank.models import Pair, Procedure
from generator.questions.derived.topics import work_words
from generator.questions.drawing import (
    Answer,
    Scored,
    SeededRandom,
    lettered,
    scored_procedure,
    unlike,
)
from generator.questions.question import Derived
from generator.questions.trade_words import trade_words
from generator.questions.wording import content_words, lower_start

MOST_WRONG = 3
FEWEST_WRONG = 2
# words that a slip of another job shares with the job it is asked about
WORDS_IN_COMMON = 2
# harms that can follow from one another; two of a row never stand side by side as key and not
KIN = (
    frozenset({"contamination", "poor_grip", "corrosion"}),
    frozenset({"breathing_harm", "skin_eye_harm", "fire"}),
    frozenset({"wrong_cure", "wasted_mix", "trapped_solvent"}),
    frozenset({"uneven_film", "shape_fault", "damage"}),
)


def which_is_missing(bank: Bank, entry: Entry[Procedure], stream: SeededRandom) -> Derived | None:
    """Show two neighbours on a card and ask for the step that stood between them."""
    scored = scored_procedure(entry.record)
    foreign = _foreign(bank, entry, stream)
    cases = []
    for before, gap, after in _gaps(scored):
        beside = [scored.steps[name] for name in (before, gap, after)]
        kept = unlike(_misplaced(scored, before, gap, after, stream), beside)
        if len(kept) < FEWEST_WRONG:
            kept = unlike((*kept, *foreign), beside)
        if len(kept) >= FEWEST_WRONG:
            cases.append((before, gap, after, kept[:MOST_WRONG]))
    if not cases:
        return None
    before, gap, after, kept = stream.choose(cases)
    answers: list[Answer] = [(scored.steps[gap], True, _why_here(scored, before, gap, after))]
    answers += [(text, False, says) for text, says in kept]
    stem = (
        f"A card for '{entry.record.title}' has lost a step. It stood between "
        f"'{lower_start(scored.steps[before])}' and '{lower_start(scored.steps[after])}'. "
        "Which step is it?"
    )
    return Derived("choice", "recall", stem, lettered(answers, stream))


def _gaps(scored: Scored) -> Iterator[tuple[str, str, str]]:
    """Return each step that a scoring pair names, between its neighbours on the card."""
    names = list(scored.steps)
    tied = {name for pair in scored.reasons for name in pair}
    for place in range(1, len(names) - 1):
        if names[place] in tied:
            yield names[place - 1], names[place], names[place + 1]


def _misplaced(
    scored: Scored, before: str, gap: str, after: str, stream: SeededRandom
) -> list[tuple[str, str]]:
    """Return steps of the same card that the pairs force before or after both neighbours."""
    forced = closure(scored.reasons)
    found = []
    for name, text in scored.steps.items():
        if name in (before, gap, after):
            continue
        if (name, before) in forced:
            found.append((text, f"That comes before '{lower_start(scored.steps[before])}'."))
        elif (after, name) in forced:
            found.append((text, f"That comes after '{lower_start(scored.steps[after])}'."))
    return list(stream.shuffled(found))


def _foreign(bank: Bank, entry: Entry[Procedure], stream: SeededRandom) -> list[tuple[str, str]]:
    own = [content_words(step.action) for step in entry.record.steps]
    found = [
        (step.action, f"That is a step of '{other.record.title}'.")
        for other in _others(bank, entry)
        for step in other.record.steps
        if not step.optional and all(not words & content_words(step.action) for words in own)
    ]
    return list(stream.shuffled(found))


def _others(bank: Bank, entry: Entry[Procedure]) -> Iterator[Entry[Procedure]]:
    return (other for other in bank.procedures.values() if other.name != entry.name)


def _why_here(scored: Scored, before: str, gap: str, after: str) -> str:
    touching = [pair for pair in scored.reasons if gap in pair]
    shown = [pair for pair in touching if before in pair or after in pair]
    return scored.reasons[(shown or touching)[0]]


def what_goes_wrong(bank: Bank, entry: Entry[Procedure], stream: SeededRandom) -> Derived | None:
    """Ask what follows when two steps are done the wrong way round."""
    cases = []
    for asked in _harmful(entry):
        wrong = _other_slips(bank, entry, asked, stream)
        if len(wrong) >= FEWEST_WRONG:
            cases.append((asked, wrong[:MOST_WRONG]))
    if not cases:
        return None
    asked, wrong = stream.choose(cases)
    steps = {step.step: step.action for step in entry.record.steps}
    answers: list[Answer] = [(asked.goes_wrong or "", True, asked.reason)]
    answers += [(text, False, says) for text, says in wrong]
    stem = (
        f"{entry.record.title}: someone does '{lower_start(steps[asked.then])}' before "
        f"'{lower_start(steps[asked.first])}'. What is likely to go wrong?"
    )
    return Derived("choice", "diagnose", stem, lettered(answers, stream))


def _other_slips(
    bank: Bank, entry: Entry[Procedure], asked: Pair, stream: SeededRandom
) -> list[tuple[str, str]]:
    """Return slips of another harm that are not so far off that they give themselves away.

    Those of the same job are enough where there are enough; else slips of other jobs join them,
    those of the module first, where they speak of the same work.
    """
    own = [p for p in _harmful(entry) if not _is_kin(p, asked) and not _share_a_step(p, asked)]
    slips = stream.shuffled(_told(entry, own))
    if len(unlike(slips, [asked.goes_wrong or ""])) < FEWEST_WRONG:
        module, topic = module_of(entry.record.objective), work_words(bank, entry.record)
        near: list[tuple[str, str]] = []
        far: list[tuple[str, str]] = []
        for other in _others(bank, entry):
            alike = [p for p in _harmful(other) if not _is_kin(p, asked) and _is_like(p, topic)]
            group = near if module_of(other.record.objective) == module else far
            group += _told(other, alike)
        slips = (*slips, *stream.shuffled(near), *stream.shuffled(far))
    return unlike(slips, [asked.goes_wrong or ""])


def _told(entry: Entry[Procedure], pairs: Sequence[Pair]) -> list[tuple[str, str]]:
    says = f"That follows from another slip in '{entry.record.title}'."
    return [(pair.goes_wrong or "", says) for pair in pairs]


def _is_like(pair: Pair, topic: frozenset[str]) -> bool:
    return len(trade_words(pair.goes_wrong or "") & topic) >= WORDS_IN_COMMON


def _harmful(entry: Entry[Procedure]) -> Sequence[Pair]:
    return [pair for pair in entry.record.pairs if pair.scores and pair.goes_wrong and pair.harm]


def _is_kin(one: Pair, other: Pair) -> bool:
    return one.harm == other.harm or any({one.harm, other.harm} <= row for row in KIN)


def _share_a_step(one: Pair, other: Pair) -> bool:
    return bool({one.first, one.then} & {other.first, other.then})
