"""Numbers are read the way people type them, and compared exactly."""

from fractions import Fraction
from typing import Any

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st
from playwright.sync_api import Locator

from generator.quantities import read_number
from tests.browser.conftest import Visit
from tests.browser.test_answering import QUESTIONS, check, feedback, question

# the first variant of the small course accepts 116 to 118 µm, ends included
RIGHT = ("117", " 117 µm", "117um", "117,0", "116.5 µm", "116 1/2", "116½", "116", "118", "234/2")
WRONG = ("115.999", "118,0001", "118 1/1000", "-117")
UNREADABLE = {
    "1,170": "Commas and points can be read two ways here",
    "117 mm": "Give the answer in µm. “mm” was not expected.",
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


def test_a_known_slip_gets_its_own_words(phone: Visit) -> None:
    assert "Wet film is always thicker than dry." in answered(target(phone), "42")


@pytest.mark.parametrize("text", UNREADABLE)
def test_what_cannot_be_read_says_what_to_write_and_is_not_counted(phone: Visit, text: str) -> None:
    found = target(phone)
    assert UNREADABLE[text] in answered(found, text)
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


def exact(value: dict[str, str] | None) -> Fraction | None:
    """Turn what the script read into a number."""
    return None if value is None else Fraction(int(value["over"]), int(value["under"]))


READ = """text => {
  const read = Guidecoat.readNumber(text, "um", "µm");
  return read.value ? {over: String(read.value.over), under: String(read.value.under)} : null;
}"""


@given(text=st.text(alphabet="0123456789.,/ -½¼⅔⅞", max_size=9))
@settings(
    max_examples=150,
    derandomize=True,
    deadline=None,
    suppress_health_check=[HealthCheck.function_scoped_fixture],
)
def test_the_page_reads_numbers_as_the_marker_does(reader: Any, text: str) -> None:
    assert exact(reader.evaluate(READ, text)) == read_number(text)


@pytest.fixture
def reader(phone: Visit) -> Any:
    """Give a page whose number reader can be asked."""
    return phone.open(QUESTIONS)


@pytest.mark.parametrize(
    ("low", "high", "inside"),
    [("385/3", "386/3", True), ("0.1", None, True), (None, "128.33", False), ("-2", "-1", False)],
)
def test_bands_take_decimals_fractions_and_open_ends(
    phone: Visit, low: str | None, high: str | None, inside: bool
) -> None:
    page = phone.open(QUESTIONS)
    found = page.evaluate(
        "band => Guidecoat.inBand(Guidecoat.exact('385/3'), band)", {"low": low, "high": high}
    )
    assert found is inside
