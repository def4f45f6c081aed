"""The look back lists each mistake with what was answered and why it fails, newest first."""

import json
from typing import Any

from playwright.sync_api import Locator, Page

from tests.browser.check_steps import fill, on_day
from tests.browser.conftest import Visit
from tests.browser.test_answering import QUESTIONS, question

LOOK_BACK = "look-back.html"


def miss(phone: Visit, *names: str) -> None:
    """Answer questions of the module page wrong, one after the other."""
    page = phone.open(QUESTIONS)
    for name in names:
        found = question(page, name.replace("/", "-"))
        fill(found, right=False)
        found.get_by_role("button", name="Check my answer").click()


def listed(page: Page) -> list[Locator]:
    """Return the lines of the list."""
    return page.locator(".mistake").all()


def test_without_mistakes_it_says_what_will_stand_here(phone: Visit) -> None:
    page = phone.open(LOOK_BACK)
    assert "Nothing here." in page.locator(".look-back-count").inner_text()
    assert listed(page) == []


def test_mistakes_stand_newest_first_with_answer_reason_and_day(phone: Visit) -> None:
    on_day(phone.page, 0)
    miss(phone, "read_gauges/zero", "dry_from_wet/target")
    on_day(phone.page, 1)
    miss(phone, "coats/thin_edges")
    on_day(phone.page, 3)
    page = phone.open(LOOK_BACK)
    assert page.locator(".look-back-count").inner_text() == "3 questions to look at, newest first."
    newest, middle, oldest = (line.inner_text() for line in listed(page))
    assert "Which of these make a film thinner than planned?" in newest
    assert "A slower pass" in newest
    assert "Answered 2 days ago." in newest
    assert "The sheet asks for 70 µm of dry film." in middle
    assert "7 µm" in middle
    assert "Answered 3 days ago." in middle
    assert "Warm it in your hand for a minute" in oldest
    assert "Heat moves the reading; it proves nothing." in oldest
    assert "Be sure about read gauges" in oldest


def test_a_slip_and_an_order_are_listed_with_their_reasons(phone: Visit) -> None:
    page = phone.open(QUESTIONS)
    found = question(page, "dry_from_wet-target")
    found.get_by_label("Your answer, in µm").fill("42")
    found.get_by_role("button", name="Check my answer").click()
    miss(phone, "total_build/readings", "convert_units/names")
    pairs, order, slip = (line.inner_text() for line in listed(phone.open(LOOK_BACK)))
    assert "25.4 µm: C: one inch" in pairs
    assert "25.4 µm: A mil is a thousandth of an inch, 0.0254 mm." in pairs
    assert "1. A: Push the comb square into the wet film; 2. B: Put on" in order
    assert "B before A. Wet two-pack film gives off vapour" in order
    assert "42 µm" in slip
    assert "You multiplied by the solids." in slip
    assert "The answer was 117 µm." in slip


def test_a_question_answered_right_leaves_the_list(phone: Visit) -> None:
    miss(phone, "read_gauges/zero", "coats/thin_edges")
    page = phone.open(LOOK_BACK)
    line = page.locator(".mistake", has_text="read a dry-film gauge")
    line.get_by_role("button", name="Try again").tap()
    found = line.locator(".question")
    found.wait_for()
    assert found.locator(".question-label").inner_text() == "Once more"
    fill(found, right=True)
    found.get_by_role("button", name="Check my answer").tap()
    assert line.locator(".check-note").inner_text() == "Fixed; removed from this list."
    page.reload()
    assert page.locator(".mistake").count() == 1
    assert "read a dry-film gauge" not in page.locator(".mistakes").inner_text()


def test_a_question_missed_again_stays_once_with_the_newer_answer(phone: Visit) -> None:
    miss(phone, "dry_from_wet/target")
    page = phone.open(LOOK_BACK)
    page.get_by_role("button", name="Try again").tap()
    found = page.locator(".mistake .question")
    found.wait_for()
    assert "60 µm" in found.locator(".given").inner_text(), "the same numbers again"
    found.locator(".number").fill("36")
    found.get_by_role("button", name="Check my answer").tap()
    page.reload()
    (line,) = listed(page)
    assert "The sheet asks for 60 µm of dry film." in line.inner_text()
    assert "36 µm" in line.inner_text()


def test_what_a_store_holds_is_shown_as_text_and_never_run(phone: Visit) -> None:
    page = phone.open(LOOK_BACK)
    evil = "<img src=x onerror=alert(1)><b>bold</b>"
    mistake: dict[str, Any] = {"item": "a", "objective": "gone/away", "day": 1}
    mistake |= dict.fromkeys(("asked", "given", "why"), evil)
    store: dict[str, Any] = {"version": 2, "need": None, "greeted": True, "objectives": {}}
    store["mistakes"] = [mistake]
    page.evaluate("text => localStorage.setItem('guidecoat-panel-2', text)", json.dumps(store))
    page.reload()
    (line,) = listed(page)
    assert line.inner_text().count(evil) == 3
    assert line.locator("img, b").count() == 0
    assert line.get_by_role("button").count() == 0, "its objective is no longer in the course"
