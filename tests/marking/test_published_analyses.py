"""Published data give the published figures, and those that other implementations give."""

from statistics import correlation, pvariance, stdev

import numpy as np
import pytest

from generator.marking import ClassAnalysis, Statistic, analyse
from generator.marking.analysis.option_counts import OptionUse
from tests.marking.published_data import IQ_KEY, iq_items, lsat6, ten_by_ten


def six(figure: Statistic) -> float:
    """Return a figure to six decimals."""
    assert figure.value is not None, figure.reason
    return round(figure.value, 6)


@pytest.fixture(scope="module")
def law_school() -> ClassAnalysis:
    return analyse(lsat6(), cut=4)


@pytest.fixture(scope="module")
def reasoning() -> ClassAnalysis:
    table = iq_items()
    return analyse(table.scored(IQ_KEY), table.chosen(), IQ_KEY)


def test_the_law_school_test_has_its_published_consistency(law_school: ClassAnalysis) -> None:
    # Bock and Lieberman 1970; three implementations agree on alpha
    assert law_school.people == 1000
    assert law_school.mean.value == 3.819
    assert six(law_school.variance) == 1.070239
    assert six(law_school.sample_variance) == 1.07131
    assert law_school.alpha.value == pytest.approx(0.2949972, abs=5e-8)
    assert law_school.kr20 == law_school.alpha
    assert law_school.kr21.value == pytest.approx(0.1964412, abs=5e-8)
    assert six(law_school.sem) == 0.869067


def test_kr_20_does_not_mix_divisors(law_school: ClassAnalysis) -> None:
    # 0.2959522 comes from item variances over n and a total variance over n - 1
    assert law_school.kr20.value != pytest.approx(0.2959522, abs=5e-5)


@pytest.mark.parametrize(
    ("item", "facility", "item_total", "item_rest", "dropped"),
    [
        ("1", 0.924, 0.362010, 0.112833, 0.275356),
        ("2", 0.709, 0.566772, 0.153178, 0.237584),
        ("3", 0.553, 0.618440, 0.172779, 0.216799),
        ("4", 0.763, 0.534418, 0.144428, 0.245933),
        ("5", 0.870, 0.435366, 0.121596, 0.266294),
    ],
)
def test_the_law_school_items_have_their_published_figures(
    law_school: ClassAnalysis,
    item: str,
    facility: float,
    item_total: float,
    item_rest: float,
    dropped: float,
) -> None:
    found = next(entry for entry in law_school.items if entry.name == item)
    assert six(found.facility) == facility
    assert six(found.item_total) == item_total
    assert six(found.item_rest) == item_rest
    assert six(found.alpha_if_dropped) == dropped


def test_the_verdict_at_four_of_five_is_hardly_steadier_than_chance(
    law_school: ClassAnalysis,
) -> None:
    # Subkoviak's method, worked on these data
    assert law_school.decision is not None
    assert law_school.decision.passed == 357 + 298
    assert six(law_school.decision.agreement) == 0.583198
    assert six(law_school.decision.by_chance) == 0.552196
    assert six(law_school.decision.kappa) == 0.069231


def test_the_hand_worked_table_gives_its_printed_figures() -> None:
    table = ten_by_ten()
    found = analyse(table.scored(dict.fromkeys(table.items, "1")))
    facilities = [six(item.facility) for item in found.items]
    assert facilities == [0.7, 0.7, 0.6, 0.7, 0.6, 0.8, 0.7, 0.7, 0.5, 0.6]
    assert found.variance.value == 5.84
    assert found.kr20.value == pytest.approx(0.6963470, abs=5e-8)
    assert found.kr21.value == pytest.approx(0.6841705, abs=5e-8)
    rest = {item.name: six(item.item_rest) for item in found.items}
    assert (rest["1"], rest["3"], rest["4"], rest["5"]) == (0.705889, 0.0, 0.473589, 0.583874)


def test_the_reasoning_items_have_their_published_consistency(reasoning: ClassAnalysis) -> None:
    # another implementation prints 0.84 for alpha
    assert reasoning.people == 1523
    assert six(reasoning.mean) == 7.833224
    assert six(reasoning.variance) == 16.556559
    assert reasoning.alpha.value == pytest.approx(0.8405083, abs=5e-8)


# people, share, r with the rest, mean of the rest
USES = {
    ("reason.4", "0"): (81, 0.053185, -0.222620, 3.617284),
    ("reason.4", "1"): (69, 0.045305, -0.119689, None),
    ("reason.4", "2"): (170, 0.111622, -0.234874, None),
    ("reason.4", "3"): (159, 0.104399, -0.200635, None),
    ("reason.4", "4"): (975, 0.640184, 0.501965, 8.625641),
    ("reason.4", "5"): (44, 0.028890, -0.120988, None),
    ("reason.4", "6"): (25, 0.016415, -0.082566, None),
    ("letter.58", "1"): (212, 0.139199, -0.113948, None),
    ("letter.58", "4"): (676, 0.443861, 0.485546, 9.457101),
    ("letter.58", "5"): (248, 0.162837, -0.117589, None),
    ("letter.58", "6"): (20, 0.013132, -0.054255, None),
    ("rotate.3", "2"): (67, 0.043992, 0.001774, None),
    ("rotate.3", "3"): (295, 0.193697, 0.432810, None),
    ("rotate.3", "4"): (337, 0.221274, 0.056828, None),
    ("rotate.3", "6"): (83, 0.054498, 0.036448, None),
}


def use_of(analysis: ClassAnalysis, item: str, option: str) -> OptionUse:
    entry = next(entry for entry in analysis.items if entry.name == item)
    return next(use for use in entry.options if use.option == option)


@pytest.mark.parametrize(("item", "option"), USES)
def test_each_option_of_the_reasoning_items_was_chosen_as_published(
    reasoning: ClassAnalysis, item: str, option: str
) -> None:
    people, share, rest, rest_mean = USES[item, option]
    use = use_of(reasoning, item, option)
    assert (use.people, round(use.share, 6), six(use.rest)) == (people, share, rest)
    assert rest_mean is None or round(use.rest_mean or 0, 6) == rest_mean


def test_a_hard_item_whose_favourite_is_wrong_is_flagged_but_not_called_miskeyed(
    reasoning: ClassAnalysis,
) -> None:
    rotate = next(item for item in reasoning.items if item.name == "rotate.3")
    assert "attracts_strong_learners" in rotate.flags
    assert "miskey_suspect" not in rotate.flags


def test_two_independent_libraries_give_the_same_figures(reasoning: ClassAnalysis) -> None:
    table = iq_items()
    marks = np.array(
        [[a == IQ_KEY[i] for a, i in zip(row, table.items, strict=True)] for row in table.answers]
    ).astype(float)
    totals, items = marks.sum(axis=1), marks.shape[1]
    assert reasoning.alpha.value == pytest.approx(
        items / (items - 1) * (1 - marks.var(axis=0, ddof=1).sum() / totals.var(ddof=1)), abs=1e-12
    )
    assert reasoning.variance.value == pytest.approx(pvariance(totals), abs=1e-12)
    assert reasoning.alpha.value is not None
    error = stdev(totals) * (1 - reasoning.alpha.value) ** 0.5
    assert reasoning.sem.value == pytest.approx(error, abs=1e-12)
    for place, item in enumerate(reasoning.items):
        rest = totals - marks[:, place]
        by_numpy = np.corrcoef(marks[:, place], rest)[0, 1]
        assert item.item_rest.value == pytest.approx(by_numpy, abs=1e-12)
        assert item.item_total.value == pytest.approx(
            correlation(marks[:, place].tolist(), totals.tolist()), abs=1e-12
        )
