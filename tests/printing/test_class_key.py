"""The class key: every form's answers on as few pages as can be read, one where it fits."""

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from generator.printing import PrintingRefused, class_key
from generator.printing.content.class_key_layout import (
    Cell,
    Head,
    Sheet,
    layout_of,
    lines_of_letters,
)
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
from tests.printing.pdf_reading import FONTS, page_texts, tags, whole_text

A4 = Sheet(210, 297)


def _heads(forms):
    return [Head(str(number), "25/31") for number in range(1, forms + 1)]


def _class(*forms, **more):
    return class_key(forms, **({"paper": "a4", "fonts": FONTS} | more))


def _of_thirty(form):
    labels = [chr(65 + n) if n < 26 else str(n + 1) for n in range(30)]
    return [form | {"form": label} for label in labels]


@pytest.mark.parametrize("size", ["a4", "letter"])
def test_thirty_forms_of_twenty_questions_come_on_one_page(size):
    [text] = page_texts(_class(*_of_thirty(full_form() | {"gate": [1, 7]}), paper=size))
    assert "No. A B C D" in text
    assert "28 29 30 Marks" in text


@pytest.mark.parametrize("large", [False, True])
def test_what_does_not_fit_one_page_repeats_its_head_and_loses_no_form(large):
    forms = _of_thirty(form_of(*KINDS * 12))
    pages = page_texts(_class(*forms, large_print=large))
    assert len(pages) > 1
    for label in (form["form"] for form in forms):
        assert any(f" {label} " in page for page in pages)
    table_pages = [page for page in pages if " 128 " in page]
    assert table_pages
    assert all("No." in page and "Marks" in page for page in table_pages)


@pytest.mark.parametrize(
    ("question", "cell"),
    [
        (NUMERIC, "1 128 1"),
        (CHOICE, "1 A 1"),
        (MULTIPLE, "1 BC 1"),
        (ORDER, "1 BCD AE* 1"),
        (MATCH, "1 BAD 1"),
        (WRITTEN, "1 w 2"),
    ],
)
def test_a_cell_is_the_answer_in_a_few_signs(question, cell):
    assert cell in whole_text(_class(form_of(question)))


def test_forms_with_other_questions_at_a_number_show_their_own_answer_and_marks():
    forms = (form_of(CHOICE, NUMERIC), form_of(CHOICE, WRITTEN, form="B"))
    text = whole_text(_class(*forms))
    assert "1 A A 1" in text
    assert "2 128 1 w 2" in text
    assert "A small figure under an answer: its marks" in text


def test_a_shorter_form_leaves_a_dash():
    text = whole_text(_class(form_of(CHOICE, CHOICE), form_of(CHOICE, form="B")))
    assert "2 A –" in text


def test_a_must_pass_question_carries_the_word_in_its_cell_only():
    forms = (form_of(CHOICE, CHOICE, gate=[2]), form_of(CHOICE, CHOICE, gate=[1], form="B"))
    text = whole_text(_class(*forms))
    assert "1 A A must 1" in text
    assert "2 A must A 1" in text
    assert "must: the question has to be right on that form" in text
    assert "must" not in whole_text(_class(form_of(CHOICE)))


def test_totals_have_a_row_to_write_in_and_state_pass_and_all_marks():
    text = whole_text(_class(full_form()))
    assert "Total" in text
    assert "Pass mark / total 16/22" in text


def test_only_signs_that_stand_on_the_page_are_explained():
    plain = whole_text(_class(form_of(CHOICE)))
    for words in ("more than one order", "For a number", "For a match", "written answer"):
        assert words not in plain
        assert words in whole_text(_class(form_of(*KINDS)))


def test_the_head_of_the_table_is_a_head_for_those_who_hear_it():
    kinds = [kind for kind, _ in tags(_class(form_of(CHOICE), form_of(CHOICE, form="B")))]
    assert kinds.count("/TH") == 4


def test_few_forms_of_many_questions_stay_upright():
    layout = layout_of([[Cell(("A",))]] * 100, _heads(1), A4, False)
    assert not layout["flipped"]
    assert layout_of([[Cell(("A",))] * 30] * 20, _heads(30), A4, False)["flipped"]


def test_no_form_is_refused():
    with pytest.raises(PrintingRefused, match="there is no form"):
        _class()


@given(st.lists(st.sampled_from("ABCDEFGH"), max_size=9))
def test_letters_keep_their_order_over_the_lines_of_a_cell(letters):
    lines = lines_of_letters(letters)
    assert "".join(lines) == "".join(letters)
    assert max(map(len, lines)) <= max(4, (len(letters) + 1) // 2)


CELLS = st.builds(Cell, st.tuples(st.text("0123456789.", max_size=6)), st.booleans())


@settings(max_examples=60)
@given(st.lists(CELLS, min_size=1, max_size=100), st.integers(1, 210), st.booleans())
def test_tables_hold_every_form_once_and_about_the_same_number(column, forms, large):
    layout = layout_of([[cell] for cell in column], _heads(forms), A4, large)
    assert sum(layout["tables"]) == forms
    assert max(layout["tables"]) - min(layout["tables"]) <= 1
    assert layout["size"] >= (18 if large else 7)


@settings(max_examples=12, deadline=None)
@given(st.integers(1, 30), st.integers(1, 26), st.sampled_from(["a4", "letter"]))
def test_a_layout_of_one_page_is_one_page_in_print(forms, questions, size):
    chosen = (list(KINDS) * 5)[:questions]
    many = [form_of(*chosen, gate=[1], form=str(n)) for n in range(10, 10 + forms)]
    sheet = Sheet(210, 297) if size == "a4" else Sheet(215.9, 279.4)
    cells = [[Cell(("BCD", "AE*"), True)] for _ in chosen]
    pages = page_texts(_class(*many, paper=size))
    if len(layout_of(cells, _heads(forms), sheet, False)["tables"]) == 1:
        assert len(pages) == 1
