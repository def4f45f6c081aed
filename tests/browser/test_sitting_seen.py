"""The page to answer on a screen can be used by everybody: keys only, narrow, large, still."""

from collections.abc import Iterator
from pathlib import Path

import pytest
from playwright.sync_api import Page

from generator.marking import Chosen, Matched, Ordered, Typed
from tests.browser.on_screen_counter import ANSWERS, PERSON, Open, write_page
from tests.browser.on_screen_counter import complaints as complaints
from tests.browser.on_screen_counter import counter as counter
from tests.browser.on_screen_steps import (
    begin,
    give,
    go_on,
    hand_in,
    saved_answers,
    shown,
)
from tests.browser.test_every_page import TARGETS, violations
from tests.website.on_screen_forms import small_form


def test_it_can_be_done_with_the_keyboard_alone(counter: Open) -> None:
    page = counter(small_form())
    press = page.keyboard.press

    def tab_to(selector: str) -> None:
        for _ in range(60):
            if page.evaluate("s => document.activeElement.matches(s)", selector):
                return
            press("Tab")
        raise AssertionError(f"the focus never reached {selector}")

    def next_question() -> None:
        tab_to(".form-next")
        press("Enter")

    tab_to(".code-input")
    page.keyboard.type("Apprentice 03")
    press("Enter")
    assert page.evaluate("document.activeElement.id") == "question-1-name"
    tab_to(".question:not([hidden]) input")
    press("Space")
    press("ArrowDown")
    next_question()
    for _ in range(2):
        press("Tab")
        press("Space")
    next_question()
    tab_to(".question:not([hidden]) .number")
    page.keyboard.type("117")
    press("Enter")
    next_question()
    tab_to('li[data-letter="B"] [data-by="-1"]')
    press("Enter")
    assert page.evaluate("document.activeElement.closest('li').dataset.letter") == "B"
    next_question()
    tab_to(".question:not([hidden]) select")
    press("b")
    next_question()
    tab_to(".question:not([hidden]) textarea")
    page.keyboard.type("Solvent")
    next_question()
    next_question()
    assert page.evaluate("document.activeElement.id") == "review-name"
    tab_to(".hand-in")
    with page.expect_download() as saved:
        press("Enter")
    found = saved_answers(Path(saved.value.path()))
    assert found.responses == {
        1: Chosen(("B",)),
        2: Chosen(("A", "B")),
        3: Typed("117"),
        4: Ordered(tuple("BACD")),
        5: Matched((("1", "B"),)),
    }
    assert found.written == {6: "Solvent"}
    assert page.evaluate("document.activeElement.id") == "done-name"


def each_step(page: Page) -> Iterator[str]:
    """Lead through the page and stop at each step with something to look at."""
    yield "start"
    page.get_by_role("button", name="Start").click()
    yield "no code"
    begin(page, "Apprentice 03")
    for number in range(1, 8):
        yield f"question {number}"
        give(page, Typed("1,170") if number == 3 else ANSWERS[number])
        if number == 3:
            shown(page).locator(".feedback", has_text="two ways").wait_for()
        yield f"question {number} answered"
        go_on(page)
    yield "look over"
    hand_in(page)
    yield "handed in"
    page.get_by_role("button", name="Next person").click()
    yield "next person"


@pytest.mark.parametrize("scheme", ["light", "dark"])
@pytest.mark.parametrize("width", [320, 1280])
def test_axe_finds_nothing_and_nothing_scrolls_sideways(
    counter: Open, scheme: str, width: int
) -> None:
    size = {"width": width, "height": 780}
    page = counter(small_form(), viewport=size, color_scheme=scheme, bypass_csp=True)
    for step in each_step(page):
        assert violations(page) == [], step
        assert page.evaluate("document.documentElement.scrollWidth - innerWidth") <= 0, step
        assert page.evaluate(TARGETS) == [], step


def test_text_spacing_does_not_break_the_narrow_page(counter: Open) -> None:
    """WCAG 2.2 success criterion 1.4.12."""
    page = counter(small_form(), viewport={"width": 320, "height": 640})
    for step in each_step(page):
        page.evaluate(
            "document.querySelectorAll('*').forEach(part => { part.style.lineHeight = '1.5';"
            " part.style.letterSpacing = '.12em'; part.style.wordSpacing = '.16em'; })"
        )
        assert page.evaluate("document.documentElement.scrollWidth - innerWidth") <= 0, step


def test_with_less_motion_nothing_moves(counter: Open) -> None:
    page = counter(reduced_motion="reduce")
    moving = page.evaluate(
        "[...document.querySelectorAll('*')].filter(part => { const look = getComputedStyle(part);"
        " return look.animationName !== 'none' || look.transitionDuration !== '0s'; }).length"
    )
    assert moving == 0


def test_without_script_it_says_what_to_do(counter: Open, tmp_path: Path) -> None:
    browser = counter().context.browser
    assert browser is not None
    context = browser.new_context(java_script_enabled=False)
    plain = context.new_page()
    plain.goto(write_page(tmp_path, small_form(PERSON)))
    assert "ask your instructor for a paper" in plain.locator("noscript").inner_text()
    assert plain.locator("button:visible").count() == 0
    context.close()
