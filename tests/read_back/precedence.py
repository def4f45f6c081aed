"""What must come first in a job, followed along the stated pairs of its record."""

from itertools import permutations

from tests.read_back.plain_bank import Record

Pairs = set[tuple[str, str]]


def scored_pairs(record: Record) -> Pairs:
    """Return the stated pairs that score; a habit is no rule."""
    return {(p["first"], p["then"]) for p in record["pairs"] if p["class"] != "habit"}


def dangers(record: Record) -> Pairs:
    """Return the stated pairs that protect people."""
    return {(p["first"], p["then"]) for p in record["pairs"] if p["class"] == "danger"}


def followed(pairs: Pairs) -> Pairs:
    """Return all that follows from some pairs, step by step, until nothing new comes."""
    found = set(pairs)
    while True:
        more = {(a, d) for a, b in found for c, d in found if b == c} - found
        if not more:
            return found
        found |= more


def earlier(step: str, pairs: Pairs) -> set[str]:
    """Return every step that must come before one."""
    return {first for first, then in followed(pairs) if then == step}


def keeps(order: str, pairs: Pairs) -> bool:
    """Say whether an order keeps every pair."""
    return all(order.index(first) < order.index(then) for first, then in pairs)


def right_orders(letters: str, pairs: Pairs) -> int:
    """Count the orders that keep every pair, by going through all of them."""
    return sum(keeps("".join(order), pairs) for order in permutations(letters))
