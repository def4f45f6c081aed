"""A lesson prints plainly: black on white, no controls, with what was folded."""

import io
from collections.abc import Iterator

import pytest
from playwright.sync_api import Browser, Page
from pypdf import PdfReader

from tests.browser.conftest import Visit
from tests.browser.test_every_page import visited

COLOURS = """() => {
  const found = new Set();
  document.querySelectorAll('body, main, main *').forEach(part => {
    if (!part.checkVisibility()) { return; }
    const style = getComputedStyle(part);
    [style.color, style.backgroundColor, style.borderTopColor].forEach(colour => found.add(colour));
  });
  return [...found];
}"""


@pytest.fixture(params=["light", "dark"])
def lesson(request: pytest.FixtureRequest, chromium: Browser, small_address: str) -> Iterator[Page]:
    """Open a lesson on a screen in light and dark."""
    for visit in visited(chromium, small_address, color_scheme=request.param):
        yield visit.open("film_build.html")


def is_grey(colour: str) -> bool:
    """Say whether a computed colour has no hue."""
    numbers = colour[colour.index("(") + 1 : -1].replace(",", " ").split()
    return len(set(numbers[:3])) == 1


def test_a_lesson_has_a_button_that_opens_the_print_window(phone: Visit) -> None:
    page = phone.open("film_build.html")
    page.evaluate("window.print = () => { window.wasPrinted = true; }")
    page.get_by_role("button", name="Print this lesson").tap()
    assert page.evaluate("window.wasPrinted") is True


def test_on_paper_there_is_no_hue_and_no_control(lesson: Page) -> None:
    lesson.emulate_media(media="print")
    colours = lesson.evaluate(COLOURS)
    assert len(colours) > 2
    assert [colour for colour in colours if not is_grey(colour)] == []
    assert lesson.locator("button:visible, nav:visible, .skip:visible").count() == 0


def test_on_the_screen_there_is_a_hue(lesson: Page) -> None:
    assert [colour for colour in lesson.evaluate(COLOURS) if not is_grey(colour)] != []


def test_folded_reasons_are_printed_and_folded_again(lesson: Page) -> None:
    fold = lesson.locator(".why-order")
    reason = "Wet film gives off vapour."
    assert not fold.locator("ul").is_visible()
    text = " ".join(
        page.extract_text() for page in PdfReader(io.BytesIO(lesson.pdf(format="A4"))).pages
    )
    assert reason in " ".join(text.split())
    assert not fold.locator("ul").is_visible()


def test_the_answer_to_a_question_is_not_printed_unless_it_is_open(lesson: Page) -> None:
    text = " ".join(
        page.extract_text() for page in PdfReader(io.BytesIO(lesson.pdf(format="A4"))).pages
    )
    assert "Check it on a bare plate" in text
    assert "two points show it" not in text
