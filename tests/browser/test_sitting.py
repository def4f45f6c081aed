"""A form is answered on a screen and handed in as a file."""

from random import Random
from typing import Any

from generator.marking import Chosen, Matched, Ordered, Typed, mark_form
from tests.browser.on_screen_counter import ANSWERS, MINUTE, PERSON, Open, look_over, responses_of
from tests.browser.on_screen_counter import complaints as complaints
from tests.browser.on_screen_counter import counter as counter
from tests.browser.on_screen_steps import (
    Answer,
    answer_all,
    begin,
    give,
    go_on,
    hand_in,
    kept,
    shown,
)
from tests.website.on_screen_forms import FORM_ID, real_form, small_form


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


def test_what_is_open_is_named_and_leads_to_its_question(counter: Open) -> None:
    page = counter()
    begin(page)
    page.locator("summary", has_text="All questions").click()
    page.get_by_role("button", name="Question 5, not answered").click()
    shown(page).locator("select").first.select_option("B")
    assert page.get_by_role("button", name="Question 5, 1 pair is still open").is_visible()
    page.get_by_role("button", name="Question 3, not answered").click()
    shown(page).locator(".number").fill("1,170")
    page.get_by_role("button", name="Review and hand in").click()
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
    page.get_by_role("button", name="Clear my answer").click()
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


def test_one_can_go_back_after_handing_in_and_hand_in_again(counter: Open) -> None:
    page = counter()
    begin(page)
    answer_all(page, {1: ANSWERS[1]})
    hand_in(page)
    page.locator(".take-back").click()
    give(page, ANSWERS[7])
    go_on(page)
    assert hand_in(page)[1].responses == {1: ANSWERS[1], 7: ANSWERS[7]}


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
