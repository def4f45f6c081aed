"""Ten mixed questions of one module, started from its question page."""

from collections.abc import Iterator

import pytest
from playwright.sync_api import Browser, Page

from tests.browser.check_steps import answer, current, finish, go_on, name_of
from tests.browser.conftest import Visit
from tests.browser.test_answering import QUESTIONS

REPEATED = """() => {
  const ids = Array.from(document.querySelectorAll('[id]')).map(part => part.id);
  return ids.filter((id, place) => ids.indexOf(id) !== place);
}"""
METHODS = """() => Object.fromEntries(
  Object.values(Guidecoat.parts).flat().map(question => [question.id, question.method]))"""


def begin(page: Page) -> None:
    """Start the check of the module."""
    page.get_by_role("button", name="Check the module").click()
    page.locator(".sitting .question").wait_for()


@pytest.fixture
def real(chromium: Browser, site_address: str) -> Iterator[Visit]:
    """Visit the real course on a phone."""
    context = chromium.new_context(viewport={"width": 360, "height": 780})
    visit = Visit(context, site_address)
    yield visit
    context.close()
    assert visit.complaints == []
    assert visit.report_unread_files() == []


def asked_of(page: Page) -> list[str]:
    """Walk through a check with whatever answer comes first; gives the items asked."""
    items = []
    while page.locator(".sitting").is_visible():
        question = current(page)
        items.append(question.get_attribute("data-item") or "")
        for part in question.locator(".number").all():
            part.fill("1")
        for part in question.locator("select").all():
            part.select_option(index=1)
        for part in question.locator(".option").all()[:1]:
            part.click()
        question.locator(".check").click()
        go_on(page)
    return items


@pytest.mark.parametrize("module", ["film_build", "primers"])
def test_ten_questions_over_all_objectives_and_no_two_neighbours_alike(
    real: Visit, module: str
) -> None:
    page = real.open(f"{module}-questions.html")
    objectives = page.evaluate("Guidecoat.partsIndex(document.querySelector('.module-check'))")
    begin(page)
    assert page.evaluate(REPEATED) == []
    methods = page.evaluate(METHODS)
    items = asked_of(page)
    assert len(items) == 10
    assert len(set(items)) == 10
    found = [methods[item] for item in items]
    assert all(a != b for a, b in zip(found, found[1:], strict=False))
    assert len(objectives["objectives"]) >= 8
    assert page.evaluate("Guidecoat.progress.met().length") == min(
        10, len(objectives["objectives"])
    )


def test_the_list_steps_aside_and_comes_back_with_what_was_answered(phone: Visit) -> None:
    page = phone.open(QUESTIONS)
    assert page.locator(".text .question").count() == 7
    begin(page)
    assert page.locator(".question").count() == 1
    asked = finish(page, "read_gauges/zero")
    assert sorted(asked) == [
        "coats/thin_edges",
        "convert_units/names",
        "dry_from_wet/target",
        "order_material/with_unit",
        "read_gauges/zero",
        "total_build/readings",
    ]
    assert "5 of 6 right at the first try." in page.locator(".summary").inner_text()
    page.get_by_role("button", name="Back to all questions").tap()
    assert page.locator(".text .question").count() == 7
    assert page.locator(".contents").count() == 1
    assert "5 of 7 blocked clean" in page.locator(".strip-says").inner_text()
    assert page.evaluate("document.activeElement.textContent").startswith("Check the module")
    assert page.evaluate(REPEATED) == []


def test_it_can_be_stopped_and_begun_again(phone: Visit) -> None:
    page = phone.open(QUESTIONS)
    for _ in range(2):
        begin(page)
        answer(page)
        page.get_by_role("button", name="Stop here").tap()
        page.get_by_role("button", name="Back to all questions").tap()
    assert page.locator(".text .question").count() == 7


def test_what_is_due_or_was_missed_is_asked_before_what_is_firm(phone: Visit) -> None:
    page = phone.open(QUESTIONS)
    begin(page)
    finish(page, "total_build/readings")
    page.get_by_role("button", name="Back to all questions").tap()
    begin(page)
    assert name_of(current(page)) == "total_build/readings"
    assert page.locator(".sitting-why").inner_text() == "Missed last time."
