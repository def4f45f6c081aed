"""Half-lives and due days, against values worked out by hand.

Half-life model: recall = 2 ** (-days / half-life). Ours starts at 2 days; the first right answer of
a day doubles it, the first wrong one leaves a third and at least half a day, a right one after a
wrong one on the same day gives 1.3. Due: the nearest whole day to where recall falls to 85 %.
"""

import math
from typing import Any

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st
from playwright.sync_api import Page

from tests.browser.conftest import Visit

ANSWERED = """([answers, start]) => {
  let state = start;
  return answers.map(([day, right]) => {
    state = Guidecoat.schedule.answered(state, right, day);
    return state.half;
  });
}"""
FEW = settings(
    max_examples=100,
    derandomize=True,
    deadline=None,
    suppress_health_check=[HealthCheck.function_scoped_fixture],
)


@pytest.fixture
def page(phone: Visit) -> Page:
    """Return a page with the schedule loaded."""
    return phone.open("index.html")


def halves(page: Page, *answers: tuple[int, bool], start: dict[str, Any] | None = None) -> Any:
    """Return the half-life after each answer; an answer is its day and whether it was right."""
    return page.evaluate(ANSWERED, [list(answers), start])


def test_right_answers_on_new_days_double_from_two_days_up_to_256(page: Page) -> None:
    found = halves(page, *((day, True) for day in range(10, 19)))
    assert found == [4, 8, 16, 32, 64, 128, 256, 256, 256]


def test_wrong_answers_on_new_days_leave_a_third_and_never_less_than_half_a_day(
    page: Page,
) -> None:
    start = {"half": 16, "day": 1, "today": "right", "since": 1}
    found = halves(page, *((day, False) for day in range(2, 7)), start=start)
    assert found == [5.3333, 1.7778, 0.5926, 0.5, 0.5]


@pytest.mark.parametrize(
    ("ticks", "expected"),
    [
        ([True, True, True], [4, 4, 4]),
        ([False, False], [0.6667, 0.6667]),
        ([True, False], [4, 1.3333]),
        ([False, True], [0.6667, 0.8667]),
        ([False, True, True, False, True], [0.6667, 0.8667, 0.8667, 0.8667, 0.8667]),
    ],
)
def test_a_day_counts_once_each_way(page: Page, ticks: list[bool], expected: list[float]) -> None:
    assert halves(page, *((7, tick) for tick in ticks)) == expected


def test_a_missed_objective_starts_again_the_day_after(page: Page) -> None:
    answers = [(1, True), (2, True), (4, False), (4, True), (5, True)]
    # 2 x 2, x 2, / 3, x 1.3, x 2
    assert halves(page, *answers) == [4, 8, 2.6667, 3.4667, 6.9334]


@pytest.mark.parametrize(
    ("half", "days"),
    [(0.5, 1), (2, 1), (4, 1), (8, 2), (16, 4), (32, 8), (64, 15), (128, 30), (256, 60)],
)
def test_due_days_are_rounded_to_the_nearest_day_and_one_at_least(
    page: Page, half: float, days: int
) -> None:
    exact = half * math.log2(1 / 0.85)
    assert days == max(1, math.floor(exact + 0.5))
    assert page.evaluate("half => Guidecoat.schedule.gap(half)", half) == days


@pytest.mark.parametrize(
    ("days", "half", "recall"), [(3, 4, 0.594604), (7, 10, 0.615572), (14, 30, 0.723635)]
)
def test_recall_halves_with_every_half_life(
    page: Page, days: int, half: float, recall: float
) -> None:
    """Settles and Meeder, ACL 2016: the half-life model."""
    found = page.evaluate(
        "([days, half]) => Guidecoat.schedule.recall({half, day: 100}, 100 + days)", [days, half]
    )
    assert found == pytest.approx(recall, abs=5e-7)


def due_day(page: Page, half: float, day: int, need: int | None) -> Any:
    """Return the day on which an objective is due."""
    state = {"half": half, "day": day}
    return page.evaluate("([s, need]) => Guidecoat.schedule.dueDay(s, need)", [state, need])


@pytest.mark.parametrize(
    ("need", "due"), [(None, 160), (150, 110), (400, 160), (104, 101), (102, 101), (100, 160)]
)
def test_a_date_of_need_cuts_the_wait_to_a_fifth_of_what_is_left(
    page: Page, need: int | None, due: int
) -> None:
    assert due_day(page, 256, 100, need) == due


@given(half=st.floats(0.5, 256), day=st.integers(1, 30_000), left=st.integers(2, 2000))
@FEW
def test_everything_is_due_before_the_date_of_need(
    page: Page, half: float, day: int, left: int
) -> None:
    assert day < due_day(page, half, day, day + left) < day + left


def is_due(page: Page, last: int, today: int, need: int | None = None) -> Any:
    """Say whether an objective with a half-life of 16 days is due."""
    state = {"half": 16, "day": last}
    return page.evaluate(
        "([s, day, need]) => Guidecoat.schedule.isDue(s, day, need)", [state, today, need]
    )


def test_it_is_due_from_its_day_on_and_not_before(page: Page) -> None:
    assert [is_due(page, 100, day) for day in (100, 103, 104, 105, 900)] == [
        False,
        False,
        True,
        True,
        True,
    ]


def test_a_date_of_need_that_has_passed_changes_nothing(page: Page) -> None:
    assert not is_due(page, 100, 103, need=103)
    assert is_due(page, 100, 103, need=104)


def test_an_answer_from_a_day_that_lies_ahead_is_due_because_a_clock_was_wrong(
    page: Page,
) -> None:
    assert is_due(page, 900, 100)
