"""The answer sheet has a place for every answer and says how to fill it in."""

import pytest

from generator.printing import PrintingRefused, answer_sheet
from generator.printing.answer_sheet.rules import filling_rules
from tests.printing.form_for_tests import (
    CHOICE,
    KINDS,
    MATCH,
    MULTIPLE,
    NUMERIC,
    ORDER,
    WRITTEN,
    form_of,
    full_form,
)
from tests.printing.pdf_reading import FONTS, page_texts, whole_text


def _sheet(form, **more):
    return answer_sheet(form, **({"paper": "a4", "fonts": FONTS} | more))


def _with(question, **key):
    return question | {"key": question["key"] | key}


@pytest.mark.parametrize("size", ["a4", "letter"])
@pytest.mark.parametrize("count", [1, 20, 36, 100])
def test_a_sheet_of_options_fits_one_page(size, count):
    assert len(page_texts(_sheet(form_of(*[CHOICE] * count), paper=size))) == 1


@pytest.mark.parametrize("large", [False, True])
def test_a_very_long_form_goes_on_to_further_pages_with_every_number(large):
    pages = page_texts(_sheet(form_of(*[CHOICE] * 140), large_print=large))
    assert len(pages) > 1
    for number in range(1, 141):
        assert f" {number} A B C" in " ".join(pages)
    for number, text in enumerate(pages[1:], 2):
        assert f"Answer sheet, page {number} Form A" in text


def test_each_kind_gets_its_own_place():
    text = whole_text(_sheet(form_of(*KINDS)))
    assert "1 in µm" in text
    assert "2 A B C" in text
    assert "3 A B C D" in text
    assert "4 1 2 3 4 5" in text
    assert "5 1 2 3" in text
    assert "6 on the question paper" in text


def test_a_number_without_a_unit_is_captioned_as_a_number():
    assert "1 number" in whole_text(_sheet(form_of(_with(NUMERIC, unit_symbol=""))))


def test_the_sheet_asks_for_the_name_unless_it_is_made_for_somebody():
    assert "Name or number" in whole_text(_sheet(form_of(CHOICE)))
    text = whole_text(_sheet(form_of(CHOICE, person="Apprentice 07")))
    assert "For Apprentice 07" in text
    assert "Name or number" not in text
    assert "Date" in text


@pytest.mark.parametrize(
    ("question", "rules"),
    [
        (CHOICE, ["ring"]),
        (MULTIPLE, ["ring"]),
        (ORDER, ["ring", "grid"]),
        (MATCH, ["ring", "grid"]),
        (NUMERIC, ["ring", "number"]),
        (WRITTEN, []),
    ],
)
def test_only_the_rules_that_a_sheet_needs_stand_on_it(question, rules):
    kinds = {question["kind"]}
    assert [rule["rule"] for rule in filling_rules(kinds)] == rules
    text = whole_text(_sheet(form_of(question)))
    for rule in filling_rules(kinds):
        assert rule["text"] in text
    assert ("fill one letter under each" in text) == ("grid" in rules)
    assert ("Write a number from the left" in text) == ("number" in rules)


@pytest.mark.parametrize("large", [False, True])
@pytest.mark.parametrize("size", ["a4", "letter"])
@pytest.mark.parametrize("title", ["Filler", "A longer title of a paper for all the bays " * 3])
def test_words_at_the_head_keep_clear_of_the_answers_at_any_title(size, large, title):
    # The sheet refuses to print when its words need more room than the geometry leaves them.
    form = full_form() | {"title": title, "person": "Apprentice 07"}
    words = whole_text(_sheet(form, paper=size, large_print=large))
    assert title.strip() in words


def test_a_title_that_leaves_no_room_is_refused():
    with pytest.raises(PrintingRefused, match="the title needs more room"):
        _sheet(form_of(CHOICE, title="An endless title of a paper " * 40))


def test_more_places_than_fit_side_by_side_are_refused_by_number():
    steps = [{"letter": letter, "text": "-"} for letter in "ABCDEFGHIJKL"]
    with pytest.raises(PrintingRefused, match="question 2 has 12 places side by side"):
        _sheet(form_of(CHOICE, _with(ORDER, steps=steps)))


@pytest.mark.parametrize("shown", ["1234567", "-3", "1/2"])
def test_a_number_that_the_boxes_cannot_hold_stays_on_the_paper(shown):
    text = whole_text(_sheet(form_of(CHOICE, _with(NUMERIC, shown=shown))))
    assert "2 on the question paper" in text


def test_the_sheet_shows_no_question_text():
    text = whole_text(_sheet(full_form()))
    for words in ("Degrease", "trailer door", "Solvent trapped", "60 %"):
        assert words not in text
