"""The course in one file opens by a double click and does all that the site does."""

from collections.abc import Iterator
from pathlib import Path
from shutil import copy

import pytest
from playwright.sync_api import Browser, Page

from generator.website.offline.single_file import ONE_FILE
from tests.browser.check_steps import begin
from tests.browser.conftest import Visit
from tests.browser.test_every_page import violations
from tests.browser.test_search import look_for, titles


@pytest.fixture(scope="session")
def stick(real_project: Path, tmp_path_factory: pytest.TempPathFactory) -> Path:
    """Return a folder that holds the one file of the real course alone."""
    folder = tmp_path_factory.mktemp("stick")
    copy(real_project / "site" / ONE_FILE, folder)
    return folder


@pytest.fixture
def visit(chromium: Browser, stick: Path) -> Iterator[Visit]:
    """Open the one file on a phone."""
    context = chromium.new_context(viewport={"width": 360, "height": 780})
    found = Visit(context, stick.as_uri())
    found.open(ONE_FILE)
    yield found
    assert found.complaints == []
    assert {url.partition("#")[0] for url in found.requests if not url.startswith("blob:")} == {
        (stick / ONE_FILE).as_uri()
    }
    context.close()


def follow(page: Page, name: str) -> None:
    """Press a link of the bar."""
    page.get_by_role("navigation", name="Course").get_by_role("link", name=name).click()


def turn_to(page: Page, name: str) -> None:
    """Press a link of the bar and wait until the script has turned to its page."""
    follow(page, name)
    page.locator(".bar [aria-current=page]", has_text=name).wait_for()


def test_it_opens_at_the_course_home_in_the_right_type(visit: Visit) -> None:
    page = visit.page
    assert page.locator(".one-page").count() == 1
    assert page.locator("h1").inner_text() == "Guidecoat"
    faces = page.evaluate(
        "document.fonts.ready.then(() => [...document.fonts].filter(f => f.status === 'loaded')"
        ".map(f => f.family))"
    )
    assert {'"Hepta Slab"', "Hepta Slab"} & set(faces)


def test_a_link_shows_its_page_alone_and_back_returns(visit: Visit) -> None:
    page = visit.page
    turn_to(page, "Lessons")
    assert page.locator("h1").all_inner_texts() == ["Lessons"]
    assert page.title() == "Lessons · Guidecoat"
    current = page.locator(".bar [aria-current=page]")
    assert current.all_inner_texts() == ["Lessons"]
    assert page.evaluate("document.activeElement.id") == "main"
    page.locator(".outline h2 a").last.click()
    assert page.locator(".over").inner_text().startswith("Lesson")
    page.go_back()
    assert page.locator("h1").all_inner_texts() == ["Lessons"]


def test_a_link_to_a_place_goes_to_that_place(visit: Visit) -> None:
    page = visit.page
    page.evaluate("location.hash = '#glossary--pot_life'")
    page.locator("#glossary--pot_life").wait_for()
    top = page.locator("#glossary--pot_life").bounding_box()
    assert top is not None
    assert -5 < top["y"] < 200


def test_a_question_is_marked_with_its_reason_and_kept(visit: Visit) -> None:
    page = visit.page
    page.evaluate("location.hash = '#film_build-questions'")
    question = page.locator(".question.kind-choice:visible").first
    question.locator(".option").first.click()
    question.get_by_role("button", name="Check my answer").click()
    assert question.locator(".feedback .why").inner_text() != ""
    tally = page.locator(".strip-says [data-tally]").inner_text()
    assert tally.endswith("blocked clean")
    page.reload()
    page.evaluate("location.hash = '#progress'")
    page.get_by_role("heading", name="Your panel").wait_for()
    states = page.locator(".state").all_inner_texts()
    assert any("right" in state or "to do again" in state or "clean" in state for state in states)


def test_the_daily_check_asks_from_the_pages_inside(visit: Visit) -> None:
    page = visit.page
    turn_to(page, "Today")
    begin(page)
    seen = set()
    while page.locator(".sitting").is_visible():
        question = page.locator(".sitting .question")
        seen.add(question.get_attribute("data-item"))
        page.locator(".sitting-stop").click()
    assert len(seen) == 1
    assert page.locator(".check-end").is_visible()


def test_search_finds_and_leads_to_the_place(visit: Visit) -> None:
    page = visit.page
    turn_to(page, "Search")
    look_for(page, "boil")
    assert "Solvent popping" in titles(page)
    page.get_by_role("link", name="Solvent popping").first.click()
    page.locator("#faults--solvent_popping").wait_for()
    page.go_back()
    assert page.get_by_label("Look for").input_value() == "boil"


def test_the_skip_link_leads_to_the_text_and_not_to_another_page(visit: Visit) -> None:
    page = visit.page
    turn_to(page, "Cautions")
    page.evaluate("document.querySelector('.skip').focus()")
    page.keyboard.press("Enter")
    page.wait_for_function("() => document.activeElement.id === 'main'")
    assert page.locator("h1").all_inner_texts() == ["Cautions"]


def test_without_script_it_is_one_long_document(chromium: Browser, stick: Path) -> None:
    context = chromium.new_context(java_script_enabled=False)
    page = Visit(context, stick.as_uri()).open(ONE_FILE)
    assert page.locator(".one-page").count() > 20
    assert page.locator("button:visible").count() == 0
    follow(page, "Glossary")
    box = page.locator("#glossary h1").bounding_box()
    assert box is not None
    assert 0 <= box["y"] < 400
    question = page.locator("#mixing-questions .question").first
    question.locator("summary").click()
    assert question.locator(".reasons-body").inner_text() != ""
    context.close()


@pytest.mark.parametrize("scheme", ["light", "dark"])
def test_axe_finds_nothing(chromium: Browser, stick: Path, scheme: str) -> None:
    context = chromium.new_context(
        viewport={"width": 320, "height": 640}, color_scheme=scheme, bypass_csp=True
    )
    page = Visit(context, stick.as_uri()).open(ONE_FILE)
    for name in ("index", "film_build", "film_build-questions", "today", "search", "progress"):
        page.evaluate("name => { location.hash = name; }", name)
        page.locator(f".one-page#{name}").wait_for()
        assert violations(page) == [], name
        assert page.evaluate("document.documentElement.scrollWidth - innerWidth") <= 0, name
    context.close()
