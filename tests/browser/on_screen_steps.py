"""Ways to answer a form on a screen as a person does: by buttons, fields and keys."""

import json
from collections.abc import Mapping
from pathlib import Path
from typing import Any

from playwright.sync_api import Locator, Page

from generator.marking import Chosen, Matched, Ordered, Response, Typed
from generator.marking.tables.answers_file import AnswersFile, read_answers_file

Answer = Response | str


def shown(page: Page) -> Locator:
    """Return the question on the screen."""
    return page.locator(".question:visible")


def begin(page: Page, code: str = "") -> None:
    """Start the form, with a code where the form was made for nobody."""
    if code:
        page.get_by_label("Your code").fill(code)
    page.get_by_role("button", name="Start").click()
    shown(page).wait_for()


def go_on(page: Page) -> None:
    """Press the button that leads to the next question."""
    page.locator(".form-next").click()


def give(page: Page, answer: Answer) -> None:
    """Answer the question on the screen."""
    question = shown(page)
    if isinstance(answer, str):
        question.get_by_label("Your answer, in your own words").fill(answer)
    elif isinstance(answer, Typed):
        question.locator(".number").fill(answer.text)
    elif isinstance(answer, Chosen):
        for letter in answer.letters:
            question.locator(f'.option[data-letter="{letter}"]').click()
    elif isinstance(answer, Matched):
        for number, letter in answer.answers:
            question.locator(f'.pair[data-number="{number}"] select').select_option(letter)
    elif isinstance(answer, Ordered):
        put_in_order(question, answer.letters)


def put_in_order(question: Locator, letters: tuple[str, ...]) -> None:
    """Move the steps by their buttons until they stand in an order."""
    for place, letter in enumerate(letters):
        step = question.locator(f'li[data-letter="{letter}"]')
        while order_of(question).index(letter) > place:
            step.locator('[data-by="-1"]').click()
    if question.locator(".keep-order").is_visible():
        question.locator(".keep-order").click()


def order_of(question: Locator) -> list[str]:
    """Return the letters of the steps as they stand."""
    found: list[str] = question.locator(".steps-to-order > li").evaluate_all(
        "steps => steps.map(step => step.dataset.letter)"
    )
    return found


def answer_all(page: Page, answers: Mapping[int, Answer]) -> None:
    """Go through the form from its first question and end at the look before handing in."""
    for number in range(1, page.locator(".question").count() + 1):
        if number in answers:
            give(page, answers[number])
        go_on(page)


def hand_in(page: Page) -> tuple[str, AnswersFile]:
    """Hand in and give the name of the saved file with what it holds."""
    with page.expect_download() as saved:
        page.get_by_role("button", name="Hand in: save my answers").click()
    return saved.value.suggested_filename, saved_answers(Path(saved.value.path()))


def saved_answers(path: Path) -> AnswersFile:
    """Read a saved file back; any problem fails the test."""
    found, problems = read_answers_file(path.read_text("utf-8"), "answers.json")
    assert problems == ()
    assert found is not None
    return found


def kept(page: Page) -> dict[str, Any]:
    """Return what the page keeps in its store at hand; empty where it keeps nothing."""
    texts: list[str] = page.evaluate("Object.values(localStorage)")
    return json.loads(texts[0]) if texts else {}
