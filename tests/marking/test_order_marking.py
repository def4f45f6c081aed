"""An order is marked by the precedences it keeps; every legal order is fully right."""

from fractions import Fraction
from itertools import permutations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from generator.marking import Mark, Ordered, mark_response
from tests.marking.issued import Plain, order

FIVE = order("PQRST", ["PQ", "PR", "QS", "RS", "ST"])


def marked(question: Plain, letters: str) -> Mark:
    return mark_response(question, Ordered(tuple(letters)))


# worked by hand: nine implied precedences, two legal orders of 120 (common practice)
@pytest.mark.parametrize(
    ("letters", "share"),
    [("PQRST", "1"), ("PRQST", "1"), ("PQSRT", "8/9"), ("TPQRS", "5/9"), ("TSRQP", "0")],
)
def test_the_share_counts_implied_precedences_not_only_stated_ones(
    letters: str, share: str
) -> None:
    assert marked(FIVE, letters).share == Fraction(share)


def test_exactly_the_legal_orders_are_right() -> None:
    right = {"".join(p) for p in permutations("PQRST") if marked(FIVE, "".join(p)).share == 1}
    assert right == {"PQRST", "PRQST"}


def test_each_stated_pair_that_is_broken_is_named_with_its_reason() -> None:
    mark = marked(FIVE, "PQSRT")
    assert mark.status == "part"
    assert [(f.subject, f.text) for f in mark.went_wrong] == [("R before S", "because of RS")]


def test_a_dangerous_pair_turned_round_leaves_nothing() -> None:
    risky = order("PQRST", ["PQ", "QR", "RS", "ST"], danger=["PQ"])
    assert marked(risky, "PQRTS").share == Fraction(9, 10)
    mark = marked(risky, "QPRST")
    assert mark.share == 0
    assert mark.status == "wrong"
    assert [f.text for f in mark.went_wrong] == ["because of PQ"]


def test_a_step_left_out_costs_its_precedences_and_is_named() -> None:
    mark = marked(FIVE, "PQST")
    # R stands in three of the nine precedences
    assert mark.share == Fraction(2, 3)
    assert [f.text for f in mark.went_wrong] == ["Step R is left out."]


def test_a_step_written_twice_earns_nothing_with_either() -> None:
    mark = marked(FIVE, "PRQRST")
    assert mark.share == Fraction(2, 3)
    assert mark.went_wrong[-1].text == "Step R appears more than once."


def test_leaving_out_a_step_that_no_pair_names_is_not_fully_right() -> None:
    loose = order("PQX", ["PQ"])
    assert marked(loose, "PXQ").share == 1
    assert marked(loose, "PQ").share == Fraction(1, 2)


LENGTHS = st.integers(min_value=2, max_value=7)


@given(LENGTHS)
def test_a_chain_turned_round_keeps_nothing(length: int) -> None:
    steps = "ABCDEFG"[:length]
    chain = order(steps, [steps[i : i + 2] for i in range(length - 1)])
    assert marked(chain, steps).share == 1
    assert marked(chain, steps[::-1]).share == 0


@st.composite
def orders(draw: st.DrawFn) -> tuple[Plain, list[str], str]:
    """Draw a question whose letters in a drawn row are legal, its pairs, and a row of steps."""
    row = "".join(draw(st.permutations("ABCDEF")))
    every = [row[i] + row[j] for i in range(6) for j in range(i + 1, 6)]
    pairs = draw(st.lists(st.sampled_from(every), unique=True, max_size=9))
    danger = draw(st.lists(st.sampled_from(pairs), unique=True)) if pairs else []
    return order("ABCDEF", pairs, danger), pairs, row


@given(orders(), st.permutations("ABCDEF"))
def test_the_share_is_full_exactly_when_every_pair_is_kept(
    drawn: tuple[Plain, list[str], str], letters: list[str]
) -> None:
    question, pairs, _ = drawn
    kept = all(letters.index(pair[0]) < letters.index(pair[1]) for pair in pairs)
    mark = marked(question, "".join(letters))
    assert 0 <= mark.share <= 1
    assert (mark.share == 1) is kept
    assert (mark.status == "right") is kept
    assert bool(mark.went_wrong) is not kept


@given(orders(), st.sets(st.sampled_from(range(6))), st.sampled_from(range(6)))
def test_adding_a_step_in_its_right_place_never_lowers_the_share(
    drawn: tuple[Plain, list[str], str], kept: set[int], added: int
) -> None:
    question, _, row = drawn
    fewer = "".join(row[i] for i in sorted(kept - {added}))
    more = "".join(row[i] for i in sorted(kept | {added}))
    assert marked(question, more).share >= marked(question, fewer).share


@given(orders(), st.permutations("ABCDEF"), st.permutations("ABCDEF"))
def test_renaming_the_letters_changes_no_share(
    drawn: tuple[Plain, list[str], str], letters: list[str], names: list[str]
) -> None:
    question, pairs, _ = drawn
    rename = str.maketrans("ABCDEF", "".join(names))
    danger = [p["first"] + p["then"] for p in question["key"]["pairs"] if p["class"] == "danger"]
    renamed = order(
        "ABCDEF", [p.translate(rename) for p in pairs], [p.translate(rename) for p in danger]
    )
    text = "".join(letters)
    assert marked(renamed, text.translate(rename)).share == marked(question, text).share
