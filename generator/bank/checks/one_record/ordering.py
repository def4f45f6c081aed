"""Order pairs must be possible, explained, and few enough orders must be right."""

from collections.abc import Iterator
from typing import Any

from generator.bank.bank import Bank, Entry
from generator.bank.checks.rule import Rule
from generator.bank.orders import count_orders, has_cycle, is_legal, without
from generator.diagnostics import Problem

MOST_ORDERS = 24
# an answer sheet has this many places side by side
MOST_LINES = 7


def ordered_entries(bank: Bank) -> Iterator[Entry[Any]]:
    """Return every procedure and order item."""
    yield from bank.procedures.values()
    yield from (e for e in bank.items.values() if getattr(e.record, "kind", "") == "order")


def _pairs(entry: Entry[Any]) -> list[tuple[str, str]]:
    return [(pair.first, pair.then) for pair in entry.record.pairs]


def repeated_step(bank: Bank) -> Iterator[Problem]:
    """Return steps that carry a name already used in the same record."""
    for entry in ordered_entries(bank):
        seen: set[str] = set()
        for place, step in enumerate(entry.record.steps):
            if step.step in seen:
                message = f"the step name '{step.step}' is used twice"
                yield entry.problem("error", "repeated-step", message, "steps", place, "step")
            seen.add(step.step)


def order_cycle(bank: Bank) -> Iterator[Problem]:
    """Return records whose pairs ask for a step to come before itself."""
    for entry in ordered_entries(bank):
        if has_cycle(_pairs(entry)):
            message = "the pairs run in a circle, so that no order keeps them all"
            yield entry.problem("error", "order-cycle", message, "pairs")


def order_against_listing(bank: Bank) -> Iterator[Problem]:
    """Return pairs that the listed order of the steps breaks."""
    for entry in ordered_entries(bank):
        steps = [step.step for step in entry.record.steps]
        for place, pair in enumerate(_pairs(entry)):
            if pair[0] in steps and pair[1] in steps and not is_legal(steps, [pair]):
                message = f"the listing puts '{pair[1]}' before '{pair[0]}'"
                hint = "list the steps in an order that keeps every pair"
                yield entry.problem(
                    "error", "order-against-listing", message, "pairs", place, hint=hint
                )


def too_many_orders(bank: Bank) -> Iterator[Problem]:
    """Return order items of which too many orders are right to mark fairly."""
    for entry in bank.items.values():
        record: Any = entry.record
        if getattr(record, "kind", "") != "order":
            continue
        steps = [step.step for step in record.steps]
        scoring = [(p.first, p.then) for p in record.pairs if p.pair_class != "habit"]
        orders = count_orders(steps, without(scoring, ())) if not has_cycle(scoring) else 0
        if orders > MOST_ORDERS:
            message = f"{orders} orders of these steps are right; {MOST_ORDERS} is the most"
            hint = "leave out a loose step, or ask which step must come before another"
            yield entry.problem("error", "too-many-orders", message, "pairs", hint=hint)


def too_many_lines(bank: Bank) -> Iterator[Problem]:
    """Return order items for papers with more lines than an answer sheet has places."""
    for entry in bank.items.values():
        record: Any = entry.record
        if getattr(record, "kind", "") == "order" and record.use != "study":
            lines = len(record.steps)
            if lines > MOST_LINES:
                message = f"this has {lines} lines, and an answer sheet has {MOST_LINES} places"
                hint = "join two steps or leave one out, or write 'use: study'"
                yield entry.problem("error", "too-many-lines", message, "steps", hint=hint)


def pair_unexplained(bank: Bank) -> Iterator[Problem]:
    """Return pairs of procedures that name a harm without what goes wrong, or the other way."""
    for entry in bank.procedures.values():
        for place, pair in enumerate(entry.record.pairs):
            if bool(pair.goes_wrong) != bool(pair.harm):
                message = "'goes_wrong' and 'harm' belong together, and one of them is missing"
                hint = "leave both out where nobody could do it the other way round"
                yield entry.problem("error", "pair-unexplained", message, "pairs", place, hint=hint)


RULES = (
    Rule(
        "repeated-step",
        "error",
        "A step's name tells it from the others of the same record.",
        "- step: wipe\n- step: wipe",
        "- step: first_wipe\n- step: last_wipe",
        repeated_step,
    ),
    Rule(
        "order-cycle",
        "error",
        "Pairs that run in a circle leave no right order.",
        "- {first: wash, then: dry}\n- {first: dry, then: wash}",
        "- {first: wash, then: dry}",
        order_cycle,
    ),
    Rule(
        "order-against-listing",
        "error",
        "The listed order is what the lesson shows, so it must keep every pair.",
        "steps: [dry, wash]\npairs: [{first: wash, then: dry}]",
        "steps: [wash, dry]\npairs: [{first: wash, then: dry}]",
        order_against_listing,
    ),
    Rule(
        "too-many-orders",
        "error",
        "Where nearly every order is right, an order question measures nothing.",
        "seven steps, two pairs",
        "five steps, four pairs",
        too_many_orders,
    ),
    Rule(
        "too-many-lines",
        "error",
        "An order question on a paper has as many lines as its answer sheet has places.",
        "use: exam and nine steps",
        "use: exam and seven steps",
        too_many_lines,
    ),
    Rule(
        "pair-unexplained",
        "error",
        "What goes wrong is a question of its own, and its harm keeps kindred answers apart.",
        "- {first: key_bed, ..., goes_wrong: The mix gels on the board}",
        "- {first: key_bed, ..., goes_wrong: The mix gels on the board, harm: wrong_cure}",
        pair_unexplained,
    ),
)
