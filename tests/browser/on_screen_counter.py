"""The counter at which forms are answered on a screen: what is answered, and how pages open."""

from collections.abc import Callable, Iterator
from pathlib import Path
from typing import Any

import pytest
from playwright.sync_api import Browser, BrowserContext, Page

from generator.marking import Chosen, Matched, Ordered, Typed
from generator.website.exam.exam_page import sitting_page
from tests.browser.conftest import THEME
from tests.browser.on_screen_steps import (
    Answer,
)
from tests.website.on_screen_forms import small_form

PERSON = "Apprentice 07"
ANSWERS: dict[int, Answer] = {
    1: Chosen(("A",)),
    2: Chosen(("A", "C", "D")),
    3: Typed("0,117 mm"),
    4: Ordered(("B", "A", "D", "C")),
    5: Matched((("1", "B"), ("2", "C"))),
    6: "The skin closes.\nSolvent stays below.",
    7: Typed("3"),
}
HALF = {number: ANSWERS[number] for number in (1, 2, 3, 4)}
MINUTE = 60_000
Open = Callable[..., Page]


def write_page(folder: Path, form: dict[str, Any], name: str = "on-screen.html") -> str:
    (folder / name).write_bytes(sitting_page(form, fonts=THEME / "fonts_print"))
    return (folder / name).as_uri()


@pytest.fixture
def complaints() -> Iterator[list[str]]:
    """Collect what pages complain of; none may."""
    found: list[str] = []
    yield found
    assert found == []


@pytest.fixture
def counter(chromium: Browser, tmp_path: Path, complaints: list[str]) -> Iterator[Open]:
    """Return a way to open the page of a form from a stick; it may ask for nothing but itself."""
    contexts: list[BrowserContext] = []
    requests: list[str] = []
    addresses: list[str] = []

    def opened(form: dict[str, Any] | None = None, script: str = "", **options: Any) -> Page:
        size = {"width": 360, "height": 780}
        context = chromium.new_context(**{"viewport": size, **options})
        contexts.append(context)
        if script:
            context.add_init_script(script)
        page = context.new_page()
        page.on("request", lambda request: requests.append(request.url))
        page.on("console", lambda message: complaints.append(message.text))
        page.on("pageerror", lambda error: complaints.append(str(error)))
        addresses.append(write_page(tmp_path, form or small_form(PERSON)))
        page.goto(addresses[-1])
        page.locator("section:visible").first.wait_for()
        return page

    yield opened
    for context in contexts:
        context.close()
    assert {url for url in requests if not url.startswith(("data:", "blob:"))} <= set(addresses)


def responses_of(answers: dict[int, Answer]) -> dict[int, Any]:
    return {number: answer for number, answer in answers.items() if not isinstance(answer, str)}


def look_over(page: Page) -> None:
    page.locator("summary", has_text="All questions").click()
    page.get_by_role("button", name="Review and hand in").click()
