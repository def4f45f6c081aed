"""A learner may say when it is needed; the waits are then cut so that all comes again before."""

from datetime import timedelta

from playwright.sync_api import Page

from tests.browser.check_steps import FIRST_DAY, begin, finish, on_day
from tests.browser.conftest import Visit


def give_date(page: Page, day: int) -> None:
    """Enter a day, counted from the first one, and keep it."""
    page.get_by_label("The day").fill((FIRST_DAY + timedelta(days=day)).date().isoformat())
    page.get_by_role("button", name="Keep this day").tap()


def opened(phone: Visit, day: int = 0) -> Page:
    """Open the panel page on a day."""
    on_day(phone.page, day)
    return phone.open("progress.html")


def need_kept(page: Page) -> int | None:
    """Read how many days from today the kept date is."""
    found: int | None = page.evaluate(
        "Guidecoat.progress.need() === null ? null : Guidecoat.progress.need() - Guidecoat.today()"
    )
    return found


def due(page: Page) -> int:
    """Count what is due on this page's day."""
    found: int = page.evaluate(
        "Guidecoat.progress.met().filter(name => Guidecoat.progress.isDue(name)).length"
    )
    return found


def test_a_date_is_kept_shown_again_and_can_be_taken_back(phone: Visit) -> None:
    page = opened(phone)
    give_date(page, 30)
    assert (
        "You will see all of it again before that day."
        in page.locator(".progress-note").inner_text()
    )
    page.reload()
    assert page.get_by_label("The day").input_value() == "2027-03-31"
    assert need_kept(page) == 30
    page.get_by_role("button", name="No date").tap()
    assert page.get_by_label("The day").input_value() == ""
    assert need_kept(page) is None


def test_a_day_that_is_over_or_today_is_refused(phone: Visit) -> None:
    page = opened(phone)
    for day in (-1, 0):
        give_date(page, day)
        assert "still to come" in page.locator(".progress-note").inner_text()
        assert need_kept(page) is None


def test_a_date_brings_the_next_check_forward_and_taking_it_back_undoes_it(phone: Visit) -> None:
    for day in (0, 1, 3, 7):
        on_day(phone.page, day)
        page = phone.open("today.html")
        begin(page)
        finish(page)
    # right on day 0, 1, 3 and 7: half-life 32 days, due 8 days after day 7; the one that was new
    # on day 1: 16 days, due 4 days after day 7
    page = opened(phone, day=8)
    assert due(page) == 0
    give_date(page, 12)
    # a fifth of the 5 days from day 7 to day 12 is one day
    assert due(page) == 6
    page.get_by_role("button", name="No date").tap()
    assert due(page) == 0


def test_the_date_travels_with_the_saved_file_and_goes_with_the_panel(phone: Visit) -> None:
    page = opened(phone)
    give_date(page, 30)
    text = page.evaluate("Guidecoat.progress.asText()")
    page.get_by_role("button", name="Delete my panel").tap()
    page.get_by_role("button", name="Yes, delete it").tap()
    assert page.get_by_label("The day").input_value() == ""
    assert page.evaluate("text => Guidecoat.progress.load(text)", text) is True
    assert need_kept(page) == 30
