"""The panel is kept on this device, cleaned by right answers and never lost silently."""

import json
from pathlib import Path
from typing import Any

import pytest
from playwright.sync_api import Page

from tests.browser.conftest import Visit
from tests.browser.test_answering import QUESTIONS, check, choose, question

KEY = "guidecoat-panel-2"
OLDER = "guidecoat-panel-1"
ZERO = "film_build/read_gauges"
ITEM = f"{ZERO}/zero"
RIGHT, WRONG = "Check it on a bare plate", "Warm it in your hand"
OLDER_PANEL = {
    "version": 1,
    "objectives": {
        ZERO: {ITEM: 1},
        "film_build/coats": {"film_build/coats/thin_edges": 0},
        "film_build/total_build": {"a": 1, "b": 0, "c": 1},
    },
}


def stored(page: Page) -> dict[str, Any]:
    """Read the store."""
    found: dict[str, Any] = json.loads(page.evaluate(f"localStorage.getItem('{KEY}')"))
    return found


def keep(page: Page, key: str, text: str) -> None:
    """Write into the store as an earlier visit would have."""
    page.evaluate("([key, text]) => localStorage.setItem(key, text)", [key, text])


def answer_zero(page: Page, text: str) -> None:
    """Answer the gauge question."""
    found = question(page, "read_gauges-zero")
    choose(found, text)
    check(found)


def level(page: Page) -> str | None:
    """Read how clean the patch of the gauge objective is drawn."""
    return page.locator(f'.patch[data-objective="{ZERO}"]').get_attribute("data-level")


def test_a_right_answer_blocks_the_patch_clean_and_says_so(phone: Visit) -> None:
    page = phone.open(QUESTIONS)
    assert level(page) == "0"
    answer_zero(page, RIGHT)
    assert level(page) == "3"
    assert "1 of 7 blocked clean" in page.locator(".strip-says").inner_text()
    page = phone.open("progress.html")
    row = page.locator("li", has_text="Be sure about read gauges")
    assert "blocked clean" in row.inner_text()


def test_first_tries_days_and_the_mistake_are_stored_and_nothing_about_the_person(
    phone: Visit,
) -> None:
    page = phone.open(QUESTIONS)
    day = page.evaluate("Guidecoat.today()")
    answer_zero(page, WRONG)
    assert stored(page) == {
        "version": 2,
        "need": None,
        "greeted": False,
        "objectives": {
            ZERO: {
                "half": 0.6667,
                "day": day,
                "today": "wrong",
                "since": day,
                "items": {ITEM: [[day, 0]]},
            }
        },
        "mistakes": [
            {
                "item": ITEM,
                "objective": ZERO,
                "day": day,
                "asked": "What do you do before you read a dry-film gauge on a panel?",
                "given": "Warm it in your hand for a minute",
                "why": "Heat moves the reading; it proves nothing.",
            }
        ],
    }


def test_a_second_try_at_the_same_question_does_not_clean_the_patch(phone: Visit) -> None:
    page = phone.open(QUESTIONS)
    answer_zero(page, WRONG)
    before = stored(page)
    answer_zero(page, RIGHT)
    assert level(page) == "0"
    assert stored(page) == before


def test_a_fresh_visit_can_clean_what_was_missed(phone: Visit) -> None:
    answer_zero(phone.open(QUESTIONS), WRONG)
    page = phone.open(QUESTIONS)
    answer_zero(page, RIGHT)
    assert level(page) == "3"
    assert stored(page)["mistakes"] == []


def test_only_the_last_ten_tries_of_an_item_are_kept(phone: Visit) -> None:
    page = phone.open(QUESTIONS)
    for _ in range(12):
        page.evaluate("([a, b]) => Guidecoat.progress.record(a, b, true, null)", [ZERO, ITEM])
    page.evaluate("([a, b]) => Guidecoat.progress.record(a, b, false, null)", [ZERO, ITEM])
    tries = stored(page)["objectives"][ZERO]["items"][ITEM]
    assert [tick for _, tick in tries] == [1] * 9 + [0]


def test_an_older_panel_is_migrated_with_every_answer_and_its_old_key_removed(
    phone: Visit,
) -> None:
    page = phone.open(QUESTIONS)
    keep(page, OLDER, json.dumps(OLDER_PANEL))
    page.reload()
    day = page.evaluate("Guidecoat.today()")
    found = stored(page)
    assert found["version"] == 2
    assert found["need"] is None
    assert found["objectives"][ZERO]["items"] == {ITEM: [[day, 1]]}
    # a first right answer doubles the 2 days, a wrong one leaves a third, right then wrong 4/3
    halves = {name: state["half"] for name, state in found["objectives"].items()}
    assert halves == {ZERO: 4, "film_build/coats": 0.6667, "film_build/total_build": 1.3333}
    assert level(page) == "3"
    assert page.evaluate(f"localStorage.getItem('{OLDER}')") is None


def test_a_newer_panel_wins_over_an_older_one_that_was_left(phone: Visit) -> None:
    page = phone.open(QUESTIONS)
    answer_zero(page, WRONG)
    keep(page, OLDER, json.dumps(OLDER_PANEL))
    page.reload()
    assert level(page) == "0"


@pytest.mark.parametrize("key", [KEY, OLDER])
def test_a_damaged_store_is_set_aside_and_reported(phone: Visit, key: str) -> None:
    page = phone.open("index.html")
    for damage in (
        "{not json",
        "[]",
        "null",
        '{"version":1}',
        '{"version":1,"objectives":{"a":{"b":"yes"}}}',
        '{"version":2,"need":null,"greeted":true,"objectives":{"a":{}},"mistakes":[]}',
        '{"version":2,"need":"soon","greeted":true,"objectives":{},"mistakes":[]}',
        '{"version":2,"need":null,"greeted":true,"objectives":{},"mistakes":[{"item":"a"}]}',
        '{"version":3,"need":null,"greeted":true,"objectives":{},"mistakes":[]}',
    ):
        keep(page, key, damage)
        page.reload()
        assert "could not be read" in page.locator(".progress-note").inner_text()
        assert page.evaluate("localStorage.getItem('guidecoat-panel-set-aside')") == damage
        assert page.evaluate(f"localStorage.getItem('{key}')") is None


def test_a_whole_store_is_not_taken_for_damaged(phone: Visit) -> None:
    page = phone.open(QUESTIONS)
    answer_zero(page, WRONG)
    before = stored(page)
    page.reload()
    assert stored(page) == before
    assert page.locator(".progress-note").is_hidden()
    assert page.evaluate("localStorage.getItem('guidecoat-panel-set-aside')") is None


def test_the_panel_can_be_saved_deleted_and_loaded(phone: Visit, tmp_path: Path) -> None:
    page = phone.open(QUESTIONS)
    answer_zero(page, RIGHT)
    before = stored(page)
    page = phone.open("progress.html")
    with page.expect_download() as download:
        page.get_by_role("button", name="Save to a file").tap()
    saved = tmp_path / "panel.json"
    download.value.save_as(saved)
    assert json.loads(saved.read_text("utf-8")) == before
    page.get_by_role("button", name="Delete my panel").tap()
    page.get_by_role("button", name="Yes, delete it").tap()
    assert stored(page)["objectives"] == {}
    page.get_by_label("Load from a file").set_input_files(saved)
    page.get_by_text("Your panel was loaded.").wait_for()
    assert stored(page) == before


def test_a_file_saved_by_an_older_edition_is_migrated(phone: Visit, tmp_path: Path) -> None:
    saved = tmp_path / "panel.json"
    saved.write_text(json.dumps(OLDER_PANEL), encoding="utf-8")
    page = phone.open("progress.html")
    page.get_by_label("Load from a file").set_input_files(saved)
    page.get_by_text("Your panel was loaded.").wait_for()
    assert stored(page)["version"] == 2
    assert set(stored(page)["objectives"]) == set(OLDER_PANEL["objectives"])  # type: ignore[call-overload]


def test_a_file_that_holds_no_panel_changes_nothing(phone: Visit, tmp_path: Path) -> None:
    page = phone.open(QUESTIONS)
    answer_zero(page, RIGHT)
    before = stored(page)
    wrong = tmp_path / "other.json"
    wrong.write_text('{"version": 2}', encoding="utf-8")
    page = phone.open("progress.html")
    page.get_by_label("Load from a file").set_input_files(wrong)
    page.get_by_text("That file does not hold a panel.").wait_for()
    assert stored(page) == before


def test_an_answer_in_another_window_is_not_overwritten(phone: Visit) -> None:
    first = phone.open(QUESTIONS)
    second = first.context.new_page()
    second.goto(f"{phone.address}/{QUESTIONS}")
    answer_zero(second, RIGHT)
    found = question(first, "coats-thin_edges")
    choose(found, "A slower pass")
    check(found)
    assert set(stored(first)["objectives"]) == {ZERO, "film_build/coats"}


def test_a_browser_that_keeps_nothing_says_so_and_still_marks(phone: Visit) -> None:
    page = phone.page
    page.add_init_script(
        "Object.defineProperty(window, 'localStorage', {get() { throw new Error('blocked'); }})"
    )
    page = phone.open(QUESTIONS)
    answer_zero(page, RIGHT)
    assert level(page) == "3"
    assert "does not let the page keep" in page.locator(".progress-note").inner_text()
