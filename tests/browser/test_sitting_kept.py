"""What is answered on a screen is kept through reloads, killed browsers and damaged stores."""

import os
import signal
import subprocess
import time
from collections.abc import Callable
from concurrent.futures import ThreadPoolExecutor
from pathlib import Path

import pytest
from playwright.sync_api import Page, sync_playwright

from tests.browser.conftest import ARGUMENTS, CHROMIUM
from tests.browser.on_screen_counter import ANSWERS, HALF, PERSON, Open, responses_of, write_page
from tests.browser.on_screen_counter import complaints as complaints
from tests.browser.on_screen_counter import counter as counter
from tests.browser.on_screen_steps import (
    answer_all,
    begin,
    give,
    go_on,
    hand_in,
    order_of,
    saved_answers,
    shown,
)
from tests.website.on_screen_forms import FORM_ID, small_form


def test_a_reload_in_the_middle_takes_nothing(counter: Open) -> None:
    page = counter()
    begin(page)
    for number in (1, 2, 3, 4):
        give(page, HALF[number])
        go_on(page)
    page.reload()
    assert "still here" in page.locator(".form-said").inner_text()
    assert shown(page).get_attribute("data-number") == "5"
    assert page.locator(".how-far").inner_text() == "4 of 7 answered"
    page.locator(".form-before").click()
    assert order_of(shown(page)) == list("BADC")
    page.locator(".form-before").click()
    assert shown(page).locator(".number").input_value() == "0,117 mm"
    page.locator(".form-before").click()
    checked = shown(page).locator("input:checked")
    assert [box.get_attribute("value") for box in checked.all()] == ["A", "C", "D"]
    page.locator("summary", has_text="All questions").click()
    page.get_by_role("button", name="Review and hand in").click()
    assert hand_in(page)[1].responses == responses_of(HALF)


class Started:
    """A browser of its own on a profile, so that it can be killed like a flat battery does."""

    def __init__(self, profile: Path) -> None:
        (profile / "DevToolsActivePort").unlink(missing_ok=True)
        command = [CHROMIUM, *ARGUMENTS, "--headless=new", "--no-first-run"]
        self._process = subprocess.Popen(
            [*command, "--remote-debugging-port=0", f"--user-data-dir={profile}", "about:blank"],
            stdout=subprocess.DEVNULL,
            stderr=subprocess.DEVNULL,
            start_new_session=True,
        )
        self.port = self._port(profile / "DevToolsActivePort")

    def _port(self, path: Path) -> str:
        for _ in range(300):
            if path.is_file() and (lines := path.read_text("utf-8").split()):
                return lines[0]
            time.sleep(0.1)
        self.kill()
        raise AssertionError("the browser did not open its port")

    def kill(self) -> None:
        """Kill it and all it started, at once and without a word."""
        if self._process.poll() is None:
            os.killpg(self._process.pid, signal.SIGKILL)
            self._process.wait()


def visit_and_kill(profile: Path, address: str, steps: Callable[[Page], None]) -> None:
    browser = Started(profile)
    try:
        with sync_playwright() as playwright:
            found = playwright.chromium.connect_over_cdp(f"http://127.0.0.1:{browser.port}")
            page = found.contexts[0].new_page()
            page.goto(address)
            page.locator("section:visible").first.wait_for()
            steps(page)
            browser.kill()
    finally:
        browser.kill()


@pytest.mark.skipif(not CHROMIUM.is_file(), reason=f"no Chromium at {CHROMIUM}")
@pytest.mark.parametrize("seconds", [0.2, 1.5])
def test_a_killed_browser_takes_nothing(tmp_path: Path, seconds: float) -> None:
    """The store at hand writes seconds later in this browser; the answers must be on the disk."""
    address = write_page(tmp_path, small_form(PERSON))
    profile = tmp_path / "profile"
    profile.mkdir()

    def answer_half(page: Page) -> None:
        begin(page)
        for number in (1, 2, 3, 4):
            give(page, HALF[number])
            go_on(page)
        time.sleep(seconds)

    seen: list[str] = []

    def look(page: Page) -> None:
        seen.append(page.locator(".form-said").inner_text())
        seen.append(page.locator(".how-far").inner_text())
        seen.append(str(shown(page).get_attribute("data-number")))
        page.locator(".form-before").click()
        seen.append("".join(order_of(shown(page))))

    # one driver at a time: the session's own one lives in this thread too
    run_apart(lambda: visit_and_kill(profile, address, answer_half))
    run_apart(lambda: visit_and_kill(profile, address, look))
    assert "still here" in seen[0]
    assert seen[1:] == ["4 of 7 answered", "5", "BADC"]


def run_apart(action: Callable[[], None]) -> None:
    """Run something that drives a browser in a thread of its own."""
    with ThreadPoolExecutor(1) as pool:
        pool.submit(action).result()


REFUSES = """Object.defineProperty(window, 'indexedDB', { value: undefined });
Storage.prototype.setItem = function () { throw new Error('refused'); };"""
NO_BASE = "Object.defineProperty(window, 'indexedDB', { value: undefined });"
SLOW = "indexedDB.open = function () { return {}; };"


def test_where_nothing_can_be_kept_the_page_says_so_and_still_hands_in(counter: Open) -> None:
    page = counter(script=REFUSES)
    begin(page)
    assert "does not keep your answers" in page.locator(".store-note").inner_text()
    answer_all(page, ANSWERS)
    assert hand_in(page)[1].responses == responses_of(ANSWERS)


@pytest.mark.parametrize("script", ["delete Window.prototype.localStorage;", SLOW])
def test_one_store_alone_is_enough(counter: Open, script: str) -> None:
    page = counter(script=script)
    page.get_by_role("button", name="Start").wait_for()
    begin(page)
    give(page, ANSWERS[1])
    go_on(page)
    page.wait_for_timeout(300)
    assert page.locator(".store-note").inner_text() == ""
    page.reload()
    page.locator(".form-ask:visible").wait_for()
    assert page.locator(".how-far").inner_text() == "1 of 7 answered"


def test_damage_in_the_store_starts_afresh(counter: Open) -> None:
    page = counter(script=NO_BASE)
    for text in ("no JSON", "[]", '{"turn": 1}', '{"turn": 5, "responses": 3}', "null"):
        page.evaluate(
            "([key, text]) => localStorage.setItem(key, text)",
            [f"guidecoat-form {FORM_ID} {PERSON}", text],
        )
        page.reload()
        page.get_by_role("button", name="Start").wait_for()


def test_another_window_with_the_same_form_is_told(counter: Open) -> None:
    page = counter()
    begin(page)
    other = page.context.new_page()
    other.goto(page.url)
    shown(other).wait_for()
    give(other, ANSWERS[1])
    page.wait_for_function("document.querySelector('.store-note').textContent !== ''")
    assert "another window" in page.locator(".store-note").inner_text()


def test_after_handing_in_the_next_person_finds_nothing(counter: Open) -> None:
    page = counter(small_form())
    begin(page, "Apprentice 03")
    answer_all(page, ANSWERS)
    first = hand_in(page)[1]
    page.reload()
    # the page asks both of its stores before it shows anything
    page.locator(".form-done").wait_for()
    with page.expect_download() as again:
        page.get_by_role("button", name="Save the file again").click()
    assert saved_answers(Path(again.value.path())) == first
    page.get_by_role("button", name="Next person").click()
    assert page.evaluate("document.activeElement.textContent").startswith("Is the file in safe")
    page.get_by_role("button", name="No, keep them").click()
    page.get_by_role("button", name="Next person").click()
    page.get_by_role("button", name="Yes, clear them").click()
    page.locator(".form-said", has_text="next person can start").wait_for()
    assert page.evaluate("localStorage.length") == 0
    page.reload()
    page.get_by_role("button", name="Start").wait_for()
    assert page.get_by_label("Your code").input_value() == ""
    begin(page, "Apprentice 04")
    assert page.locator(".how-far").inner_text() == "0 of 7 answered"
    assert page.locator("input:checked").count() == 0
    fields = page.locator(".number, textarea:not([readonly]), select")
    assert {field.input_value() for field in fields.all()} == {""}


def test_two_people_with_one_form_on_one_device_do_not_meet(counter: Open, tmp_path: Path) -> None:
    page = counter(small_form("Apprentice 01"))
    begin(page)
    give(page, ANSWERS[1])
    page.goto(write_page(tmp_path, small_form("Apprentice 02")))
    page.get_by_role("button", name="Start").wait_for()
    assert page.locator("input:checked").count() == 0
