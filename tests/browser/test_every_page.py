"""Every page of the real course holds the quality bars."""

from collections.abc import Iterator
from pathlib import Path
from typing import Any

import axe_playwright_python
import pytest
from playwright.sync_api import Browser, Page

from tests.browser.conftest import Visit
from tests.some import some

AXE = Path(axe_playwright_python.__file__).parent / "axe.min.js"
# one page of each template; the overflow and console tests take every page
TEMPLATES = (
    "index",
    "today",
    "look-back",
    "lessons",
    "film_build",
    "film_build-questions",
    "progress",
    "cautions",
    "glossary",
    "sources",
    "procedures",
    "faults",
    "tables",
    "relations",
)
RULES = "['wcag2a','wcag2aa','wcag21a','wcag21aa','wcag22aa','best-practice']"
VIOLATIONS = f"""async () => {{
  const found = await axe.run(document, {{
    runOnly: {{type: 'tag', values: {RULES}}}, resultTypes: ['violations'],
  }});
  return found.violations.map(v => v.id + ': ' + v.nodes.slice(0, 3).map(n => n.html).join(' | '));
}}"""
TARGETS = """() => Array.from(document.querySelectorAll('button, select, .option, .bar a, summary'))
  .filter(part => part.checkVisibility())
  .map(part => [part.textContent.trim().slice(0, 40), part.getBoundingClientRect()])
  .filter(([name, box]) => box.height < 47.5 || box.width < 44)
  .map(([name, box]) => `${name}: ${box.width} x ${box.height}`)"""


# keeping the whole real course for a page that is left at once costs more than the page
ALONE: dict[str, Any] = {"service_workers": "block"}


def visited(chromium: Browser, address: str, **options: Any) -> Iterator[Visit]:
    """Visit the real course and close the window afterwards."""
    context = chromium.new_context(**options)
    yield Visit(context, address)
    context.close()


@pytest.fixture(params=["light", "dark"])
def desk(request: pytest.FixtureRequest, chromium: Browser, site_address: str) -> Iterator[Visit]:
    """Visit on a wide screen in light and dark."""
    size = {"width": 1280, "height": 900}
    yield from visited(
        chromium, site_address, viewport=size, color_scheme=request.param, **ALONE, bypass_csp=True
    )


@pytest.fixture
def narrow(chromium: Browser, site_address: str) -> Iterator[Visit]:
    """Visit on the narrowest phone."""
    yield from visited(chromium, site_address, viewport={"width": 320, "height": 640})


def read_rules(page: Page) -> None:
    """Put the accessibility rules into a page that does not hold them yet."""
    if not page.evaluate("'axe' in window"):
        page.add_script_tag(path=AXE)


def violations(page: Page) -> list[str]:
    """Run the accessibility rules over a page with its folded parts open."""
    page.evaluate("document.querySelectorAll('details').forEach(part => { part.open = true; })")
    read_rules(page)
    found: list[str] = page.evaluate(VIOLATIONS)
    return found


@pytest.mark.parametrize("name", TEMPLATES)
def test_axe_finds_nothing(desk: Visit, name: str) -> None:
    assert violations(desk.open(f"{name}.html")) == []


def test_axe_finds_nothing_in_given_feedback(desk: Visit) -> None:
    page = desk.open("film_build-questions.html")
    for button in page.locator(".check:visible").all():
        button.click()
    for option in page.locator("fieldset.options:visible").all():
        option.locator(".option").first.click()
    for button in page.locator(".check:visible").all():
        button.click()
    assert violations(page) == []


@pytest.mark.parametrize("scheme", ["light", "dark"])
def test_axe_finds_nothing_in_any_kind_of_question(
    chromium: Browser, small_address: str, scheme: str
) -> None:
    size = {"width": 360, "height": 780}
    for visit in visited(
        chromium, small_address, viewport=size, color_scheme=scheme, bypass_csp=True
    ):
        page = visit.open("film_build-questions.html")
        assert violations(page) == []
        for button in some(page.locator(".check").all()):
            button.click()
        assert violations(page) == []


def test_no_page_scrolls_sideways_at_320(narrow: Visit, site_folder: Path) -> None:
    wide = []
    for path in sorted(site_folder.glob("*.html")):
        page = narrow.open(path.name)
        over = page.evaluate("document.documentElement.scrollWidth - window.innerWidth")
        if over > 0:
            wide.append(f"{path.name}: {over} px")
    assert wide == []


def test_no_page_complains_or_asks_another_host(narrow: Visit, site_folder: Path) -> None:
    names = sorted(path.name for path in site_folder.glob("*.html"))
    for name in names:
        narrow.open(name)
    assert len(names) >= len(TEMPLATES)
    assert narrow.complaints == []
    assert narrow.report_unread_files() == []


@pytest.mark.parametrize("name", ["index", "film_build", "film_build-questions"])
def test_controls_are_big_enough_for_a_gloved_thumb(narrow: Visit, name: str) -> None:
    assert narrow.open(f"{name}.html").evaluate(TARGETS) == []


def test_text_spacing_does_not_break_the_narrow_page(narrow: Visit) -> None:
    """WCAG 2.2 success criterion 1.4.12."""
    page = narrow.open("film_build-questions.html")
    # set through the object model, which the content policy allows a test to do
    page.evaluate(
        "document.querySelectorAll('*').forEach(part => { part.style.lineHeight = '1.5';"
        " part.style.letterSpacing = '.12em'; part.style.wordSpacing = '.16em'; })"
    )
    assert page.evaluate("document.documentElement.scrollWidth - window.innerWidth") <= 0


def test_one_question_of_an_objective_is_shown_at_a_time(narrow: Visit) -> None:
    page = narrow.open("film_build-questions.html")
    group = page.locator(".group", has=page.locator(".leaf")).first
    total = group.locator(".question").count()
    first = group.locator(".question:visible").get_attribute("id")
    assert group.locator(".leaf-place").inner_text() == f"1 of {total}"
    group.locator(".leaf-next").click()
    assert group.locator(".question:visible").count() == 1
    assert group.locator(".question:visible").get_attribute("id") != first
    group.locator(".leaf-before").click()
    group.locator(".leaf-before").click()
    assert group.locator(".leaf-place").inner_text() == f"{total} of {total}"


def test_a_link_to_a_question_brings_it_forward(narrow: Visit) -> None:
    page = narrow.open("film_build-questions.html")
    group = page.locator(".group", has=page.locator(".leaf")).first
    last = group.locator(".question").last.get_attribute("id")
    page = narrow.open(f"film_build-questions.html#{last}")
    page.reload()
    assert page.locator(f"#{last}").is_visible()
