"""Every relation of the trade is asked; the main ones three times, directly and turned round.

Common practice: whoever can only put numbers into a line has not learned it, so the questions ask
the same relation backwards, inside a whole job, and in both systems of units.
"""

from collections import defaultdict
from collections.abc import Iterator
from itertools import islice

import pytest

from generator.bank.checks.numbers import numeric_entries
from generator.bank.numbers.numeric_solution import Solution, all_sets, solve
from generator.formulas import Formula, evaluate, parse_formula
from generator.formulas.syntax import CallNode, NameNode, NumberNode
from generator.quantities import Quantity
from generator.questions.drawing.numeric import prepared
from generator.refinishing.catalogue import CATALOGUE
from tests.bank.relations_asked import (
    MAIN,
    METRIC_UNITS,
    NOT_ASKED,
    ONE_SYSTEM,
    PLAINLY,
    US_UNITS,
)
from tests.real import real_bank
from tests.some import some

DRAWS = 25


@pytest.fixture(scope="module")
def numeric():
    return {entry.name: (entry.record, prepared(entry)) for entry in numeric_entries(real_bank())}


@pytest.fixture(scope="module")
def asked(numeric):
    """Return every relation with the items that ask it."""
    found = defaultdict(set)
    for name, (_, item) in numeric.items():
        for relation in item.answer.relations:
            found[relation].add(name)
    for name, pairs in PLAINLY.items():
        for relation in (r for pair in pairs for r in read(pair[0]).relations):
            found[relation].add(name)
    return found


def read(text: str) -> Formula:
    formula, problems = parse_formula(text)
    assert formula is not None, f"{text}: {problems}"
    return formula


def items_of(family, asked) -> list[str]:
    return sorted(set().union(*(asked[relation] for relation in family)))


def is_one_call(formula: Formula) -> bool:
    """Say whether a formula only puts its values into one relation."""
    root = formula.root
    return isinstance(root, CallNode) and all(
        isinstance(argument.value, (NameNode, NumberNode)) for argument in root.arguments
    )


def test_every_relation_is_asked_or_named_with_a_reason(asked):
    never = {relation for relation in CATALOGUE if not asked[relation]}
    assert never == NOT_ASKED.keys()
    assert all(len(reason.split()) > 5 for reason in NOT_ASKED.values())


def test_the_main_relations_are_many_and_told_apart():
    names = [relation for family in MAIN for relation in family]
    assert len(MAIN) >= 40
    assert len(set(names)) == len(names)
    assert set(names) <= CATALOGUE.keys()


@pytest.mark.parametrize("family", MAIN, ids=lambda family: family[0])
def test_a_main_relation_is_asked_three_times_at_rising_difficulty(family, asked, numeric):
    items = items_of(family, asked)
    assert len(items) >= 3
    assert len({numeric[name][0].level for name in items}) >= 2, items
    turned = [name for name in items if not is_one_call(numeric[name][1].answer)]
    assert turned, f"{items} only put values in"


@pytest.mark.parametrize(
    "family", [f for f in MAIN if f[0] not in ONE_SYSTEM], ids=lambda family: family[0]
)
def test_a_main_relation_is_asked_in_metric_and_in_us_units(family, asked, numeric):
    used = []
    for name in items_of(family, asked):
        record = numeric[name][0]
        units = {record.answer.unit, *(given.unit for given in record.given.values())}
        used.append((bool(units & US_UNITS), bool(units & METRIC_UNITS)))
    assert any(us for us, _ in used), "none in US units"
    assert (False, True) in used, "none in metric units alone"


def test_one_hundred_and_fifty_numeric_templates_or_more(numeric):
    assert len(numeric) >= 150


def draws(item) -> Iterator[Solution]:
    solved = (solve(item, values, CATALOGUE) for values in all_sets(item))
    return islice((s for s in solved if isinstance(s, Solution)), DRAWS)


@pytest.mark.parametrize("name", PLAINLY)
def test_a_plain_formula_says_the_same_as_its_relation(name, numeric):
    _, item = numeric[name]
    worked = 0
    for solution in draws(item):
        values = {**solution.values, "answer": Quantity(solution.exact, item.unit)}
        for relation, result in PLAINLY[name]:
            said = evaluate(read(relation), values, CATALOGUE)
            meant = evaluate(read(result), values, CATALOGUE)
            assert said.base == pytest.approx(float(meant.base), rel=1e-9), name
        worked += 1
    assert worked


def test_what_calls_a_relation_from_memory_is_for_study_only(numeric):
    for name, (record, item) in some(numeric.items()):
        called = [CATALOGUE[name] for name in item.answer.relations if name in CATALOGUE]
        statuses = {relation.facts.status for relation in called}
        if "from_memory" in statuses:
            assert record.use == "study", name
