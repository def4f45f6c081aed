"""The course is usable without script and from a memory stick."""

from collections.abc import Iterator
from pathlib import Path

import pytest
from playwright.sync_api import Browser, BrowserContext

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
    assert questions.count() == 6
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
