"""After one visit the course works with its server stopped, and a new edition comes when asked."""

import json
from collections.abc import Iterator
from contextlib import ExitStack
from dataclasses import replace
from pathlib import Path

import pytest
from playwright.sync_api import Browser, BrowserContext, Page

from generator.website.context.course import Course
from tests.browser.check_steps import answer, begin, finish, go_on
from tests.browser.conftest import write_site
from tests.browser.gzip_server import served
from tests.website.small_course import small_course

KEPT = "Kept on this device: the course opens without a network."
NEWS = "There is a new edition of this course."
CACHES = "caches.keys()"
TAKEN = """() => Promise.all([caches.keys(), navigator.serviceWorker.getRegistration()])
  .then(([names, found]) => names.length === 1 && !found.waiting && !found.installing)"""


class Shop:
    """A course on a server that can be changed and stopped, and a phone that visits it."""

    def __init__(self, browser: Browser, folder: Path) -> None:
        self.folder = folder
        self.asked: list[str] = []
        self.server = ExitStack()
        self.publish(small_course())
        self.address = self.server.enter_context(served(folder, self.asked))
        self.context: BrowserContext = browser.new_context(
            viewport={"width": 360, "height": 780}, has_touch=True
        )
        self.page: Page = self.context.new_page()
        self.page.set_default_timeout(10_000)

    def publish(self, course: Course) -> None:
        """Put a course where the server takes it from."""
        write_site(course, self.folder)

    def open(self, name: str) -> Page:
        """Open a page."""
        self.page.goto(f"{self.address}/{name}")
        return self.page

    def first_visit(self) -> None:
        """Visit once and wait until the course says that it is kept."""
        self.open("index.html").get_by_text(KEPT).wait_for()
        self.page.wait_for_function("() => navigator.serviceWorker.controller !== null")

    def stop_the_server(self) -> None:
        """Take the server away."""
        self.server.close()


@pytest.fixture
def shop(chromium: Browser, tmp_path: Path) -> Iterator[Shop]:
    """Open a shop with the small course."""
    found = Shop(chromium, tmp_path / "site")
    yield found
    found.context.close()
    found.server.close()


def later_edition() -> Course:
    """Return the small course with other words in its lesson."""
    course = small_course()
    lesson = course.lessons["film_build"].replace("wears through", "wears off at the edges first")
    assert lesson != course.lessons["film_build"]
    return replace(course, lessons={"film_build": lesson})


def announced(page: Page) -> str:
    """Wait for the news of an edition and give what the live region says."""
    place = page.locator(".edition[role=status]")
    place.get_by_text(NEWS).wait_for()
    return place.inner_text()


def test_with_the_server_stopped_every_page_opens(shop: Shop) -> None:
    shop.first_visit()
    shop.stop_the_server()
    names = sorted(path.name for path in shop.folder.glob("*.html"))
    assert len(names) > 12
    for name in names:
        page = shop.open(name)
        assert page.locator("h1").count() == 1, name
        assert page.evaluate("getComputedStyle(document.body).marginTop") == "0px", name
    assert shop.open("").locator("h1").inner_text() == "Guidecoat"


def test_with_the_server_stopped_a_whole_check_is_done_and_kept(shop: Shop) -> None:
    shop.first_visit()
    shop.stop_the_server()
    page = shop.open("today.html")
    begin(page)
    asked = finish(page, "read_gauges/zero")
    assert len(asked) >= 5
    summary = page.locator(".summary").inner_text()
    assert f"{len(asked) - 1} of {len(asked)} right at the first try." in summary
    page = shop.open("look-back.html")
    assert page.locator(".mistake").count() == 1
    page.get_by_role("button", name="Try again").click()
    page.locator(".mistake .question").wait_for()


def test_with_the_server_stopped_search_finds_a_fault(shop: Shop) -> None:
    shop.first_visit()
    shop.stop_the_server()
    page = shop.open("search.html")
    page.get_by_label("Look for").fill("boil")
    page.get_by_role("button", name="Search").click()
    page.get_by_role("link", name="Solvent popping").click()
    assert page.url.endswith("faults.html#popping")


def test_an_address_that_was_never_there_leads_home_without_a_network(shop: Shop) -> None:
    shop.first_visit()
    shop.stop_the_server()
    assert shop.open("old/lesson.html").url == f"{shop.address}/index.html"


def test_a_new_edition_is_announced_and_waits_for_its_button(shop: Shop) -> None:
    shop.first_visit()
    shop.publish(later_edition())
    page = shop.open("film_build.html")
    assert "wears through" in page.locator("main").inner_text(), "the old edition stays whole"
    assert "Your panel stays as it is." in announced(page)
    page = shop.open("film_build.html")
    assert "wears through" in page.locator("main").inner_text(), "a reload alone changes nothing"
    announced(page)
    with page.expect_navigation():
        page.get_by_role("button", name="Use the new edition").tap()
    assert "wears off at the edges first" in page.locator("main").inner_text()
    page.wait_for_function(TAKEN)
    assert page.locator(".edition").inner_text() == ""


def test_progress_of_the_old_edition_is_there_in_the_new_one(shop: Shop) -> None:
    shop.first_visit()
    page = shop.open("today.html")
    begin(page)
    finish(page, "coats/thin_edges")
    before = page.evaluate("Object.entries(localStorage)")
    panel = shop.open("progress.html").locator("main").inner_text()
    assert "blocked clean" in panel
    shop.publish(later_edition())
    page = shop.open("progress.html")
    announced(page)
    with page.expect_navigation():
        page.get_by_role("button", name="Use the new edition").tap()
    page.wait_for_function(TAKEN)
    assert page.evaluate("Object.entries(localStorage)") == before
    assert page.locator("main").inner_text() == panel


def test_a_new_edition_does_not_disturb_a_check(shop: Shop) -> None:
    shop.first_visit()
    page = shop.open("today.html")
    begin(page)
    answer(page)
    given = page.locator(".sitting .feedback").inner_text()
    shop.publish(later_edition())
    page.evaluate("navigator.serviceWorker.ready.then(found => found.update())")
    announced(page)
    assert page.locator(".sitting .feedback").inner_text() == given
    page.get_by_role("button", name="Later").tap()
    assert page.locator(".edition").inner_text() == ""
    go_on(page)
    finish(page)
    assert "right at the first try." in page.locator(".summary").inner_text()


def test_a_new_edition_costs_only_what_changed_and_leaves_one_cache(shop: Shop) -> None:
    shop.first_visit()
    page = shop.page
    (old,) = page.evaluate(CACHES)
    shop.publish(later_edition())
    shop.asked.clear()
    page.evaluate("navigator.serviceWorker.ready.then(found => found.update())")
    announced(page)
    changed = {"/offline.js", "/film_build.html", "/search_list.js"}
    assert set(shop.asked) == changed
    with page.expect_navigation():
        page.get_by_role("button", name="Use the new edition").tap()
    page.wait_for_function(TAKEN)
    (new,) = page.evaluate(CACHES)
    assert new != old
    shop.stop_the_server()
    page = shop.open("film_build.html")
    assert "wears off at the edges first" in page.locator("main").inner_text()


def test_a_page_that_is_not_of_this_edition_is_never_kept(shop: Shop) -> None:
    """A sign-in screen of a guest network answers every address with its own page."""
    lesson = shop.folder / "film_build.html"
    whole = lesson.read_bytes()
    lesson.write_text("<!doctype html><title>Sign in</title><h1>Sign in</h1>", encoding="utf-8")
    page = shop.open("index.html")
    page.wait_for_function("() => caches.keys().then(names => names.length === 1)")
    page.wait_for_function(
        "() => navigator.serviceWorker.getRegistration().then(found => !found || !found.installing)"
    )
    assert page.get_by_text(KEPT).count() == 0
    kept = "caches.match(new URL('film_build.html', location.href)).then(Boolean)"
    assert page.evaluate(kept) is False
    lesson.write_bytes(whole)
    shop.first_visit()
    assert page.evaluate(kept) is True


def test_a_new_edition_that_cannot_be_stored_is_said(shop: Shop) -> None:
    """No room, or a network that went away in between: the device goes on with what it has."""
    shop.first_visit()
    shop.publish(later_edition())
    (shop.folder / "film_build.html").write_text("<title>Sign in</title>", encoding="utf-8")
    page = shop.page
    update = "navigator.serviceWorker.ready.then(found => found.update()).catch(() => {})"
    page.evaluate(update)
    page.get_by_text("A newer edition could not be stored on this device.").wait_for()
    assert page.get_by_text(KEPT).count() == 0
    assert page.locator(".edition").inner_text() == ""
    assert "wears through" in shop.open("film_build.html").locator("main").inner_text()


def test_another_course_on_the_same_host_keeps_its_pages(shop: Shop) -> None:
    page = shop.open("index.html")
    page.evaluate("caches.open('guidecoat http://127.0.0.1/other/ 0123')")
    shop.first_visit()
    assert len(page.evaluate(CACHES)) == 2


def test_the_course_can_be_put_on_the_first_screen(shop: Shop) -> None:
    """The browser's own reading of the manifest has no complaint."""
    page = shop.open("index.html")
    session = shop.context.new_cdp_session(page)
    found = session.send("Page.getAppManifest")
    assert found["errors"] == []
    assert found["url"] == f"{shop.address}/course.webmanifest"
    content = json.loads(found["data"])
    assert content["name"] == "Guidecoat training course"
    for icon in content["icons"]:
        size = page.evaluate(
            "path => new Promise((done, failed) => { const image = new Image();"
            " image.onload = () => done([image.naturalWidth, image.naturalHeight]);"
            " image.onerror = failed; image.src = path; })",
            icon["src"],
        )
        assert icon["sizes"] in ("any", f"{size[0]}x{size[1]}")
