"""The question paper shows all questions, and nothing of the key."""

import copy
from io import BytesIO

import pytest
from pypdf import PdfReader

from generator.printing import (
    PrintingRefused,
    answer_key,
    answer_sheet,
    feedback_sheet,
    question_paper,
)
from tests.printing.form_for_tests import (
    CHOICE,
    KINDS,
    MULTIPLE,
    NUMERIC,
    SECRETS,
    WRITTEN,
    form_of,
    full_form,
    issued_form,
)
from tests.printing.pdf_reading import FONTS, page_texts, squeezed, whole_text


def _paper(form, **more):
    return question_paper(form, **({"paper": "a4", "fonts": FONTS} | more))


def _with_another_key(form):
    """Change every secret of a form and keep what the learner may see."""
    changed = copy.deepcopy(form)
    for entry in changed["questions"]:
        key = entry["question"]["key"]
        entry["question"]["sources"] = [{"tag": "published", "text": "Other", "key": "other"}]
        entry["question"]["id"] = "other/other/other"
        for option in key.get("options", ()):
            option.update(right=not option["right"], says="Other feedback.")
        for name in ("shown", "low", "high", "band_text", "rule", "model", "orders"):
            key.update({name: "9"} if name in key else {})
        for name in ("working", "slips", "pairs"):
            key.update({name: []} if name in key else {})
        if "one_order" in key:
            key["one_order"] = key["one_order"][::-1]
        if "answers" in key:
            key["answers"] = dict.fromkeys(key["answers"], "A")
        if "says" in key:
            key["says"] = {} if "answers" in key else "Other feedback."
        for point in key.get("points", ()):
            point["text"] = "Other point"
    return changed


FOR_LEARNERS = pytest.mark.parametrize("made", [question_paper, answer_sheet, feedback_sheet])


@FOR_LEARNERS
def test_what_the_learner_gets_does_not_depend_on_the_key(made):
    form, other = form_of(*KINDS), _with_another_key(form_of(*KINDS))
    assert other != form
    assert made(form, paper="a4", fonts=FONTS) == made(other, paper="a4", fonts=FONTS)


@FOR_LEARNERS
@pytest.mark.parametrize("large", [False, True])
def test_no_secret_of_the_key_is_on_the_page(made, large):
    form = issued_form()
    text = squeezed(whole_text(made(form, paper="a4", fonts=FONTS, large_print=large)))
    assert [secret for secret in SECRETS if squeezed(secret) in text] == []


def test_the_secrets_looked_for_are_those_of_the_key():
    text = squeezed(whole_text(answer_key(full_form(), paper="a4", fonts=FONTS)))
    assert [secret for secret in SECRETS if squeezed(secret) not in text] == []


def test_every_question_shows_number_marks_and_stem():
    text = whole_text(_paper(full_form()))
    for entry in full_form()["questions"]:
        assert f"Question {entry['number']} " in text
    for question in KINDS:
        stem = question["stem"].replace("**", "").replace("\u00a0", " ")
        assert squeezed(stem) in squeezed(text)
    assert text.count("written answer · 2 marks") == 2
    assert text.count("· 1 mark ") == 18


def test_options_steps_and_match_sides_are_lettered():
    text = whole_text(_paper(form_of(*KINDS)))
    for line in (
        "A Degrease it B Sand it with P320 C Blow it off and mask it",
        "D The lid of the hardener is clean",
        "A Spread the filler in thin passes B Put on goggles and gloves",
        "B Solvent trapped under a skin",
        "1 Pin-size burst domes",
        "1 2 3 4 5",
    ):
        assert squeezed(line) in squeezed(text)


def test_a_numeric_question_shows_its_sheet_and_ends_the_answer_line_in_the_unit():
    text = whole_text(_paper(form_of(KINDS[0])))
    assert "Made-up data sheet, two-pack surfacer" in text
    assert "Volume solids of the mix 60 %" in text
    assert "Answer µm" in text


def test_the_rules_name_time_marks_pass_and_limits_of_the_result():
    text = whole_text(_paper(full_form()))
    for rule in (
        "Time: 40 minutes.",
        "There are 20 questions worth 22 marks together. You pass with 16 marks (80 %).",
        "A calculator is allowed.",
        "Round only your last figure, the way the question says.",
        "It never says that a person is fit or allowed to do hazardous work.",
    ):
        assert rule in text


def test_one_question_with_one_mark_is_counted_in_the_singular():
    form = form_of(CHOICE, minutes=1, pass_marks=1, pass_percent=100)
    text = whole_text(_paper(form))
    assert "Time: 1 minute." in text
    assert "There is 1 question worth 1 mark together. You pass with 1 mark (100 %)." in text


def test_the_gate_is_stated_with_the_rules_and_at_its_questions():
    pages = page_texts(_paper(issued_form()))
    assert (
        "Questions 2, 7 and 12 must be right. Missing one means not passed, whatever the marks. "
        "Part of the marks is not enough. They are marked MUST BE RIGHT."
    ) in pages[0]
    text = " ".join(pages)
    for number in range(1, 21):
        signed = f"Question {number} MUST BE RIGHT" in text
        assert signed == (number in (2, 7, 12)), number


def test_a_gate_of_one_question_is_stated_in_the_singular_and_none_not_at_all():
    text = whole_text(_paper(form_of(CHOICE, CHOICE, gate=[2])))
    assert "Question 2 must be right. Missing it means not passed, whatever the marks." in text
    assert "Question 2 MUST BE RIGHT" in text
    assert "MUST BE RIGHT" not in whole_text(_paper(form_of(CHOICE, gate=[])))


def test_how_wrong_ticks_count_is_said_where_several_answers_can_be_right():
    """As generator.marking takes it: right ticks less wrong ones, never below 0."""
    rule = "each wrong one you mark cancels a right one. No question goes below 0."
    assert rule in whole_text(_paper(form_of(MULTIPLE)))
    assert rule not in whole_text(_paper(form_of(CHOICE)))


def test_a_paper_for_a_person_names_them_and_asks_for_no_name():
    text = whole_text(_paper(form_of(CHOICE, person="Apprentice 07")))
    assert "For Apprentice 07" in text
    assert "Name" not in text


def test_cautions_of_questions_leave_the_first_page_to_the_questions():
    cautioned = [CHOICE | {"caution": f"Caution {number} of the bay."} for number in range(40)]
    cautions = [question["caution"] for question in cautioned]
    pages = page_texts(_paper(form_of(*cautioned, cautions=cautions)))
    assert "A caution stands with the question it belongs to." in pages[0]
    assert "Question 1 " in pages[0]
    for caution in cautions:
        assert sum(page.count(caution) for page in pages) == 1


def test_a_caution_of_hands_on_work_is_read_before_the_thing_is_touched():
    handled = CHOICE | {"caution": "The blade is sharp.", "hands_on": True, "cautions": []}
    text = whole_text(_paper(form_of(handled, cautions=["The blade is sharp."])))
    assert text.count("The blade is sharp.") == 1
    assert "Read it before you touch it." in text
    assert "Heed it when you do the work." not in text


def test_a_caution_of_the_feedback_is_not_on_the_paper():
    said = [{"hazard": "", "text": "Degrease before sanding."}]
    told = CHOICE | {"caution": None, "hands_on": False, "cautions": said}
    text = whole_text(_paper(form_of(told, cautions=[])))
    assert "Degrease before sanding." not in text
    assert "aution" not in text


def test_many_cautions_of_the_whole_paper_run_over_pages_and_none_is_lost():
    cautions = [
        f"Bay rule {number}: keep the doors shut while paint dries." for number in range(60)
    ]
    text = whole_text(_paper(form_of(CHOICE, cautions=cautions)))
    assert all(caution in text for caution in cautions)


@pytest.mark.parametrize(("large", "room"), [(False, 25), (True, 36)])
def test_a_number_has_an_empty_box_to_work_in(large, room):
    heights = {}

    def note(text, matrix, text_matrix, _font, _size):
        heights.setdefault(text.strip(), text_matrix[5] * matrix[3] + matrix[5])

    document = _paper(form_of(NUMERIC | {"sheet": None, "caution": None}), large_print=large)
    for page in PdfReader(BytesIO(document)).pages:
        page.extract_text(visitor_text=note)
    millimetres = abs(heights["Working"] - heights["Answer"]) * 25.4 / 72
    assert millimetres > room


def test_cautions_carry_the_word_and_not_a_colour_alone():
    form = form_of(*KINDS)
    text = whole_text(_paper(form))
    assert text.count("CAUTION") == 2
    assert "No open tins in the room." in text
    assert "Check the gauge with the air-fed hood still on" in text
    assert "CAUTION" not in whole_text(_paper(form_of(CHOICE, cautions=[])))


def test_units_and_constants_close_the_paper():
    last = page_texts(_paper(full_form()))[-1]
    assert "Units and constants" in last
    assert "1 mil 25.4 µm" in last
    assert "Water: 1.00 g/mL at 4 °C" in last
    assert "Units and constants" not in whole_text(_paper(form_of(CHOICE, constants=[])))


def test_a_longer_written_answer_gets_more_ruled_lines():
    def page_count(points):
        key = WRITTEN["key"] | {"points": [{"text": "Names it", "marks": 1}] * points}
        return len(page_texts(_paper(form_of(*[WRITTEN | {"key": key}] * 6))))

    assert page_count(4) > page_count(1)


def _long_and_short_questions():
    """Twenty questions of uneven height, with a word to know their first and last line by."""
    return [
        CHOICE
        | {
            "stem": f"head{number}x " + "The panel waits in the bay. " * (number * 7 % 23),
            "key": {
                "options": [
                    {"letter": letter, "text": f"tail{number}{letter}", "right": False, "says": "-"}
                    for letter in "ABC"
                ]
            },
        }
        for number in range(1, 21)
    ]


@pytest.mark.parametrize("size", ["a4", "letter"])
@pytest.mark.parametrize("large", [False, True])
def test_a_question_is_never_split_over_a_page(size, large):
    document = _paper(form_of(*_long_and_short_questions()), paper=size, large_print=large)
    pages = page_texts(document)
    assert len(pages) > 3
    for number in range(1, 21):
        marks = (f"Question {number} ", f"head{number}x", f"tail{number}A", f"tail{number}C")
        places = [{index for index, text in enumerate(pages) if mark in text} for mark in marks]
        assert len(places[0]) == 1
        assert all(place == places[0] for place in places), number


def test_a_question_taller_than_a_page_runs_on_and_is_printed_in_full():
    words = [f"word{number}x" for number in range(2400)]
    pages = page_texts(_paper(form_of(CHOICE | {"stem": " ".join(words)}, CHOICE)))
    assert [word for word in words if not any(word in page for page in pages)] == []
    assert not any(words[0] in page and words[-1] in page for page in pages)
    assert "Question 2" in pages[-1]


def test_a_character_without_a_glyph_is_refused_by_name():
    with pytest.raises(PrintingRefused, match=r"question paper of form A: .*漢"):
        _paper(form_of(CHOICE | {"stem": "What does 漢 mean?"}))


def test_a_folder_without_the_fonts_is_refused(tmp_path):
    with pytest.raises(PrintingRefused, match="Hepta Slab"):
        _paper(form_of(CHOICE), fonts=tmp_path)


def _rows_seen(document):
    """Return page and height of each row of the long table, as the page draws it."""
    seen = []
    for number, page in enumerate(PdfReader(BytesIO(document)).pages, start=1):

        def note(text, cm, tm, _font, _size, number=number):
            if text.strip().startswith("row"):
                height = tm[4] * cm[1] + tm[5] * cm[3] + cm[5]
                seen.append((number, round(height), text.strip()))

        page.extract_text(visitor_text=note)
    return seen


@pytest.mark.parametrize("rows", [5, 12, 13, 30, 60])
@pytest.mark.parametrize("large", [False, True])
def test_a_long_table_runs_on_and_never_prints_over_itself(rows, large):
    table = {
        "title": "Grades",
        "columns": ["Grade", "Size"],
        "rows": [[f"row{n:02}", str(n)] for n in range(rows)],
    }
    document = _paper(form_of(CHOICE, CHOICE | {"table": table}), large_print=large)
    seen = _rows_seen(document)
    assert [text for *_, text in seen] == [f"row{n:02}" for n in range(rows)]
    assert len({(page, height) for page, height, _ in seen}) == rows
