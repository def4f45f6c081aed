"""The course holds when a reader sets the text, the colours or the motion to need."""

from collections.abc import Iterator
from pathlib import Path
from typing import Any

import pytest
from playwright.sync_api import Browser, Page

from tests.browser.conftest import Visit
from tests.browser.test_every_page import ALONE, TEMPLATES, read_rules, violations, visited
from tests.some import some

NAMES = (*TEMPLATES, "search")
# text that its own box cuts off; what is meant for a screen reader alone is cut on purpose
CUT = """() => Array.from(document.querySelectorAll('main *, header *, footer *'))
  .filter(part => part.checkVisibility() && part.textContent.trim())
  .filter(part => !part.closest('.unseen, svg'))
  .filter(part => {
    const style = getComputedStyle(part);
    const wide = part.scrollWidth > part.clientWidth + 1 && style.overflowX === 'hidden';
    const shut = ['hidden', 'clip'].includes(style.overflowY);
    const tall = part.scrollHeight > part.clientHeight + 1 && shut;
    return part.clientWidth > 0 && (wide || tall);
  })
  .map(part => part.className + ': ' + part.textContent.trim().slice(0, 40))"""
SIDEWAYS = "document.documentElement.scrollWidth - window.innerWidth"
# success criterion 1.4.12, set through the object model, which the content policy allows
SPACED = """() => {
  document.querySelectorAll('body *').forEach(part => {
    part.style.setProperty('line-height', '1.5', 'important');
    part.style.setProperty('letter-spacing', '.12em', 'important');
    part.style.setProperty('word-spacing', '.16em', 'important');
  });
  document.querySelectorAll('p').forEach(
    part => part.style.setProperty('margin-bottom', '2em', 'important'));
}"""
LARGE = "document.documentElement.style.fontSize = '200%'"
TARGETS = """async () => {
  const found = await axe.run(document, {runOnly: {type: 'rule', values: ['target-size']}});
  const list = group => group.flatMap(rule => rule.nodes.map(node => node.html.slice(0, 120)));
  return [list(found.violations), list(found.passes).length];
}"""
EDGES = """() => Array.from(document.querySelectorAll('button, .option, input.number, select'))
  .filter(part => part.checkVisibility())
  .filter(part => {
    const style = getComputedStyle(part);
    return parseFloat(style.borderTopWidth) < 1 || style.borderTopStyle === 'none';
  }).map(part => part.outerHTML.slice(0, 80))"""


def open_folds(page: Page) -> None:
    """Open every folded part."""
    page.evaluate("document.querySelectorAll('details').forEach(part => { part.open = true; })")


@pytest.fixture
def narrow(chromium: Browser, site_address: str) -> Iterator[Visit]:
    """Visit on the narrowest phone, with room for the rules file."""
    size = {"width": 320, "height": 640}
    yield from visited(chromium, site_address, viewport=size, bypass_csp=True, **ALONE)


@pytest.fixture
def wide(chromium: Browser, site_address: str) -> Iterator[Visit]:
    """Visit on a desk screen."""
    size = {"width": 1280, "height": 900}
    yield from visited(chromium, site_address, viewport=size, **ALONE)


@pytest.mark.parametrize("name", NAMES)
def test_text_of_twice_the_size_is_whole_on_phone_and_desk(
    chromium: Browser, site_address: str, name: str
) -> None:
    """WCAG 2.2, 1.4.4; on the phone it is more than the criterion asks."""
    for width in (360, 1280):
        size = {"width": width, "height": 800}
        for visit in visited(chromium, site_address, viewport=size, **ALONE):
            page = visit.open(f"{name}.html")
            page.evaluate(LARGE)
            open_folds(page)
            assert page.evaluate(SIDEWAYS) <= 0, width
            assert page.evaluate(CUT) == [], width


@pytest.mark.parametrize("name", NAMES)
def test_spaced_text_is_whole_on_the_narrowest_phone(narrow: Visit, name: str) -> None:
    """WCAG 2.2, 1.4.10 and 1.4.12 together."""
    page = narrow.open(f"{name}.html")
    open_folds(page)
    page.evaluate(SPACED)
    assert page.evaluate(SIDEWAYS) <= 0
    assert page.evaluate(CUT) == []


def test_cut_text_would_be_found(narrow: Visit) -> None:
    page = narrow.open("glossary.html")
    page.evaluate(
        "Object.assign(document.querySelector('h1').style, {height: '8px', overflow: 'hidden'})"
    )
    assert page.evaluate(CUT) == [": Glossary"]


def test_every_target_has_room_for_a_finger(narrow: Visit, site_folder: Path) -> None:
    """WCAG 2.2, 2.5.8: 24 by 24 px or the space of it, links in a sentence apart."""
    for path in some(sorted(site_folder.glob("*.html"))):
        page = narrow.open(path.name)
        open_folds(page)
        read_rules(page)
        missed, held = page.evaluate(TARGETS)
        assert missed == [], path.name
        assert held > 5, path.name


@pytest.fixture
def forced(chromium: Browser, small_address: str) -> Iterator[Visit]:
    """Visit with the colours of the reader's system in force."""
    yield from visited(
        chromium,
        small_address,
        viewport={"width": 360, "height": 780},
        forced_colors="active",
        bypass_csp=True,
    )


def test_forced_colours_leave_edges_choices_and_verdicts_to_be_seen(forced: Visit) -> None:
    page = forced.open("film_build-questions.html")
    assert page.evaluate("matchMedia('(forced-colors: active)').matches")
    assert page.evaluate(EDGES) == []
    found = page.locator(".question.kind-choice").first
    outline = "part => getComputedStyle(part).outlineStyle"
    option = found.locator(".option").nth(1)
    assert option.evaluate(outline) == "none"
    option.click()
    assert option.evaluate(outline) == "solid"
    found.get_by_role("button", name="Check my answer").click()
    assert found.locator(".verdict").inner_text() == "Not this one."
    edge = "part => getComputedStyle(part).borderTopStyle"
    assert found.locator(".feedback").evaluate(edge) == "solid"
    assert page.locator(".caution").first.evaluate(edge) == "solid"
    assert violations(page) == []


def test_forced_colours_keep_the_panel_and_its_words(forced: Visit) -> None:
    page = forced.open("progress.html")
    adjust = "part => getComputedStyle(part).forcedColorAdjust"
    assert page.locator(".strip").first.evaluate(adjust) == "none"
    assert "not tried yet" in page.locator(".panel-list").first.inner_text()
    assert violations(page) == []


@pytest.mark.parametrize(("motion", "moves"), [("reduce", False), ("no-preference", True)])
def test_nothing_moves_for_a_reader_who_wants_no_motion(
    chromium: Browser, small_address: str, motion: Any, moves: bool
) -> None:
    for visit in visited(chromium, small_address, reduced_motion=motion):
        page = visit.open("film_build-questions.html")
        found = page.locator("#q-film_build-read_gauges-zero")
        found.locator(".option").first.click()
        found.get_by_role("button", name="Check my answer").click()
        assert page.evaluate("document.getAnimations().length > 0") is moves
        assert page.evaluate("getComputedStyle(document.documentElement).scrollBehavior") == "auto"


def test_every_page_says_its_language(wide: Visit, site_folder: Path) -> None:
    for path in some(sorted(site_folder.glob("*.html"))):
        page = wide.open(path.name)
        assert page.evaluate("document.documentElement.lang") == "en", path.name


def test_the_news_of_an_edition_never_covers_what_has_the_focus(wide: Visit) -> None:
    """WCAG 2.2, 2.4.11."""
    page = wide.open("lessons.html")
    page.set_viewport_size({"width": 360, "height": 780})
    page.evaluate(
        "() => { const box = document.createElement('div'); box.className = 'edition-box';"
        " box.innerHTML = '<p>There is a new edition of this course.</p><button>Use</button>';"
        " document.querySelector('.edition').appendChild(box);"
        " document.documentElement.classList.add('has-edition-box'); }"
    )
    in_the_text = 0
    for _ in range(30):
        page.keyboard.press("Tab")
        focused = page.evaluate(
            "() => { const part = document.activeElement; const box = part.getBoundingClientRect();"
            " const news = document.querySelector('.edition').getBoundingClientRect();"
            " return [Boolean(part.closest('main')), box.bottom <= news.top + 1]; }"
        )
        if focused[0]:
            in_the_text += 1
            assert focused[1]
    assert in_the_text > 5
