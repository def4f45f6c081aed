"""Search finds lessons, terms, procedures and faults on the device itself, and says how many."""

from collections.abc import Iterator
from pathlib import Path

import pytest
from playwright.sync_api import Browser, Page

from tests.browser.conftest import Visit
from tests.browser.test_every_page import violations


@pytest.fixture
def course(chromium: Browser, site_address: str) -> Iterator[Visit]:
    """Visit the real course on a phone."""
    context = chromium.new_context(viewport={"width": 360, "height": 780})
    visit = Visit(context, site_address)
    yield visit
    context.close()
    assert visit.complaints == []
    assert visit.report_unread_files() == []


def look_for(page: Page, text: str) -> str:
    """Type a text, press Enter, and give what the live region says."""
    page.get_by_label("Look for").fill(text)
    page.keyboard.press("Enter")
    return page.locator(".found-count[role=status]").inner_text()


def titles(page: Page) -> list[str]:
    """Return the headings of what was found."""
    return page.locator(".found h2").all_inner_texts()


def test_a_fault_is_found_by_its_other_name(phone: Visit) -> None:
    page = phone.open("search.html")
    assert look_for(page, "boil") == "1 place has “boil”."
    assert titles(page) == ["Solvent popping"]
    assert "Fault · Film build" in page.locator(".found-kind").inner_text()


@pytest.mark.parametrize(
    ("typed", "first"),
    [
        ("solvent pop", "Solvent popping"),
        ("comb gauges", "Check a wet film with a comb"),
        ("trap", "Trapped solvent"),
        ("SOLVENTS TRAPPED", "Trapped solvent"),
    ],
)
def test_words_are_found_by_their_beginning_and_in_any_form(
    phone: Visit, typed: str, first: str
) -> None:
    page = phone.open("search.html")
    look_for(page, typed)
    assert first in titles(page)


def test_a_slip_of_the_thumb_is_named_and_mended(phone: Visit) -> None:
    page = phone.open("search.html")
    told = look_for(page, "poping solvemt")
    assert "No page has “solvemt”; showing “solvent” instead." in told
    assert "Solvent popping" in titles(page)


def test_words_run_together_or_split_are_found(course: Visit) -> None:
    page = course.open("search.html")
    look_for(page, "fish eye")
    assert "Fisheye" in titles(page)
    look_for(page, "spraygun")
    assert len(titles(page)) > 3


def test_what_stands_nowhere_is_said_with_a_way_on(phone: Visit) -> None:
    page = phone.open("search.html")
    told = look_for(page, "zzzzzz")
    assert told == "Nothing here has “zzzzzz”. Try one word of it, or look in the glossary."
    assert titles(page) == []


def test_where_no_place_has_all_words_the_nearest_are_shown_and_it_is_said(phone: Visit) -> None:
    page = phone.open("search.html")
    told = look_for(page, "popping zebra")
    assert told.startswith("No place has all of “popping zebra”.")
    assert "Solvent popping" in titles(page)


def test_search_is_done_by_keyboard_and_back_brings_the_list_again(phone: Visit) -> None:
    page = phone.open("search.html")
    page.get_by_label("Look for").focus()
    page.keyboard.type("comb")
    page.locator(".found").first.wait_for()
    page.keyboard.press("Tab")
    page.keyboard.press("Tab")
    first = titles(page)[0]
    assert page.evaluate("document.activeElement.textContent") == first
    page.keyboard.press("Enter")
    page.wait_for_url("**/procedures.html#wet_check")
    page.go_back()
    assert page.get_by_label("Look for").input_value() == "comb"
    assert titles(page)[0] == first


def test_every_address_of_the_list_exists(course: Visit, site_folder: Path) -> None:
    page = course.open("search.html")
    addresses = page.evaluate("guidecoatSearchList.entries.map(entry => entry[2])")
    assert len(addresses) > 200
    texts = {path.name: path.read_text("utf-8") for path in site_folder.glob("*.html")}
    lost = [
        address
        for address in addresses
        for file, _, place in [address.partition("#")]
        if file not in texts or (place and f'id="{place}"' not in texts[file])
    ]
    assert lost == []


def test_a_long_list_is_opened_on_demand_and_the_focus_goes_on_in_it(course: Visit) -> None:
    page = course.open("search.html")
    look_for(page, "paint")
    shown = len(titles(page))
    page.get_by_role("button", name="Show all").click()
    assert len(titles(page)) > shown
    assert page.evaluate("document.activeElement.textContent") == titles(page)[shown]


def test_markup_that_is_typed_stays_text(phone: Visit) -> None:
    page = phone.open("search.html")
    told = look_for(page, "<img src=x onerror=alert(1)>")
    assert "<img" in told
    assert page.locator("main img").count() == 0


def test_without_script_search_points_to_the_lists(chromium: Browser, small_address: str) -> None:
    context = chromium.new_context(java_script_enabled=False)
    page = Visit(context, small_address).open("search.html")
    assert page.locator("form:visible, button:visible").count() == 0
    assert "Search needs script" in page.locator("main").inner_text()
    page.get_by_role("main").get_by_role("link", name="Glossary").click()
    assert page.url.endswith("glossary.html")
    context.close()


def test_search_works_from_a_memory_stick(chromium: Browser, small_folder: Path) -> None:
    context = chromium.new_context()
    visit = Visit(context, small_folder.as_uri())
    page = visit.open("search.html")
    look_for(page, "popping")
    assert "Solvent popping" in titles(page)
    assert visit.complaints == []
    context.close()


@pytest.mark.parametrize("scheme", ["light", "dark"])
def test_axe_finds_nothing_in_what_was_found(
    chromium: Browser, site_address: str, scheme: str
) -> None:
    context = chromium.new_context(
        viewport={"width": 320, "height": 640}, color_scheme=scheme, bypass_csp=True
    )
    page = Visit(context, site_address).open("search.html")
    assert violations(page) == []
    look_for(page, "filler")
    assert violations(page) == []
    look_for(page, "zzzzzz")
    assert violations(page) == []
    assert page.evaluate("document.documentElement.scrollWidth - innerWidth") <= 0
    context.close()
