"""A form is answered on a screen, is kept whatever happens, and is handed in as a file."""

import os
import signal
import subprocess
import time
from collections.abc import Callable, Iterator
from concurrent.futures import ThreadPoolExecutor
from pathlib import Path
from random import Random
from typing import Any

import pytest
from playwright.sync_api import Browser, BrowserContext, Page, sync_playwright

from generator.marking import Chosen, Matched, Ordered, Typed, mark_form
from generator.website.sitting import sitting_page
from tests.browser.conftest import ARGUMENTS, CHROMIUM, THEME
from tests.browser.on_screen_steps import (
    Answer,
    answer_all,
    begin,
    give,
    go_on,
    hand_in,
    kept,
    order_of,
    saved_answers,
    shown,
)
from tests.browser.test_every_page import TARGETS, violations
from tests.website.on_screen_forms import FORM_ID, real_form, small_form

PERSON = "Apprentice 07"
ANSWERS: dict[int, Answer] = {
    1: Chosen(("A",)),
    2: Chosen(("A", "C", "D")),
    3: Typed("0,117 mm"),
    4: Ordered(("B", "A", "D", "C")),
    5: Matched((("1", "B"), ("2", "C"))),
    6: "The skin closes.\nSolvent stays below.",
    7: Typed("3"),
}
HALF = {number: ANSWERS[number] for number in (1, 2, 3, 4)}
MINUTE = 60_000
Open = Callable[..., Page]


def write_page(folder: Path, form: dict[str, Any], name: str = "on-screen.html") -> str:
    (folder / name).write_bytes(sitting_page(form, fonts=THEME / "fonts_print"))
    return (folder / name).as_uri()


@pytest.fixture
def complaints() -> Iterator[list[str]]:
    """Collect what pages complain of; none may."""
    found: list[str] = []
    yield found
    assert found == []


@pytest.fixture
def counter(chromium: Browser, tmp_path: Path, complaints: list[str]) -> Iterator[Open]:
    """Give a way to open the page of a form from a stick; it may ask for nothing but itself."""
    contexts: list[BrowserContext] = []
    requests: list[str] = []
    addresses: list[str] = []

    def opened(form: dict[str, Any] | None = None, script: str = "", **options: Any) -> Page:
        size = {"width": 360, "height": 780}
        context = chromium.new_context(**{"viewport": size, **options})
        contexts.append(context)
        if script:
            context.add_init_script(script)
        page = context.new_page()
        page.on("request", lambda request: requests.append(request.url))
        page.on("console", lambda message: complaints.append(message.text))
        page.on("pageerror", lambda error: complaints.append(str(error)))
        addresses.append(write_page(tmp_path, form or small_form(PERSON)))
        page.goto(addresses[-1])
        page.locator("section:visible").first.wait_for()
        return page

    yield opened
    for context in contexts:
        context.close()
    assert {url for url in requests if not url.startswith(("data:", "blob:"))} <= set(addresses)


def responses_of(answers: dict[int, Answer]) -> dict[int, Any]:
    return {number: answer for number, answer in answers.items() if not isinstance(answer, str)}


def test_every_kind_is_answered_and_the_file_marks_like_the_same_answers(counter: Open) -> None:
    page = counter()
    begin(page)
    answer_all(page, ANSWERS)
    assert page.locator(".open-words").inner_text() == "Every question is answered."
    name, found = hand_in(page)
    assert name == f"answers-{FORM_ID}.json"
    assert (found.form_id, found.label, found.edition) == (FORM_ID, "A", "2026 spring")
    assert found.person == PERSON
    assert found.responses == responses_of(ANSWERS)
    assert found.written == {6: ANSWERS[6]}
    assert (found.minutes_used, found.minutes_over) == (1, 0)
    form = small_form(PERSON)
    marked = mark_form(form, found.responses)
    assert marked == mark_form(form, responses_of(ANSWERS))
    shares = [str(entry.mark.share) for entry in marked.questions]
    assert shares == ["1", "1/3", "1", "5/6", "1/2", "0", "0"]


def drawn_answers(form: dict[str, Any]) -> dict[int, Answer]:
    """Draw some answer to each question of a form, right or wrong."""
    draw = Random("answers on a screen")
    return {e["number"]: drawn_answer(e["question"], draw) for e in form["questions"]}


def drawn_answer(question: dict[str, Any], draw: Random) -> Answer:
    key, kind = question["key"], question["kind"]
    if kind in ("choice", "multiple_response"):
        letters = [option["letter"] for option in key["options"]]
        count = 1 if kind == "choice" else draw.randint(1, len(letters))
        return Chosen(tuple(sorted(draw.sample(letters, count))))
    if kind == "order":
        letters = [step["letter"] for step in key["steps"]]
        return Ordered(tuple(draw.sample(letters, len(letters))))
    if kind == "match":
        right = [entry["letter"] for entry in key["right"]]
        return Matched(tuple((str(e["number"]), draw.choice(right)) for e in key["left"]))
    if kind == "numeric":
        return Typed(draw.choice([key["shown"], f"{key['shown']} {key['unit_symbol']}", "12,5"]))
    return "Because it holds."


def test_a_paper_of_the_real_bank_is_answered_whole(counter: Open) -> None:
    form = real_form("mid_course")
    answers = drawn_answers(form)
    page = counter(form, viewport={"width": 1280, "height": 860})
    begin(page, "Apprentice 12")
    answer_all(page, answers)
    _, found = hand_in(page)
    assert found.person == "Apprentice 12"
    assert found.responses == responses_of(answers)
    assert mark_form(form, found.responses) == mark_form(form, responses_of(answers))


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
    page.get_by_role("button", name="Look over and hand in").click()
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


def look_over(page: Page) -> None:
    page.locator("summary", has_text="All questions").click()
    page.get_by_role("button", name="Look over and hand in").click()


def test_what_is_open_is_named_and_leads_to_its_question(counter: Open) -> None:
    page = counter()
    begin(page)
    page.locator("summary", has_text="All questions").click()
    page.get_by_role("button", name="Question 5, not answered").click()
    shown(page).locator("select").first.select_option("B")
    assert page.get_by_role("button", name="Question 5, 1 pair is still open").is_visible()
    page.get_by_role("button", name="Question 3, not answered").click()
    shown(page).locator(".number").fill("1,170")
    page.get_by_role("button", name="Look over and hand in").click()
    assert page.locator(".open-words").inner_text().startswith("7 questions are still open.")
    lines = page.locator(".open-questions li span").all_inner_texts()
    assert lines[1] == "not answered; this one must be right"
    assert lines[2] == "the number cannot be read"
    assert lines[4] == "1 pair is still open"
    page.get_by_role("button", name="Question 4").click()
    assert shown(page).get_attribute("data-number") == "4"
    assert page.evaluate("document.activeElement.id") == "question-4-name"


def test_an_order_left_as_it_stands_counts_only_when_it_is_kept_so(counter: Open) -> None:
    page = counter()
    begin(page)
    for _ in range(3):
        go_on(page)
    assert kept(page)["responses"] == {}
    page.get_by_role("button", name="This is my order").click()
    assert kept(page)["responses"]["4"]["letters"] == list("ABCD")
    page.get_by_role("button", name="Take my answer out").click()
    assert kept(page)["responses"] == {}
    assert page.get_by_role("button", name="This is my order").is_visible()


def test_a_number_that_cannot_be_read_says_so_and_is_kept_as_typed(counter: Open) -> None:
    page = counter()
    begin(page)
    go_on(page)
    go_on(page)
    shown(page).locator(".number").fill("1,170")
    page.keyboard.press("Tab")
    shown(page).locator(".feedback", has_text="two ways").wait_for()
    assert kept(page)["responses"]["3"]["text"] == "1,170"
    go_on(page)
    page.locator(".form-before").click()
    assert "two ways" in shown(page).locator(".feedback").inner_text()
    shown(page).locator(".number").fill("1170")
    shown(page).locator(".feedback").wait_for(state="hidden")


def test_pasted_signs_that_nobody_types_do_not_spoil_the_file(counter: Open) -> None:
    page = counter(small_form())
    begin(page, " Apprentice \u00a0 \u200b03 ")
    for _ in range(5):
        go_on(page)
    page.evaluate(
        "text => { const place = document.querySelector('#question-6-words');"
        " place.value = text + '\\ud800';"
        " place.dispatchEvent(new Event('input', {bubbles: true})); }",
        "solvent\u000bstays \u0007below 🙂",
    )
    go_on(page)
    go_on(page)
    _, found = hand_in(page)
    assert found.person == "Apprentice 03"
    assert found.written == {6: "solvent stays  below 🙂 "}


def test_time_runs_quietly_can_be_hidden_and_traps_nobody(counter: Open) -> None:
    page = counter()
    page.clock.install()
    page.reload()
    begin(page)
    assert page.locator(".time-left").inner_text() == "25 minutes left"
    assert page.locator(".time-left").get_attribute("role") is None
    page.get_by_role("button", name="Hide the time").click()
    assert page.locator(".time-left").is_hidden()
    page.reload()
    assert page.locator(".time-left").is_hidden()
    page.get_by_role("button", name="Show the time").click()
    page.clock.fast_forward(24 * MINUTE + 30_000)
    page.clock.run_for(6_000)
    assert page.locator(".time-left").inner_text() == "the last minute"
    assert page.locator(".time-up").inner_text() == ""
    page.clock.run_for(2 * MINUTE + 30_000)
    assert page.locator(".time-up").inner_text().startswith("The time is up.")
    assert page.locator(".time-left").inner_text() == "3 minutes over"
    give(page, ANSWERS[1])
    look_over(page)
    _, found = hand_in(page)
    assert found.responses == {1: ANSWERS[1]}
    assert (found.minutes_used, found.minutes_over) == (28, 3)
    assert "of which 3 over" in page.locator(".done-time").inner_text()


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
    assert page.locator(".form-done").is_visible()
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


def test_one_can_go_back_after_handing_in_and_hand_in_again(counter: Open) -> None:
    page = counter()
    begin(page)
    answer_all(page, {1: ANSWERS[1]})
    hand_in(page)
    page.locator(".take-back").click()
    give(page, ANSWERS[7])
    go_on(page)
    assert hand_in(page)[1].responses == {1: ANSWERS[1], 7: ANSWERS[7]}


def test_two_people_with_one_form_on_one_device_do_not_meet(counter: Open, tmp_path: Path) -> None:
    page = counter(small_form("Apprentice 01"))
    begin(page)
    give(page, ANSWERS[1])
    page.goto(write_page(tmp_path, small_form("Apprentice 02")))
    page.get_by_role("button", name="Start").wait_for()
    assert page.locator("input:checked").count() == 0


def test_a_form_made_for_nobody_asks_for_a_code(counter: Open) -> None:
    page = counter(small_form())
    page.get_by_role("button", name="Start").click()
    assert page.locator(".code-wrong").inner_text().startswith("Type the code")
    assert page.evaluate("document.activeElement.id") == "code"
    begin(page, "Apprentice 03")
    page.get_by_role("button", name="Read the first page again").click()
    assert page.get_by_label("Your code").input_value() == "Apprentice 03"
    page.get_by_role("button", name="Go on").click()
    assert shown(page).get_attribute("data-number") == "1"


def test_it_can_be_done_with_the_keyboard_alone(counter: Open) -> None:
    page = counter(small_form())
    press = page.keyboard.press

    def tab_to(selector: str) -> None:
        for _ in range(60):
            if page.evaluate("s => document.activeElement.matches(s)", selector):
                return
            press("Tab")
        raise AssertionError(f"the focus never reached {selector}")

    def next_question() -> None:
        tab_to(".form-next")
        press("Enter")

    tab_to(".code-input")
    page.keyboard.type("Apprentice 03")
    press("Enter")
    assert page.evaluate("document.activeElement.id") == "question-1-name"
    tab_to(".question:not([hidden]) input")
    press("Space")
    press("ArrowDown")
    next_question()
    for _ in range(2):
        press("Tab")
        press("Space")
    next_question()
    tab_to(".question:not([hidden]) .number")
    page.keyboard.type("117")
    press("Enter")
    next_question()
    tab_to('li[data-letter="B"] [data-by="-1"]')
    press("Enter")
    assert page.evaluate("document.activeElement.closest('li').dataset.letter") == "B"
    next_question()
    tab_to(".question:not([hidden]) select")
    press("b")
    next_question()
    tab_to(".question:not([hidden]) textarea")
    page.keyboard.type("Solvent")
    next_question()
    next_question()
    assert page.evaluate("document.activeElement.id") == "review-name"
    tab_to(".hand-in")
    with page.expect_download() as saved:
        press("Enter")
    found = saved_answers(Path(saved.value.path()))
    assert found.responses == {
        1: Chosen(("B",)),
        2: Chosen(("A", "B")),
        3: Typed("117"),
        4: Ordered(tuple("BACD")),
        5: Matched((("1", "B"),)),
    }
    assert found.written == {6: "Solvent"}
    assert page.evaluate("document.activeElement.id") == "done-name"


def each_step(page: Page) -> Iterator[str]:
    """Lead through the page and stop at each step with something to look at."""
    yield "start"
    page.get_by_role("button", name="Start").click()
    yield "no code"
    begin(page, "Apprentice 03")
    for number in range(1, 8):
        yield f"question {number}"
        give(page, Typed("1,170") if number == 3 else ANSWERS[number])
        if number == 3:
            shown(page).locator(".feedback", has_text="two ways").wait_for()
        yield f"question {number} answered"
        go_on(page)
    yield "look over"
    hand_in(page)
    yield "handed in"
    page.get_by_role("button", name="Next person").click()
    yield "next person"


@pytest.mark.parametrize("scheme", ["light", "dark"])
@pytest.mark.parametrize("width", [320, 1280])
def test_axe_finds_nothing_and_nothing_scrolls_sideways(
    counter: Open, scheme: str, width: int
) -> None:
    size = {"width": width, "height": 780}
    page = counter(small_form(), viewport=size, color_scheme=scheme, bypass_csp=True)
    for step in each_step(page):
        assert violations(page) == [], step
        assert page.evaluate("document.documentElement.scrollWidth - innerWidth") <= 0, step
        assert page.evaluate(TARGETS) == [], step


def test_text_spacing_does_not_break_the_narrow_page(counter: Open) -> None:
    """WCAG 2.2 success criterion 1.4.12."""
    page = counter(small_form(), viewport={"width": 320, "height": 640})
    for step in each_step(page):
        page.evaluate(
            "document.querySelectorAll('*').forEach(part => { part.style.lineHeight = '1.5';"
            " part.style.letterSpacing = '.12em'; part.style.wordSpacing = '.16em'; })"
        )
        assert page.evaluate("document.documentElement.scrollWidth - innerWidth") <= 0, step


def test_with_less_motion_nothing_moves(counter: Open) -> None:
    page = counter(reduced_motion="reduce")
    moving = page.evaluate(
        "[...document.querySelectorAll('*')].filter(part => { const look = getComputedStyle(part);"
        " return look.animationName !== 'none' || look.transitionDuration !== '0s'; }).length"
    )
    assert moving == 0


def test_without_script_it_says_what_to_do(counter: Open, tmp_path: Path) -> None:
    browser = counter().context.browser
    assert browser is not None
    context = browser.new_context(java_script_enabled=False)
    plain = context.new_page()
    plain.goto(write_page(tmp_path, small_form(PERSON)))
    assert "ask your instructor for a paper" in plain.locator("noscript").inner_text()
    assert plain.locator("button:visible").count() == 0
    context.close()
