"""Analysis of a class: steady under reordering, honest about small classes, never a crash."""

from collections.abc import Sequence
from fractions import Fraction
from math import isclose
from random import Random

import pytest
from hypothesis import given
from hypothesis import strategies as st

from generator.marking import ClassAnalysis, Scores, analyse, right_or_wrong_scores
from generator.marking.analysis.analysis_json import analysis_as_plain
from generator.marking.analysis.decision import chance_to_pass, decision_at
from generator.marking.analysis.moments import correlation, correlation_interval, share_interval
from generator.marking.analysis.scores import Figure

Rows = Sequence[Sequence[bool]]
ROWS = st.integers(2, 7).flatmap(
    lambda items: st.lists(
        st.lists(st.booleans(), min_size=items, max_size=items), min_size=0, max_size=40
    )
)


def analysed(rows: Rows, width: int | None = None) -> ClassAnalysis:
    items = width if width is not None else len(rows[0]) if rows else 3
    return analyse(right_or_wrong_scores([f"Q{n}" for n in range(items)], rows))


def alike(first: Figure, second: Figure) -> bool:
    if first.value is None or second.value is None:
        return first == second
    return isclose(first.value, second.value, abs_tol=1e-12)


@given(ROWS, st.randoms(use_true_random=False))
def test_the_order_of_people_changes_nothing(rows: list[list[bool]], chance: Random) -> None:
    mixed = list(rows)
    chance.shuffle(mixed)
    assert analysed(mixed) == analysed(rows)


@given(ROWS, st.data())
def test_the_order_of_items_changes_nothing_but_their_order(
    rows: list[list[bool]], data: st.DataObject
) -> None:
    width = len(rows[0]) if rows else 3
    places = data.draw(st.permutations(range(width)))
    before, after = analysed(rows), analysed([[row[p] for p in places] for row in rows], width)
    assert alike(before.alpha, after.alpha)
    assert alike(before.kr21, after.kr21)
    for now, place in enumerate(places):
        old, new = before.items[place], after.items[now]
        assert (old.facility, old.flags) == (new.facility, new.flags)
        assert alike(old.item_rest, new.item_rest)
        assert alike(old.alpha_if_dropped, new.alpha_if_dropped)


@given(ROWS)
def test_kr_20_is_alpha_for_right_or_wrong_items(rows: list[list[bool]]) -> None:
    found = analysed(rows)
    assert alike(found.kr20, found.alpha)


@given(ROWS)
def test_every_figure_is_in_its_range_or_has_a_reason(rows: list[list[bool]]) -> None:
    found = analysed(rows)
    assert found.alpha.value is None or found.alpha.value <= 1
    for item in found.items:
        for r in (item.item_total, item.item_rest):
            assert bool(r.reason) is (r.value is None)
            assert r.value is None or -1 <= r.value <= 1
        assert item.facility.value is None or 0 <= item.facility.value <= 1


def test_an_item_that_everyone_has_right_has_no_correlation_and_says_why() -> None:
    rows = [[True, n % 2 == 0, n % 3 == 0] for n in range(40)]
    found = analysed(rows).items[0]
    assert found.item_rest == Figure(None, "everyone has the same score here")
    assert found.item_rest_interval is None
    assert found.flags == ("no_spread",)


@pytest.mark.parametrize(
    ("rows", "width", "reason"),
    [
        ([], 3, "nobody took the test"),
        ([[True, False, True]], 3, "one person has no spread"),
        ([[True], [False]], 1, "a single item has no consistency"),
        ([[True, False], [False, True]], 2, "everyone has the same total"),
        ([[], []], 0, "a single item has no consistency"),
    ],
)
def test_alpha_that_is_not_defined_says_why(rows: Rows, width: int, reason: str) -> None:
    found = analysed(rows, width)
    for figure in (found.alpha, found.kr20, found.kr21, found.sem):
        assert figure == Figure(None, reason)


def test_part_marks_have_alpha_but_no_kuder_richardson_figure() -> None:
    half = Fraction(1, 2)
    scores = Scores(
        ("a", "b"),
        (Fraction(1), Fraction(2)),
        ((half, Fraction(2)), (Fraction(0), half), (Fraction(1), Fraction(1, 3))),
    )
    found = analyse(scores, cut=2)
    # by hand, in parts of 162: variances 27 and 91, of the totals 109
    assert found.alpha.value == pytest.approx(2 * (1 - (27 + 91) / 109), abs=1e-15)
    assert found.kr20.reason == found.kr21.reason == "not every item is right or wrong"
    assert found.decision is not None
    assert (found.decision.passed, found.decision.kappa.value) == (1, None)
    assert found.items[1].facility.value == pytest.approx(17 / 36)
    assert found.items[1].facility_interval is None


@pytest.mark.parametrize(
    ("most", "scores", "says"),
    [
        ((1, 1), ((1,),), "one score for each item"),
        ((1,), ((2,),), "between 0 and the most"),
        ((0,), ((0,),), "above zero"),
    ],
)
def test_scores_that_cannot_be_are_refused(
    most: tuple[int, ...], scores: tuple[tuple[int, ...], ...], says: str
) -> None:
    with pytest.raises(ValueError, match=says):
        Scores(
            tuple("ab"[: len(most)]),
            tuple(map(Fraction, most)),
            tuple(tuple(map(Fraction, row)) for row in scores),
        )


@pytest.mark.parametrize(
    ("people", "low", "high"),
    [(10, -0.41, 0.78), (30, -0.07, 0.60), (50, 0.02, 0.53), (100, 0.11, 0.47)],
)
def test_a_correlation_of_three_tenths_has_its_known_interval(
    people: int, low: float, high: float
) -> None:
    # Fisher's transformation
    found = correlation_interval(Figure(0.30), people)
    assert found is not None
    assert (round(found[0], 2), round(found[1], 2)) == (low, high)


@pytest.mark.parametrize(
    ("r", "people"), [(Figure(None, "no spread"), 40), (Figure(0.3), 3), (Figure(1.0), 40)]
)
def test_a_correlation_without_an_interval_gives_none(r: Figure, people: int) -> None:
    assert correlation_interval(r, people) is None


@pytest.mark.parametrize(
    ("right", "people", "low", "high"),
    [
        (18, 20, 0.698966, 0.972134),
        (14, 20, 0.481027, 0.854523),
        (9, 10, 0.595850, 0.982124),
        (28, 40, 0.545700, 0.819252),
        (10, 10, 0.722467, 1.0),
    ],
)
def test_a_share_has_wilson_s_interval(right: int, people: int, low: float, high: float) -> None:
    # Wilson 1927; another implementation gives the same
    found = share_interval(right, people)
    assert found is not None
    assert (round(found[0], 6), round(found[1], 6)) == (low, high)


@pytest.mark.parametrize(
    ("share", "items", "cut", "chance"),
    [
        (0.9, 20, 16, 0.956826),
        (0.8, 20, 16, 0.629648),
        (0.925, 20, 16, 0.985828),
        (0.25, 20, 12, 9.3539e-4),
        (1 / 3, 20, 14, 8.7881e-4),
        (0.25, 10, 6, 1.9728e-2),
        (0.5, 10, 0, 1.0),
        (0.5, 10, 11, 0.0),
    ],
)
def test_the_chance_to_pass_is_binomial(share: float, items: int, cut: int, chance: float) -> None:
    assert chance_to_pass(share, items, cut) == pytest.approx(chance, rel=5e-5)


@given(st.lists(st.tuples(st.integers(0, 50), st.integers(0, 50)), min_size=2, max_size=30))
def test_a_correlation_turns_its_sign_with_one_side_and_is_one_with_itself(
    pairs: list[tuple[int, int]],
) -> None:
    first, second = [a for a, _ in pairs], [b for _, b in pairs]
    found = correlation(first, second)
    turned = correlation(first, [-b for b in second])
    if found.value is None:
        assert turned.value is None
    else:
        assert turned.value == -found.value
    own = correlation(first, first).value
    assert own is None or own == 1.0


def test_the_plain_form_keeps_every_digit_and_says_why_a_figure_is_missing() -> None:
    plain = analysis_as_plain(
        analysed([[True, False, True], [True, True, False], [True, True, True]])
    )
    # by hand: item variances 0, 2/9 and 2/9, of the totals 2/9
    assert plain["alpha"] == -1.5
    assert plain["items"][0]["item_rest"] is None
    assert plain["items"][0]["reasons"]["item_rest"] == "everyone has the same score here"


def test_one_person_has_no_correlation_and_is_told_so() -> None:
    assert analysed([[True, False, True]]).items[0].item_rest.reason == "one person has no spread"


def test_an_alpha_below_zero_leaves_everyone_at_the_mean() -> None:
    scores = right_or_wrong_scores("123", [[True, False, True], [False, True, False]] * 6)
    steady = decision_at(scores, 2, Figure(-3.0))
    assert steady == decision_at(scores, 2, Figure(0.0))
    assert steady.kappa.value == pytest.approx(0.0, abs=1e-12)
