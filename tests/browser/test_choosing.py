"""Which questions come, and in which order: due, weak, new, never two of one method in a row."""

import json
from typing import Any

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st
from playwright.sync_api import Page

from tests.browser.conftest import Visit

KEY = "guidecoat-panel-2"
TODAY = 20_000
WANTED = """([names, day, need]) => Guidecoat.wantedToday(
  names.map(name => ({objective: name, text: name, parts: [name]})), day, need
).map(slot => slot.rank + " " + slot.entry.objective)"""
ROW = """methods => Guidecoat.keptApart(
  methods.map((method, place) => ({question: {method}, place}))
).map(pick => pick.place)"""


def met(half: float, day: int, ticks: str = "1", since: int = 1) -> dict[str, Any]:
    """Return the state of an objective whose items were last answered so."""
    items = {f"item{place}": [[day, int(tick)]] for place, tick in enumerate(ticks)}
    return {"half": half, "day": day, "today": "", "since": since, "items": items}


def stocked(visit: Visit, **objectives: dict[str, Any]) -> Page:
    """Open a page with this store; objectives are module_name pairs."""
    page = visit.open("index.html")
    named = {name.replace("__", "/"): state for name, state in objectives.items()}
    store: dict[str, Any] = {"version": 2, "need": None, "greeted": True, "mistakes": []}
    store["objectives"] = named
    page.evaluate("([k, text]) => localStorage.setItem(k, text)", [KEY, json.dumps(store)])
    page.reload()
    assert page.locator(".progress-note").first.is_hidden()
    return page


def wanted(page: Page, *names: str, day: int = TODAY, need: int | None = None) -> list[str]:
    """Return what today's check wants of these objectives."""
    found: list[str] = page.evaluate(WANTED, [list(names), day, need])
    return found


def test_due_comes_first_then_weak_then_new(phone: Visit) -> None:
    page = stocked(
        phone,
        m__firm=met(64, TODAY - 1),
        m__weak=met(8, TODAY - 1, "10"),
        m__due=met(4, TODAY - 1),
    )
    assert wanted(page, "m/new", "m/firm", "m/weak", "m/due") == [
        "due m/due",
        "weak m/weak",
        "new m/new",
    ]


def test_what_is_least_recalled_is_asked_first(phone: Visit) -> None:
    page = stocked(phone, m__a=met(16, TODAY - 4), m__b=met(4, TODAY - 9), m__c=met(64, TODAY - 20))
    # recall: 2 ** (-4/16) = 0.84, 2 ** (-9/4) = 0.21, 2 ** (-20/64) = 0.81
    assert wanted(page, "m/a", "m/b", "m/c") == ["due m/b", "due m/c", "due m/a"]


def test_five_new_objectives_a_day_at_most_and_those_met_today_count(phone: Visit) -> None:
    names = [f"m/n{number}" for number in range(9)]
    assert wanted(stocked(phone), *names) == [f"new {name}" for name in names[:5]]
    begun = {f"m__n{number}": met(4, TODAY, since=TODAY) for number in range(3)}
    page = stocked(phone, **begun)
    assert wanted(page, *names) == ["new m/n3", "new m/n4"]
    tomorrow = wanted(page, *names, day=TODAY + 1)
    assert tomorrow == [f"due m/n{n}" for n in range(3)] + [f"new m/n{n}" for n in range(3, 8)]


def test_new_objectives_of_modules_already_begun_come_before_others(phone: Visit) -> None:
    page = stocked(phone, later__a=met(64, TODAY - 1))
    assert wanted(page, "first/a", "first/b", "later/a", "later/b") == [
        "new later/b",
        "new first/a",
        "new first/b",
    ]


def test_ten_objectives_at_most_and_a_backlog_leaves_no_room_for_new_ones(phone: Visit) -> None:
    late = {f"m__d{number:02}": met(4, TODAY - 5) for number in range(12)}
    page = stocked(phone, **late)
    names = [name.replace("__", "/") for name in late]
    assert wanted(page, *names, "m/new") == [f"due {name}" for name in names[:10]]


def test_a_date_of_need_brings_what_is_firm_forward(phone: Visit) -> None:
    page = stocked(phone, m__firm=met(256, TODAY - 10))
    assert wanted(page, "m/firm") == []
    assert wanted(page, "m/firm", need=TODAY + 20) == ["due m/firm"]


PICKED = """([wanted, held, day]) => Guidecoat.picked(
  wanted.map(([objective, rank]) => ({entry: {objective, parts: [objective]}, rank})),
  entry => held[entry.objective], day
).map(pick => pick.question.id)"""


def picked(page: Page, ranks: dict[str, str], held: dict[str, list[str]]) -> list[str]:
    """Return the items picked; each is its own method here."""
    questions = {
        name: [{"id": item, "method": item} for item in items] for name, items in held.items()
    }
    found: list[str] = page.evaluate(PICKED, [list(ranks.items()), questions, TODAY])
    return found


def test_every_objective_has_one_question_before_any_has_a_second(phone: Visit) -> None:
    held = {f"m/o{n}": [f"o{n}a", f"o{n}b", f"o{n}c"] for n in range(6)}
    found = picked(stocked(phone), dict.fromkeys(held, "new"), held)
    objectives = [item[:2] for item in found]
    assert len(found) == 10
    assert set(objectives) == {f"o{n}" for n in range(6)}
    assert max(objectives.count(name) for name in objectives) == 2
    assert len(set(found)) == 10


def test_the_missed_item_of_an_objective_is_asked_before_unasked_and_right_ones(
    phone: Visit,
) -> None:
    state = met(4, TODAY - 3)
    state["items"] = {"right": [[TODAY - 9, 1]], "missed": [[TODAY - 3, 0]]}
    page = stocked(phone, m__a=state)
    found = picked(page, {"m/a": "due"}, {"m/a": ["right", "unasked", "missed"]})
    assert found == ["missed", "unasked"]


def row(page: Page, methods: list[str]) -> list[int]:
    """Put questions of these methods in a row; gives their places in the list."""
    found: list[int] = page.evaluate(ROW, methods)
    return found


@pytest.mark.parametrize(
    ("methods", "places"),
    [
        ("abc", [0, 1, 2]),
        ("aab", [0, 2, 1]),
        ("aabb", [0, 2, 1, 3]),
        ("baa", [1, 0, 2]),
        ("aaab", [0, 3, 1]),
        ("aaa", [0]),
        ("", []),
    ],
)
def test_a_row_keeps_its_order_where_it_can_and_leaves_out_what_cannot_be_kept_apart(
    phone: Visit, methods: str, places: list[int]
) -> None:
    assert row(phone.open("index.html"), list(methods)) == places


@given(methods=st.lists(st.sampled_from("abcd"), max_size=10))
@settings(
    max_examples=200,
    derandomize=True,
    deadline=None,
    suppress_health_check=[HealthCheck.function_scoped_fixture],
)
def test_no_two_neighbours_share_a_method_and_nothing_is_dropped_without_need(
    open_page: Page, methods: list[str]
) -> None:
    places = row(open_page, methods)
    found = [methods[place] for place in places]
    assert all(a != b for a, b in zip(found, found[1:], strict=False))
    assert len(set(places)) == len(places)
    most = max((methods.count(method) for method in methods), default=0)
    if most <= (len(methods) + 1) // 2:
        assert sorted(places) == list(range(len(methods)))


@pytest.fixture
def open_page(phone: Visit) -> Page:
    """Return a page that can be asked again and again."""
    return phone.open("index.html")
