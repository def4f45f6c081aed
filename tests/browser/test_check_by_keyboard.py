"""A whole check can be done with the keyboard alone, and every state of it is accessible."""

from collections.abc import Callable, Iterator

import pytest
from playwright.sync_api import Browser, Page

from tests.browser.check_steps import answer, begin, current, finish, go_on, name_of
from tests.browser.conftest import Visit
from tests.browser.test_every_page import TARGETS, violations

MOST_TABS = 60
ACTIVE = """selector => document.activeElement.matches(selector)"""


def tab_to(page: Page, selector: str) -> None:
    """Press the tabulator until the focus is on such an element."""
    for _ in range(MOST_TABS):
        if page.evaluate(ACTIVE, selector):
            return
        page.keyboard.press("Tab")
    raise AssertionError(f"the keyboard never reached {selector}")


def choose(page: Page) -> None:
    """Take an option with the space bar."""
    tab_to(page, ".sitting .option input")
    page.keyboard.press("Space")


def choose_several(page: Page) -> None:
    """Take three options of four, leaving out the third."""
    for letter in "ABD":
        tab_to(page, f'.sitting .option input[value="{letter}"]')
        page.keyboard.press("Space")


def write(page: Page) -> None:
    """Type a number with its unit."""
    tab_to(page, ".sitting .number")
    page.keyboard.type("117 µm")


def put_in_order(page: Page) -> None:
    """Move the second step up."""
    tab_to(page, '.sitting li[data-letter="B"] .move[data-by="-1"]')
    page.keyboard.press("Enter")


def pair_up(page: Page) -> None:
    """Choose in each list by its letter."""
    for number, letter in (("1", "B"), ("2", "A")):
        tab_to(page, f'.sitting .pair[data-number="{number}"] select')
        page.keyboard.press(letter)


KEYS: dict[str, Callable[[Page], None]] = {
    "choice": choose,
    "multiple_response": choose_several,
    "numeric": write,
    "order": put_in_order,
    "match": pair_up,
}


def test_a_whole_check_is_done_without_a_pointer(phone: Visit) -> None:
    page = phone.open("today.html")
    tab_to(page, ".first-run button")
    page.keyboard.press("Enter")
    assert page.evaluate(ACTIVE, ".check-start")
    page.keyboard.press("Enter")
    page.locator(".sitting .question").wait_for()
    kinds = set()
    for place in range(5):
        assert page.evaluate(ACTIVE, ".sitting-name")
        (kind,) = (k for k in KEYS if current(page).evaluate(f"q => q.matches('.kind-{k}')"))
        kinds.add(kind)
        KEYS[kind](page)
        tab_to(page, ".sitting .check")
        page.keyboard.press("Enter")
        assert page.evaluate(ACTIVE, ".sitting .feedback"), "the reason is skipped"
        tab_to(page, ".sitting-next")
        last = place == 4
        assert page.evaluate("document.activeElement.textContent") == (
            "See how it went" if last else "Next question"
        )
        page.keyboard.press("Enter")
    assert page.evaluate(ACTIVE, ".check-end h2")
    assert "5 of 5 right at the first try." in page.locator(".summary").inner_text()
    assert kinds == set(KEYS)


def test_enter_in_the_number_field_checks_and_does_not_run_on(phone: Visit) -> None:
    page = phone.open("today.html")
    begin(page)
    while name_of(current(page)) != "dry_from_wet/target":
        answer(page)
        go_on(page)
    tab_to(page, ".sitting .number")
    page.keyboard.type("117")
    page.keyboard.press("Enter")
    page.keyboard.press("Enter")
    assert current(page).locator(".verdict").inner_text() == "Right."
    assert name_of(current(page)) == "dry_from_wet/target"


@pytest.fixture(params=["light", "dark"])
def scheme(request: pytest.FixtureRequest, chromium: Browser, small_address: str) -> Iterator[Page]:
    """Open today's check in light and dark, with room for the rules file."""
    context = chromium.new_context(
        viewport={"width": 360, "height": 780}, color_scheme=request.param, bypass_csp=True
    )
    yield Visit(context, small_address).open("today.html")
    context.close()


def test_axe_finds_nothing_in_any_state_of_a_check(scheme: Page) -> None:
    assert violations(scheme) == []
    scheme.get_by_role("button", name="Understood").click()
    assert violations(scheme) == []
    begin(scheme)
    right = False
    while scheme.locator(".sitting").is_visible():
        assert violations(scheme) == []
        answer(scheme, right)
        assert violations(scheme) == []
        right = not right
        go_on(scheme)
    assert violations(scheme) == []


def test_axe_finds_nothing_in_a_list_of_mistakes_with_one_tried_again(scheme: Page) -> None:
    begin(scheme)
    finish(scheme, "read_gauges/zero", "coats/thin_edges", "total_build/readings")
    scheme.goto(scheme.url.replace("today", "look-back"))
    assert scheme.locator(".mistake").count() == 3
    assert violations(scheme) == []
    scheme.get_by_role("button", name="Try again").first.click()
    scheme.locator(".mistake .question").wait_for()
    assert violations(scheme) == []


def test_controls_of_a_check_are_big_enough_and_nothing_scrolls_sideways(phone: Visit) -> None:
    page = phone.page
    page.set_viewport_size({"width": 320, "height": 640})
    page = phone.open("today.html")
    begin(page)
    while page.locator(".sitting").is_visible():
        answer(page, right=False)
        assert page.evaluate(TARGETS) == []
        assert page.evaluate("document.documentElement.scrollWidth - window.innerWidth") <= 0
        go_on(page)
    assert page.evaluate(TARGETS) == []
