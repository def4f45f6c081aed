"""Each kind of question can be answered on a phone, and says why an answer fails."""

from playwright.sync_api import Locator, Page

from tests.browser.conftest import Visit

QUESTIONS = "film_build-questions.html"


def question(page: Page, name: str) -> Locator:
    """Find a question of the small course."""
    return page.locator(f"#q-film_build-{name}")


def feedback(found: Locator) -> str:
    """Read what the live region says."""
    return found.locator(".feedback").inner_text()


def choose(found: Locator, text: str) -> None:
    """Tap the option with these words."""
    found.locator(".option", has_text=text).tap()


def check(found: Locator) -> None:
    """Press the check button."""
    found.get_by_role("button", name="Check my answer").tap()


def test_a_wrong_option_is_answered_with_its_own_reason(phone: Visit) -> None:
    found = question(phone.open(QUESTIONS), "read_gauges-zero")
    choose(found, "Warm it in your hand")
    check(found)
    assert "Not this one." in feedback(found)
    assert "Heat moves the reading; it proves nothing." in feedback(found)
    assert "two points" not in feedback(found)


def test_a_right_option_is_confirmed_with_its_reason(phone: Visit) -> None:
    found = question(phone.open(QUESTIONS), "read_gauges-zero")
    choose(found, "Check it on a bare plate")
    check(found)
    assert feedback(found).startswith("Right.")
    assert "two points show it" in feedback(found)


def test_an_empty_answer_is_asked_for_and_not_counted(phone: Visit) -> None:
    page = phone.open(QUESTIONS)
    found = question(page, "read_gauges-zero")
    check(found)
    assert feedback(found) == "Choose an option first."
    assert page.evaluate("localStorage.length") == 0


def test_several_options_are_each_judged_and_missing_ones_counted(phone: Visit) -> None:
    found = question(phone.open(QUESTIONS), "coats-thin_edges")
    choose(found, "More thinner in the same wet film")
    choose(found, "A slower pass")
    check(found)
    assert "1 of your 2 choices is right. 2 right options are still open." in feedback(found)
    assert "C is wrong. A slower pass lays more paint" in feedback(found)


def test_all_right_options_and_no_other_pass(phone: Visit) -> None:
    found = question(phone.open(QUESTIONS), "coats-thin_edges")
    for text in ("More thinner", "A gun held too far", "A narrower overlap"):
        choose(found, text)
    check(found)
    assert feedback(found).startswith("Right, all of them.")


def test_order_is_mended_with_the_buttons_and_broken_pairs_say_why(phone: Visit) -> None:
    found = question(phone.open(QUESTIONS), "total_build-readings")
    check(found)
    assert "B before A. Wet two-pack film gives off vapour" in feedback(found)
    assert "A before C" not in feedback(found)
    found.get_by_role("button", name="Move up: Put on breathing protection").tap()
    assert feedback(found) == "B is now step 1 of 4."
    check(found)
    assert feedback(found) == "Right. Every step that must wait does wait."


def test_a_moved_step_keeps_the_keyboard_on_its_button(phone: Visit) -> None:
    page = phone.open(QUESTIONS)
    found = question(page, "total_build-readings")
    button = found.get_by_role("button", name="Move down: Push the comb")
    button.focus()
    page.keyboard.press("Enter")
    page.keyboard.press("Enter")
    letters = found.locator(".steps-to-order > li").evaluate_all(
        "steps => steps.map(step => step.dataset.letter).join('')"
    )
    assert letters == "BCAD"
    assert page.evaluate("document.activeElement.textContent").startswith(
        "Move down: Push the comb"
    )


def test_the_first_step_says_that_it_is_first(phone: Visit) -> None:
    found = question(phone.open(QUESTIONS), "total_build-readings")
    found.get_by_role("button", name="Move up: Push the comb").tap()
    assert feedback(found) == "A is already first."


def test_pairs_are_judged_one_by_one(phone: Visit) -> None:
    found = question(phone.open(QUESTIONS), "convert_units-names")
    found.get_by_label("25.4 µm").select_option("B")
    check(found)
    assert feedback(found) == "One pair or more is still open."
    found.get_by_label("1000 µm").select_option("C")
    check(found)
    assert "1 of 2 pairs are right." in feedback(found)
    assert "1000 µm: not C." in feedback(found)
    found.get_by_label("1000 µm").select_option("A")
    check(found)
    assert feedback(found) == "Right, every pair."


def test_a_written_answer_is_held_against_its_points(phone: Visit) -> None:
    found = question(phone.open(QUESTIONS), "thin_and_thick-why")
    found.get_by_label("Your answer, in your own words").fill("The skin closes first.")
    found.get_by_role("button", name="Show the points").tap()
    found.get_by_label("Solvent is trapped under a skin").tap()
    assert "1 of 2 marks" in feedback(found)


def test_the_answer_stays_shut_until_one_was_given(phone: Visit) -> None:
    found = question(phone.open(QUESTIONS), "read_gauges-zero")
    assert found.locator("details").is_hidden()
    choose(found, "Warm it in your hand")
    check(found)
    assert found.locator("details").is_visible()


def test_a_question_inside_a_lesson_works_too(phone: Visit) -> None:
    found = question(phone.open("film_build.html"), "read_gauges-zero")
    choose(found, "Set it to the last job")
    check(found)
    assert "copies the last error" in feedback(found)
