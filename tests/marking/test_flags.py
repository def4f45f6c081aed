"""Flags ask a person to look, and say no more than the size of the class bears."""

import pytest

from generator.marking import ClassAnalysis, Figure, analyse, right_or_wrong_scores
from generator.marking.analysis.flags import band_of, idle_options, item_flags, trust_in
from generator.marking.analysis.moments import NEAR_ZERO
from generator.marking.analysis.option_counts import OptionUse, option_uses


def analysed(rows: list[list[bool]], width: int) -> ClassAnalysis:
    return analyse(right_or_wrong_scores([f"Q{n}" for n in range(width)], rows))


@pytest.mark.parametrize(
    ("people", "trust"),
    [(0, "counts"), (9, "counts"), (10, "facility"), (29, "facility")]
    + [(30, "interval"), (99, "interval"), (100, "bands")],
)
def test_the_size_of_the_class_decides_what_is_said(people: int, trust: str) -> None:
    assert trust_in(people) == trust
    rows = [[n % 2 == 0, n % 3 == 0, n % 5 == 0] for n in range(people)]
    item = analysed(rows, 3).items[0]
    assert bool(item.band) is (trust == "bands")
    assert ("too_few_people" in item.flags) is (people < 30)


def keyed_wrong() -> ClassAnalysis:
    """Return 60 people of whom the stronger half chose B where the key says A."""
    rows, chosen = [], []
    for n in range(60):
        strong = n < 30
        chosen.append("B" if strong else "A")
        rows.append([not strong, strong, strong, n % 7 != 0])
    scores = right_or_wrong_scores(("odd", "x", "y", "z"), rows)
    return analyse(scores, {"odd": chosen}, {"odd": "A"})


def test_an_item_on_which_the_strong_chose_another_option_is_a_miskey_suspect() -> None:
    odd = keyed_wrong().items[0]
    assert odd.flags == ("miskey_suspect", "attracts_strong_learners")
    assert odd.item_rest.value is not None and odd.item_rest.value < -NEAR_ZERO


def test_a_negative_item_is_flagged_also_where_only_scores_are_known() -> None:
    rows = [[n >= 30, n < 30, n < 30, n % 7 != 0] for n in range(60)]
    assert analysed(rows, 4).items[0].flags == ("miskey_suspect",)


def test_an_option_that_hardly_anyone_who_missed_chose_is_named() -> None:
    # 70 right, 29 on B, 1 on C: C has 1 of 30 who missed
    chosen = ["A"] * 70 + ["B"] * 29 + ["C"]
    rows = [[answer == "A", n % 2 == 0, n < 80] for n, answer in enumerate(chosen)]
    found = analyse(right_or_wrong_scores("123", rows), {"1": chosen}, {"1": "A"})
    assert "option_not_working" in found.items[0].flags
    assert [use.share_of_missed for use in found.items[0].options] == [None, 29 / 30, 1 / 30]


@pytest.mark.parametrize(
    ("people", "r", "facility", "band"),
    [
        (100, 0.40, 0.5, "very good"),
        (100, 0.39, 0.5, "good"),
        (100, 0.30, 0.5, "good"),
        (100, 0.20, 0.5, "marginal"),
        (100, 0.19, 0.5, "poor"),
        (100, 0.19, 0.9, "says nothing, nearly all were right"),
        (99, 0.40, 0.5, ""),
        (100, None, 0.5, ""),
    ],
)
def test_the_strength_of_an_item_is_named_by_ebel_s_bands(
    people: int, r: float | None, facility: float, band: str
) -> None:
    assert band_of(people, Figure(r), facility) == band


@pytest.mark.parametrize(("missed", "idle"), [(19, ()), (20, ()), (21, ("C",)), (41, ("C",))])
def test_one_in_twenty_of_those_who_missed_is_the_least_for_a_working_option(
    missed: int, idle: tuple[str, ...]
) -> None:
    chosen = ["A"] * 30 + ["B"] * (missed - 1) + ["C"]
    scores = right_or_wrong_scores("12", [[a == "A", n % 2 == 0] for n, a in enumerate(chosen)])
    assert idle_options(option_uses(scores, 0, chosen, "A")) == idle


def use(option: str, r: float, is_key: bool = False) -> OptionUse:
    """Return an option chosen by twenty people."""
    return OptionUse(option, is_key, 20, 0.25, None if is_key else 0.33, 3.0, Figure(r))


@pytest.mark.parametrize(
    ("key", "other", "flags"),
    [
        (0.20, 0.05, ()),
        (0.20, 0.06, ("attracts_strong_learners",)),
        (0.20, 0.21, ("miskey_suspect", "attracts_strong_learners")),
        (0.0, -0.1, ("miskey_suspect",)),
        # what rounding leaves of zero is still zero
        (1e-12, -0.1, ("miskey_suspect",)),
        (0.01, -0.1, ()),
    ],
)
def test_flags_compare_the_key_with_zero_and_with_each_wrong_option(
    key: float, other: float, flags: tuple[str, ...]
) -> None:
    assert item_flags(80, Figure(key), (use("A", key, True), use("B", other))) == flags


def test_no_answer_is_never_called_an_option_that_draws() -> None:
    assert item_flags(80, Figure(0.2), (use("A", 0.2, True), use("", 0.3))) == ()
