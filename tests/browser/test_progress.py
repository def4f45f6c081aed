"""The panel is kept on this device, cleaned by right answers and never lost silently."""

import json
from pathlib import Path

from playwright.sync_api import Page

from tests.browser.conftest import Visit
from tests.browser.test_answering import QUESTIONS, check, choose, question

KEY = "guidecoat-panel-1"
ZERO = "film_build/read_gauges"


def stored(page: Page) -> dict[str, dict[str, dict[str, int]]]:
    """Read the store."""
    found: dict[str, dict[str, dict[str, int]]] = json.loads(
        page.evaluate(f"localStorage.getItem('{KEY}')")
    )
    return found


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
    answer_zero(page, "Check it on a bare plate")
    assert level(page) == "3"
    assert "1 of 6 blocked clean" in page.locator(".strip-says").inner_text()
    page = phone.open("progress.html")
    row = page.locator("li", has_text="Be sure about read gauges")
    assert "blocked clean" in row.inner_text()


def test_only_correctness_is_stored(phone: Visit) -> None:
    page = phone.open(QUESTIONS)
    answer_zero(page, "Warm it in your hand")
    assert stored(page) == {
        "version": 1,
        "objectives": {ZERO: {"film_build/read_gauges/zero": 0}},
    }


def test_a_second_try_at_the_same_question_does_not_clean_the_patch(phone: Visit) -> None:
    page = phone.open(QUESTIONS)
    answer_zero(page, "Warm it in your hand")
    answer_zero(page, "Check it on a bare plate")
    assert level(page) == "0"


def test_a_fresh_visit_can_clean_what_was_missed(phone: Visit) -> None:
    answer_zero(phone.open(QUESTIONS), "Warm it in your hand")
    page = phone.open(QUESTIONS)
    answer_zero(page, "Check it on a bare plate")
    assert level(page) == "3"


def test_a_damaged_store_is_set_aside_and_reported(phone: Visit) -> None:
    page = phone.open("index.html")
    for damage in ("{not json", '{"version":1}', '{"version":1,"objectives":{"a":{"b":"yes"}}}'):
        page.evaluate("([key, text]) => localStorage.setItem(key, text)", [KEY, damage])
        page.reload()
        assert "could not be read" in page.locator(".progress-note").inner_text()
        assert page.evaluate("localStorage.getItem('guidecoat-panel-set-aside')") == damage
        assert page.evaluate(f"localStorage.getItem('{KEY}')") is None


def test_the_panel_can_be_saved_deleted_and_loaded(phone: Visit, tmp_path: Path) -> None:
    page = phone.open(QUESTIONS)
    answer_zero(page, "Check it on a bare plate")
    before = stored(page)
    page = phone.open("progress.html")
    with page.expect_download() as download:
        page.get_by_role("button", name="Save to a file").tap()
    saved = tmp_path / "panel.json"
    download.value.save_as(saved)
    page.get_by_role("button", name="Delete my panel").tap()
    page.get_by_role("button", name="Yes, delete it").tap()
    assert stored(page) == {"version": 1, "objectives": {}}
    page.get_by_label("Load from a file").set_input_files(saved)
    page.get_by_text("Your panel was loaded.").wait_for()
    assert stored(page) == before


def test_a_file_that_holds_no_panel_changes_nothing(phone: Visit, tmp_path: Path) -> None:
    page = phone.open(QUESTIONS)
    answer_zero(page, "Check it on a bare plate")
    before = stored(page)
    wrong = tmp_path / "other.json"
    wrong.write_text('{"version": 2}', encoding="utf-8")
    page = phone.open("progress.html")
    page.get_by_label("Load from a file").set_input_files(wrong)
    page.get_by_text("That file does not hold a panel.").wait_for()
    assert stored(page) == before
