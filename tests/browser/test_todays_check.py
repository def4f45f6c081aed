"""Today's check: explained once, one question at a time, mixed, and plain about how it went."""

import re
from collections.abc import Iterator
from pathlib import Path

import pytest
from playwright.sync_api import Browser, Page

from tests.browser.check_steps import answer, begin, current, finish, go_on, name_of, on_day
from tests.browser.conftest import Visit

TODAY = "today.html"
ZERO = "read_gauges/zero"


def opened(phone: Visit, day: int = 0) -> Page:
    """Open the check on a day."""
    on_day(phone.page, day)
    return phone.open(TODAY)


def what(page: Page) -> str:
    """Read what the check would hold."""
    return page.locator(".check-what").inner_text()


def test_the_first_run_explains_itself_on_one_screen_and_never_again(phone: Visit) -> None:
    page = opened(phone)
    words = page.locator(".first-run")
    assert words.is_visible()
    assert page.locator(".check-intro").is_hidden()
    box = page.get_by_role("button", name="Understood").bounding_box()
    assert box is not None
    assert box["y"] + box["height"] <= 780
    page.get_by_role("button", name="Understood").tap()
    assert words.is_hidden()
    assert page.evaluate("document.activeElement.textContent") == "Start the check"
    page.reload()
    assert words.is_hidden()
    assert page.locator(".check-intro").is_visible()


def test_the_first_day_brings_five_new_objectives(phone: Visit) -> None:
    page = opened(phone)
    page.get_by_role("button", name="Understood").tap()
    assert what(page) == "Objectives in this check: 5 new."
    begin(page)
    assert page.locator(".sitting-name").inner_text() == "Question 1 of 5"
    assert page.locator(".sitting-why").inner_text() == "New to you."


def test_one_question_is_on_the_screen_and_only_its_first_answer_counts(phone: Visit) -> None:
    page = opened(phone)
    begin(page)
    assert page.locator(".question:visible").count() == 1
    answer(page, right=False)
    question = current(page)
    assert question.locator(".check").is_hidden()
    assert question.locator(".another").count() == 0
    assert question.locator(".ask input:enabled, .ask select:enabled").count() == 0
    assert question.locator("details.reasons").get_attribute("open") is not None
    first = name_of(question)
    go_on(page)
    assert page.locator(".question:visible").count() == 1
    assert name_of(current(page)) != first
    assert page.locator(".sitting-name").inner_text() == "Question 2 of 5"
    assert page.evaluate("document.activeElement.textContent") == "Question 2 of 5"


def test_nothing_can_be_skipped_before_an_answer(phone: Visit) -> None:
    page = opened(phone)
    begin(page)
    assert page.locator(".sitting-next").is_hidden()
    current(page).get_by_role("button", name="Check my answer").tap()
    assert page.locator(".sitting-next").is_hidden()


def test_the_summary_says_what_went_well_and_what_to_look_at(phone: Visit) -> None:
    page = opened(phone)
    begin(page)
    asked = finish(page, ZERO)
    assert ZERO in asked
    summary = page.locator(".summary")
    assert "4 of 5 right at the first try." in summary.inner_text()
    well, look = summary.locator("ul").all()
    assert "Be sure about coats" in well.inner_text()
    assert "Be sure about read gauges" in look.inner_text()
    assert "read gauges" not in well.inner_text()
    assert look.get_by_role("link").get_attribute("href") == "film_build.html"
    assert page.evaluate("document.activeElement.textContent") == "How it went"


def test_the_days_bring_due_then_missed_then_new(phone: Visit) -> None:
    page = opened(phone)
    begin(page)
    first = finish(page, ZERO)
    more = page.locator(".check-next").inner_text()
    assert more == "There is more for today: 1 missed last time."

    page = opened(phone)
    assert what(page) == "Objectives in this check: 1 missed last time."

    page = opened(phone, day=1)
    assert what(page) == "Objectives in this check: 5 due again, 1 new."
    begin(page)
    assert page.locator(".sitting-why").inner_text() == "Due again. Last asked yesterday."
    second = finish(page)
    # the one missed is the least recalled, so it opens the day; the new one closes it
    assert second[0] == ZERO
    assert set(second[:-1]) == set(first)
    assert second[-1] not in first

    page = opened(phone, day=2)
    # right on two days: 8 days, due after 2; missed then right: 1.33 days, due after 1;
    # the new one: 4 days, due after 1
    assert what(page) == "Objectives in this check: 2 due again."
    page = opened(phone, day=3)
    assert what(page) == "Objectives in this check: 6 due again."


def test_a_missed_question_can_be_asked_again_the_same_day(phone: Visit) -> None:
    page = opened(phone)
    begin(page)
    finish(page, ZERO)
    page.get_by_role("button", name="Go on with the next ones").tap()
    page.locator(".sitting .question").wait_for()
    assert page.locator(".sitting-why").inner_text() == "Missed last time."
    assert finish(page) == [ZERO]
    assert (
        "That is all for today. Next due tomorrow: 5 objectives."
        in page.locator(".check-next").inner_text()
    )
    assert page.get_by_role("button", name="Go on with the next ones").is_hidden()


def test_when_nothing_is_due_it_says_when_and_still_offers_ten(phone: Visit) -> None:
    page = opened(phone)
    begin(page)
    finish(page)
    page = opened(phone)
    assert "Nothing is due, and today's new objectives are done." in what(page)
    assert "Next due tomorrow: 5 objectives." in what(page)
    page.get_by_role("button", name="Give me ten anyway").tap()
    page.locator(".sitting .question").wait_for()
    assert "Last asked today." in page.locator(".sitting-why").inner_text() or (
        page.locator(".sitting-why").inner_text() == "New to you."
    )


def test_a_numeric_question_has_new_numbers_each_time(phone: Visit) -> None:
    page = opened(phone)
    seen = []
    for day in (0, 1, 3):
        page = opened(phone, day)
        begin(page)
        while page.locator(".sitting").is_visible():
            if name_of(current(page)) == "dry_from_wet/target":
                seen.append(current(page).locator(".given").inner_text())
            answer(page)
            go_on(page)
    assert len(seen) == 3
    assert len(set(seen)) == 3


def test_stopping_early_keeps_what_was_answered(phone: Visit) -> None:
    page = opened(phone)
    begin(page)
    answer(page)
    go_on(page)
    page.get_by_role("button", name="Stop here").tap()
    assert "1 of 1 right at the first try." in page.locator(".summary").inner_text()
    assert page.evaluate("Guidecoat.progress.met().length") == 1


def test_stopping_before_any_answer_says_so(phone: Visit) -> None:
    page = opened(phone)
    begin(page)
    page.get_by_role("button", name="Stop here").tap()
    assert page.locator(".summary").inner_text() == "No question was answered."


def test_questions_that_cannot_be_loaded_are_reported(
    chromium: Browser, small_address: str
) -> None:
    context = chromium.new_context(service_workers="block")
    context.route(re.compile("/parts/|-questions"), lambda route: route.abort())
    page = Visit(context, small_address).open(TODAY)
    page.get_by_role("button", name="Understood").click()
    page.get_by_role("button", name="Start the check").click()
    page.get_by_text("The questions could not be loaded.").wait_for()
    context.close()


def test_from_a_memory_stick_a_whole_check_can_be_done(
    chromium: Browser, small_folder: Path
) -> None:
    context = chromium.new_context()
    visit = Visit(context, small_folder.as_uri())
    page = visit.open(TODAY)
    begin(page)
    assert len(finish(page)) == 5
    assert "5 of 5 right" in page.locator(".summary").inner_text()
    assert visit.complaints == []
    context.close()


@pytest.fixture
def real(chromium: Browser, site_address: str) -> Iterator[Visit]:
    """Visit the real course on a phone without its offline worker, so that requests are seen."""
    context = chromium.new_context(viewport={"width": 360, "height": 780}, service_workers="block")
    yield Visit(context, site_address)
    context.close()


def test_only_the_parts_of_the_objectives_asked_are_loaded(real: Visit) -> None:
    page = real.open(TODAY)
    begin(page)
    parts = [url for url in real.requests if "/parts/" in url]
    assert len(parts) == 5
    first, _, asked = page.locator(".sitting-name").inner_text().rpartition(" of ")
    assert first == "Question 1"
    # the real bank decides how many: each of the five asked at least once, ten at the most
    assert 5 <= int(asked) <= 10


def test_the_home_page_says_how_much_is_due(phone: Visit) -> None:
    page = opened(phone)
    begin(page)
    finish(page)
    home = phone.open("index.html").locator(".home-today")
    assert "About ten mixed questions" in home.inner_text()
    on_day(page, 1)
    home = phone.open("index.html").locator(".home-today")
    assert "5 objectives are due today." in home.inner_text()
    home.get_by_role("link", name="Today's check").tap()
    page.wait_for_url(f"**/{TODAY}")


def test_without_script_the_page_leads_to_the_lists(chromium: Browser, small_address: str) -> None:
    context = chromium.new_context(java_script_enabled=False)
    page = Visit(context, small_address).open(TODAY)
    assert page.locator("button:visible").count() == 0
    assert page.get_by_role("link", name="choose a module").is_visible()
    context.close()
