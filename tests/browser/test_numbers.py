"""Numbers are read the way people type them, and feedback says what they come to."""

import pytest
from playwright.sync_api import Locator

from tests.browser.conftest import Visit
from tests.browser.test_answering import QUESTIONS, check, feedback, question

# the first variant of the small course accepts 116 to 118 µm, ends included
RIGHT = ("117", " 117 µm", "117um", "117,0", "116.5 µm", "116 1/2", "116½", "116", "118", "234/2")
CONVERTED = {
    "0.117 mm": "0.117 mm is 117 µm.",
    "0,0117 cm": "0,0117 cm is 117 µm.",
    "117 microns": "",
}
WRONG = ("115.999", "118,0001", "118 1/1000", "-117")
UNREADABLE = {
    "1,170": "Commas and points can be read two ways here",
    "117 g": "117 g measures something else. Give the answer in µm.",
    "117 spans": "“spans” is not a unit that this page knows. Try µm.",
    "117/0": "That divides by zero",
    "thick": "That cannot be read as one number",
    "117 118": "That cannot be read as one number",
    "": "Type a number first.",
}


def target(phone: Visit) -> Locator:
    """Find the numeric question of the small course."""
    return question(phone.open(QUESTIONS), "dry_from_wet-target")


def answered(found: Locator, text: str) -> str:
    """Type a number, check it and read the feedback."""
    found.get_by_label("Your answer, in µm").fill(text)
    check(found)
    return feedback(found)


def test_numbers_with_comma_fraction_and_unit_inside_the_band_are_right(phone: Visit) -> None:
    found = target(phone)
    assert [text for text in RIGHT if not answered(found, text).startswith("Right.")] == []


def test_numbers_just_outside_the_band_are_wrong(phone: Visit) -> None:
    found = target(phone)
    assert [text for text in WRONG if "Not that number." not in answered(found, text)] == []


@pytest.mark.parametrize("text", CONVERTED)
def test_another_unit_of_the_same_kind_is_converted_and_told(phone: Visit, text: str) -> None:
    words = answered(target(phone), text)
    assert words.startswith("Right.")
    assert CONVERTED[text] in words.replace("\u00a0", " ")


def test_the_right_number_in_a_wrong_unit_is_wrong_and_says_so(phone: Visit) -> None:
    words = answered(target(phone), "117 mm").replace("\u00a0", " ")
    assert "Not that number." in words
    assert "117 mm is 117000 µm." in words
    assert "The number fits, but in µm, not in mm." in words


def test_a_slip_in_another_unit_is_still_known(phone: Visit) -> None:
    assert "Wet film is always thicker than dry." in answered(target(phone), "0.042 mm")


def asked_for(phone: Visit) -> Locator:
    """Find the question that wants the unit as well."""
    return question(phone.open(QUESTIONS), "order_material-with_unit")


def answered_with_unit(found: Locator, text: str) -> str:
    """Type an answer to it and read the feedback."""
    found.get_by_label("Your answer, with its unit").fill(text)
    check(found)
    return feedback(found)


def test_a_missing_unit_is_asked_for_and_not_counted_where_the_question_wants_it(
    phone: Visit,
) -> None:
    found = asked_for(phone)
    assert answered_with_unit(found, "76.2") == "Add the unit after the number."
    assert found.page.evaluate("localStorage.length") == 0
    assert answered_with_unit(found, "76.2 µm").startswith("Right.")


def test_any_unit_of_the_kind_will_do_where_the_question_wants_one(phone: Visit) -> None:
    assert answered_with_unit(asked_for(phone), "3 mil").startswith("Right.")


def test_a_unit_of_another_kind_is_asked_about_and_not_counted(phone: Visit) -> None:
    found = asked_for(phone)
    assert "Look at what is asked, and at your unit." in answered_with_unit(found, "76.2 g")
    assert found.page.evaluate("localStorage.length") == 0


def test_a_known_slip_gets_its_own_words(phone: Visit) -> None:
    assert "Wet film is always thicker than dry." in answered(target(phone), "42")


@pytest.mark.parametrize("text", UNREADABLE)
def test_what_cannot_be_read_says_what_to_write_and_is_not_counted(phone: Visit, text: str) -> None:
    found = target(phone)
    assert UNREADABLE[text] in answered(found, text).replace("\u00a0", " ")
    assert found.locator(".number").get_attribute("aria-invalid") == "true"
    assert found.page.evaluate("document.activeElement.className") == "number"
    assert found.page.evaluate("localStorage.length") == 0


def test_the_working_is_shown_after_an_answer(phone: Visit) -> None:
    found = target(phone)
    answered(found, "42")
    found.get_by_text("Answer and working").tap()
    assert "wet film = dry film ÷ volume solids" in found.inner_text()
    assert "Accepted: 116 to 118 µm" in found.inner_text()


def test_new_numbers_change_question_key_and_working_and_come_round_again(phone: Visit) -> None:
    found = target(phone)
    for dry, wet in (("60 µm", "100"), ("45 µm", "75"), ("70 µm", "117")):
        found.get_by_role("button", name="New numbers").tap()
        assert dry in found.locator(".given").inner_text()
        assert feedback(found) == "New numbers. Read the question again."
        assert found.locator("details").is_hidden()
        assert answered(found, wet).startswith("Right.")
