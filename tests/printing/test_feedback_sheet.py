"""The feedback sheet goes back to the person: what each question was about, and no key."""

import pytest

from generator.printing import feedback_sheet
from tests.printing.form_for_tests import CHOICE, NUMERIC, WRITTEN, form_of, issued_form
from tests.printing.pdf_reading import FONTS, page_texts, tags, whole_text


def _sheet(form, **more):
    return feedback_sheet(form, **({"paper": "a4", "fonts": FONTS} | more))


@pytest.mark.parametrize("size", ["a4", "letter"])
def test_twenty_questions_come_back_on_one_page(size):
    assert len(page_texts(_sheet(issued_form(), paper=size))) == 1


def test_each_row_names_lesson_and_objective_in_words_with_its_marks():
    wet = CHOICE | {"module": "film_build", "objective": "film_build/wet_film"}
    text = whole_text(_sheet(form_of(wet, WRITTEN)))
    assert "1 Film build: Wet film of 1" in text
    assert "2 Film build: Trial of 2" in text
    titles = {"film_build": "Film build and combs", "film_build/wet_film": "Read a comb"}
    named = whole_text(_sheet(form_of(wet, WRITTEN) | {"titles": titles}))
    assert "1 Film build and combs: Read a comb of 1" in named
    assert "2 Film build: Trial of 2" not in named
    assert "2 Film build and combs: Trial of 2" in named
    assert "No. What it is about Right Part Wrong Marks Study" in text


def test_the_sheet_never_says_that_a_person_may_work_alone():
    for large in (False, True):
        text = whole_text(_sheet(issued_form(), large_print=large))
        assert "It never says that a person may do hazardous work alone." in text


def test_marks_pass_and_gate_stand_above_with_room_for_the_result():
    text = whole_text(_sheet(issued_form()))
    assert "20 questions, 22 marks in all. Pass: 16 marks (80 %)." in text
    assert "Questions 2, 7 and 12 must be right." in text
    assert "Must-pass questions missed: numbers" in text
    assert text.count("MUST BE RIGHT") == 3
    assert "Must-pass" not in whole_text(_sheet(form_of(CHOICE)))


def test_a_sheet_for_a_person_names_them():
    assert "For Apprentice 07" in whole_text(_sheet(form_of(CHOICE, person="Apprentice 07")))
    assert "Name" in whole_text(_sheet(form_of(CHOICE)))


def test_nothing_of_question_or_answer_is_on_it():
    text = whole_text(_sheet(form_of(CHOICE, NUMERIC)))
    for words in ("trailer door", "Degrease", "128", "60 %", "film_build/trial"):
        assert words not in text


def test_a_hazard_says_its_caution_once_and_no_other_caution_is_told():
    said = [{"hazard": "acid", "text": "Acid burns."}, {"hazard": "", "text": "Keep the lid on."}]
    text = whole_text(_sheet(form_of(*[CHOICE | {"cautions": said}] * 3)))
    assert text.count("Acid burns.") == 1
    assert "Keep the lid on." not in text
    assert "Heed this" not in whole_text(_sheet(form_of(CHOICE)))


@pytest.mark.parametrize("large", [False, True])
def test_a_long_form_repeats_the_head_of_its_table(large):
    pages = page_texts(_sheet(form_of(*[CHOICE] * 100), large_print=large))
    assert len(pages) > 1
    rows = [page for page in pages if "Film build: Trial" in page]
    assert all("What it is about" in page for page in rows)


def test_the_rows_are_a_table_with_heads():
    assert [kind for kind, _ in tags(_sheet(form_of(CHOICE)))].count("/TH") == 7
