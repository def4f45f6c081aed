"""Steps of a check as a learner takes them, for the tests of checks."""

from datetime import UTC, datetime, timedelta

from playwright.sync_api import Locator, Page

FIRST_DAY = datetime(2027, 3, 1, 12, tzinfo=UTC)
# answers that are right in the small course, by item
NUMBERS = {"dry_from_wet/target": ("117", "100", "75"), "order_material/with_unit": ("3 mil",)}
RIGHT_OPTIONS = {
    "read_gauges/zero": ("Check it on a bare plate",),
    "coats/thin_edges": ("More thinner", "A gun held too far", "A narrower overlap"),
}


def on_day(page: Page, number: int) -> None:
    """Set the clock of the page to noon of a day; day 0 is the first one."""
    page.clock.set_fixed_time(FIRST_DAY + timedelta(days=number))


def begin(page: Page) -> None:
    """Open the check and start it."""
    if page.get_by_role("button", name="Understood").is_visible():
        page.get_by_role("button", name="Understood").click()
    page.get_by_role("button", name="Start the check").click()
    page.locator(".sitting .question").wait_for()


def current(page: Page) -> Locator:
    """Return the question that is on the screen."""
    return page.locator(".sitting .question")


def name_of(question: Locator) -> str:
    """Return the item's name without its module."""
    return (question.get_attribute("data-item") or "").partition("/")[2]


def fill(question: Locator, right: bool) -> None:
    """Return the right answer, or a wrong one, to a question of the small course."""
    name = name_of(question)
    if name in NUMBERS:
        shown = int(question.get_attribute("data-shown") or 0)
        question.locator(".number").fill(NUMBERS[name][shown] if right else "7 µm")
    elif name in RIGHT_OPTIONS:
        wrong = ("Warm it in your hand",) if name == "read_gauges/zero" else ("A slower pass",)
        for text in RIGHT_OPTIONS[name] if right else wrong:
            question.locator(".option", has_text=text).click()
    elif name == "convert_units/names":
        question.get_by_label("25.4 µm").select_option("B" if right else "C")
        question.get_by_label("1000 µm").select_option("A")
    elif right:
        question.get_by_role("button", name="Move up: Put on breathing protection").click()


def answer(page: Page, right: bool = True) -> str:
    """Answer the question on the screen, check it, and give its name."""
    question = current(page)
    fill(question, right)
    question.get_by_role("button", name="Check my answer").click()
    state = "right" if right else "wrong"
    assert question.locator(".feedback").get_attribute("data-state") == state
    return name_of(question)


def go_on(page: Page) -> None:
    """Go to the next question, or to the summary."""
    page.locator(".sitting-next").click()


def finish(page: Page, *wrong: str) -> list[str]:
    """Answer every question; those named are answered wrong. Gives the names in their order."""
    asked = []
    while page.locator(".sitting").is_visible():
        name = name_of(current(page))
        asked.append(answer(page, name not in wrong))
        go_on(page)
    return asked
