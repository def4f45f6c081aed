"""The first picture has the right type and nothing moves after it, however slow the host."""

from pathlib import Path

from playwright.sync_api import Browser, Page

from tests.browser.gzip_server import served

SHIFT = """window.shift = 0;
new PerformanceObserver(list => list.getEntries().forEach(
  entry => { window.shift += entry.value; })).observe({type: 'layout-shift', buffered: true});"""
FAMILY = "getComputedStyle(document.querySelector('h1')).fontFamily"
LOADED = "[...document.fonts].filter(face => face.status === 'loaded').length"
ALL_FACES = 6


def opened(browser: Browser, address: str, slower: int = 1) -> Page:
    """Open a lesson as a first visit and watch for movement."""
    context = browser.new_context(viewport={"width": 360, "height": 780}, service_workers="block")
    page = context.new_page()
    page.add_init_script(SHIFT)
    context.new_cdp_session(page).send("Emulation.setCPUThrottlingRate", {"rate": slower})
    # the load of a page waits for its typefaces, and a reader does not
    page.goto(f"{address}/film_build.html", wait_until="commit")
    page.wait_for_function("() => performance.getEntriesByName('first-contentful-paint').length")
    return page


def test_the_first_picture_has_the_courses_own_type(chromium: Browser, small_address: str) -> None:
    page = opened(chromium, small_address)
    assert "Hepta Slab" in page.evaluate(FAMILY)
    assert page.evaluate(LOADED) == ALL_FACES
    page.wait_for_timeout(500)
    assert page.evaluate("window.shift") == 0
    page.context.close()


def test_type_that_is_a_little_late_is_waited_for(chromium: Browser, small_folder: Path) -> None:
    with served(small_folder, late=0.3) as address:
        page = opened(chromium, address)
        assert "Hepta Slab" in page.evaluate(FAMILY)
        page.wait_for_timeout(500)
        assert page.evaluate("window.shift") == 0
        page.context.close()


def test_type_that_is_very_late_is_left_for_the_next_page(
    chromium: Browser, small_folder: Path
) -> None:
    with served(small_folder, late=2) as address:
        page = opened(chromium, address)
        assert page.evaluate(LOADED) == 0, "the text is there before the type"
        page.wait_for_function(f"() => {LOADED} === {ALL_FACES}")
        assert "Hepta Slab" not in page.evaluate(FAMILY)
        page.wait_for_timeout(300)
        assert page.evaluate("window.shift") == 0
        page.context.close()


def test_a_reader_who_loads_a_page_again_is_back_where_it_was_left(
    chromium: Browser, small_folder: Path
) -> None:
    with served(small_folder, late=0.3) as address:
        page = opened(chromium, address, slower=4)
        page.evaluate("window.scrollTo(0, 700)")
        page.reload()
        page.wait_for_function("() => window.scrollY > 0")
        assert page.evaluate("window.scrollY") == 700
        page.goto(f"{address}/lessons.html")
        page.go_back()
        page.wait_for_function("() => window.scrollY > 0")
        assert page.evaluate("window.scrollY") == 700
        page.context.close()


def test_a_link_to_a_place_goes_there_although_the_type_comes_later(
    chromium: Browser, small_folder: Path
) -> None:
    with served(small_folder, late=0.3) as address:
        page = opened(chromium, address)
        page.goto(f"{address}/lessons.html")
        page.goto(f"{address}/film_build.html#fault")
        page.locator("#fault").wait_for()
        page.wait_for_timeout(300)
        box = page.locator("#fault").bounding_box()
        assert box is not None
        assert -5 <= box["y"] < 100
        page.context.close()
