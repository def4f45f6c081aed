"""The course is usable without script, from a memory stick and without a network."""

from collections.abc import Iterator
from pathlib import Path

import pytest
from playwright.sync_api import Browser, BrowserContext, Error

from tests.browser.conftest import Visit


@pytest.fixture
def bare(chromium: Browser, small_address: str) -> Iterator[Visit]:
    """Visit the small course with script switched off."""
    context: BrowserContext = chromium.new_context(
        viewport={"width": 360, "height": 780}, java_script_enabled=False
    )
    yield Visit(context, small_address)
    context.close()


def test_without_script_every_question_opens_its_answer_and_reasons(bare: Visit) -> None:
    page = bare.open("film_build-questions.html")
    questions = page.locator(".question")
    assert questions.count() == 7
    for found in questions.all():
        found.locator("summary").click()
    words = page.locator("main").inner_text()
    for expected in (
        "Heat moves the reading; it proves nothing.",
        "A narrower overlap",
        "Accepted: 116 to 118 µm",
        "wet film = 70 µm ÷ 60 %",
        "Wiping takes the reading away.",
        "A mil is a thousandth of an inch",
        "The top closes first",
    ):
        assert expected in words


def test_without_script_no_dead_button_is_shown(bare: Visit) -> None:
    page = bare.open("film_build-questions.html")
    assert page.locator("button:visible").count() == 0
    assert "Marking needs script" in page.locator("main").inner_text()


def test_from_a_memory_stick_questions_are_marked_and_fonts_load(
    chromium: Browser, small_folder: Path
) -> None:
    context = chromium.new_context()
    visit = Visit(context, small_folder.as_uri())
    page = visit.open("film_build-questions.html")
    found = page.locator("#q-film_build-read_gauges-zero")
    found.locator(".option", has_text="Warm it in your hand").click()
    found.get_by_role("button", name="Check my answer").click()
    assert "Heat moves the reading" in found.locator(".feedback").inner_text()
    assert page.evaluate(
        "document.fonts.ready.then(() => document.fonts.check('700 1em \"Hepta Slab\"'))"
    )
    assert visit.complaints == []
    context.close()


def test_after_one_visit_every_page_opens_without_a_network(
    chromium: Browser, site_address: str
) -> None:
    context = chromium.new_context()
    page = Visit(context, site_address).open("index.html")
    page.evaluate("navigator.serviceWorker.ready.then(() => true)")
    page.wait_for_function("() => navigator.serviceWorker.controller !== null")
    context.set_offline(True)
    page.goto(f"{site_address}/mixing-questions.html")
    assert page.locator(".question:visible").count() > 0
    page.goto(f"{site_address}/")
    assert page.locator(".panel").count() > 0
    context.close()


def test_a_first_visit_without_a_network_fails_as_it_must(
    chromium: Browser, site_address: str
) -> None:
    context = chromium.new_context(offline=True)
    with pytest.raises(Error, match="ERR_INTERNET_DISCONNECTED"):
        Visit(context, site_address).open("index.html")
    context.close()
