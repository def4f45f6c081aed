"""The answer key gives the answer of every question, what else is accepted, and why."""

import pytest

from generator.bank.orders.precedence import transitive_closure
from generator.printing import answer_key
from generator.printing.content.key_content import short_answer
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
from tests.printing.pdf_reading import FONTS, page_texts, squeezed, whole_text


def _key(*questions, **more):
    return whole_text(answer_key(form_of(*questions, **more), paper="a4", fonts=FONTS))


def test_a_number_comes_with_band_working_slips_and_source():
    text = _key(NUMERIC)
    assert "Key 128 µm Accept 127.8 to 128.8 µm" in text
    for line in NUMERIC["key"]["working"]:
        assert squeezed(line) in squeezed(text)
    assert "42 µm Multiplied by the solids" in text
    assert "117 µm Left out the thinner" in text
    assert "Source Wet film slides, worked example 3" in text
    assert "Safety question" in text


def test_every_option_says_why_it_is_right_or_wrong():
    text = _key(CHOICE)
    assert "Key A" in text
    assert "A Right: Degrease it Sanding first would grind road film" in text
    assert "B Wrong: Sand it with P320 The paper loads up" in text
    assert "Safety question" not in text


def test_several_right_letters_are_all_listed():
    assert "Key B C" in _key(MULTIPLE)


def test_an_order_shows_the_deciding_pairs_and_one_right_order():
    text = _key(ORDER)
    assert "Any order that keeps these pairs is right. 2 orders are right." in text
    assert "B before D (protects people): Peroxide paste burns eyes" in text
    assert "C before D (saves the work): The mix gels in minutes" in text
    order = "B Put on goggles and gloves C Key the bed with P80 D Fold in the hardener paste"
    assert order in text
    assert "More than one order is right" in text


def test_part_marks_come_with_the_way_to_work_them_out_by_hand():
    text = squeezed(_key(MULTIPLE, ORDER, MATCH, CHOICE))
    right = sum(option["right"] for option in MULTIPLE["key"]["options"])
    several = f"right letters less wrong letters, never below 0, times 1 mark, divided by {right}."
    assert squeezed(several) in text
    implied = transitive_closure([(pair["first"], pair["then"]) for pair in ORDER["key"]["pairs"]])
    assert squeezed(f"of these {len(implied)}, those that are kept, times 1 mark") in text
    for first, then in implied:
        assert squeezed(f"{first} before {then}") in text
    assert squeezed("shared evenly") in text
    assert text.count(squeezed("Part marks:")) == 3


def test_an_order_with_one_solution_says_so():
    text = _key(ORDER | {"key": ORDER["key"] | {"orders": 1}})
    assert "1 order is right." in text
    assert "More than one order is right" not in text


def test_a_match_pairs_each_number_with_its_letter_and_reason():
    text = _key(MATCH)
    assert "1 Pin-size burst domes in the last coat: B Solvent trapped under a skin" in text
    assert "The skin closes before the solvent is out." in text


def test_a_written_answer_has_points_with_marks_and_a_model():
    text = _key(WRITTEN)
    assert "Names the exhaust filter and its pressure drop 1 mark" in text
    assert "Stop, change it, and read the gauge again." in text
    assert "Source From memory, not checked against a document" in text


def test_a_must_pass_question_says_which_hazard_and_why():
    mist = {"hazard": "isocyanate_mist", "title": "Isocyanate mist", "reason": "It scars lungs."}
    said = "Must be right Isocyanate mist. It scars lungs."
    assert said in _key(CHOICE | {"critical": mist}, gate=[1])
    assert said not in _key(CHOICE | {"critical": mist})
    # an issue from before questions named their hazard
    assert "Must be right" not in _key(CHOICE, gate=[1])


def test_a_caution_stands_on_the_key_too():
    assert "CAUTION Check the gauge with the air-fed hood still on" in _key(NUMERIC)


def test_a_caution_that_is_not_on_the_paper_stands_on_the_key():
    said = [{"hazard": "acid", "text": "Acid burns. Goggles *on* first."}]
    said += [{"hazard": "", "text": "Keep the lid on."}]
    told = CHOICE | {"caution": None, "cautions": said}
    assert "CAUTION Acid burns. Goggles on first. Keep the lid on." in _key(told)
    assert "CAUTION" not in _key(CHOICE | {"caution": None, "cautions": []})


def test_a_caution_is_told_in_full_once_and_after_that_by_its_place():
    acid = {"hazard": "acid", "text": "Acid burns."}
    dust = {"hazard": "dust", "text": "Mask on."}
    form = form_of(
        CHOICE | {"cautions": [acid]},
        CHOICE | {"cautions": [dust, acid]},
        CHOICE | {"cautions": [acid, dust]},
    )
    text = whole_text(answer_key(form, paper="a4", fonts=FONTS))
    assert text.count("Acid burns.") == text.count("Mask on.") == 1
    assert "Caution: see question 1." in text
    assert "Caution: see questions 1 and 2." in text


@pytest.mark.parametrize(
    ("question", "short"),
    [
        (NUMERIC, "128\u00a0µm"),
        (CHOICE, "A"),
        (MULTIPLE, "B C"),
        (ORDER, "B C D A E *"),
        (MATCH, "1B  2A  3D"),
        (WRITTEN, "see below"),
    ],
)
def test_the_list_at_the_top_has_each_answer_in_short(question, short):
    assert short_answer(question) == short
    first_page = page_texts(answer_key(form_of(question), paper="a4", fonts=FONTS))[0]
    assert squeezed(f"1 {short} ") in squeezed(first_page)


def test_a_number_without_a_unit_has_no_stray_space():
    bare = NUMERIC | {"key": NUMERIC["key"] | {"unit_symbol": ""}}
    assert short_answer(bare) == "128"


def test_marks_and_pass_mark_open_the_key():
    text = whole_text(answer_key(full_form(), paper="a4", fonts=FONTS))
    assert "22 marks in all. Pass: 16 marks (80 %)." in text
    assert "Question 6 2 marks" in text
    assert len(KINDS) == len({question["kind"] for question in KINDS})
