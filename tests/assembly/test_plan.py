"""How many questions each cell takes: exact to the paper's length."""

from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from generator.assembly.supply.plan import apportioned, cell_counts, percent_of
from generator.bank.models import Blueprint
from generator.bank.reading.record_reading import read_record
from generator.bank.reading.yaml_source import read_yaml

# weights of eighteen modules, 125 together: rounding each to 80 % does not give 100
WEIGHTS = (8, 5, 7, 8, 8, 7, 8, 6, 4, 10, 8, 9, 6, 6, 5, 6, 8, 6)


def blueprint(cells, more=""):
    text = f"title: T\nminutes: 9\npass_percent: 80\n{more}cells:\n" + "".join(
        f"  - {cell}\n" for cell in cells
    )
    node, problems = read_yaml(text, "plan.yml")
    assert node is not None, problems
    record, found = read_record(Blueprint, node)
    assert record is not None, found
    return record


@given(st.lists(st.fractions(0, 100), min_size=1, max_size=12), st.integers(0, 200))
def test_parts_add_up_to_the_total_and_stay_within_one_of_their_share(shares, total):
    parts = apportioned(shares, total)
    whole = sum(shares)
    assert sum(parts) == (total if whole else 0)
    for part, share in zip(parts, shares, strict=True):
        if whole:
            assert abs(part - share * total / whole) < 1


def test_a_hundred_questions_come_out_of_weights_that_rounding_makes_another_number():
    rounded = [int(Fraction(4, 5) * weight + Fraction(1, 2)) for weight in WEIGHTS]
    assert sum(rounded) != 100
    assert sum(apportioned([Fraction(weight) for weight in WEIGHTS], 100)) == 100


def test_equal_remainders_go_to_the_earlier_share():
    assert apportioned([Fraction(1)] * 3, 4) == (2, 1, 1)
    assert apportioned([], 4) == ()


def test_shares_fill_what_the_counts_leave():
    cells = ("{module: a, count: 3}", "{module: b, share: 60}", "{module: c, share: 40}")
    assert cell_counts(blueprint(cells, "questions: 13\n")) == (3, 6, 4)


def test_counts_alone_need_no_length():
    assert cell_counts(blueprint(("{module: a, count: 3}", "{module: b, count: 2}"))) == (3, 2)


@pytest.mark.parametrize(("percent", "total", "count"), [(0, 20, 0), (10, 25, 3), (100, 7, 7)])
def test_a_part_question_of_a_percent_rounds_up(percent, total, count):
    assert percent_of(percent, total) == count
