"""Text of the bank is printed as text: the typesetter never runs it."""

import string

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from generator.printing import answer_key, question_paper
from tests.printing.form_for_tests import CHOICE, NUMERIC, WRITTEN, form_of
from tests.printing.pdf_reading import FONTS, squeezed, whole_text

# Every mark that opens code, maths, emphasis, raw text, labels or comments in the typesetter.
HOSTILE = (
    '#panic("x")',
    "#let a = 1; #a",
    '#read("common.typ")',
    '#import "nodes.typ": *',
    "$x^2$",
    "*bold* _soft_ `raw`",
    "@ref <label> [content]",
    "= heading",
    "/* gone */ // gone",
    "\\ \\u{41} ~ -- ---",
    "} ] ) #}",
    "<script>alert(1)</script>",
    "- - 1. + /",
)


def _escaped(text):
    return "".join(f"\\{mark}" if mark in string.punctuation else mark for mark in text)


def _paper_with(text):
    option = {"letter": "A", "text": _escaped(text), "right": True, "says": "-"}
    question = CHOICE | {
        "stem": f"{_escaped(text)}?",
        "key": {"options": [option, option | {"letter": "B"}]},
        "sheet": {"title": _escaped(text), "rows": [[_escaped(text), _escaped(text)]]},
        "caution": _escaped(text),
    }
    form = form_of(question, title=text, seed=text)
    return squeezed(whole_text(question_paper(form, paper="a4", fonts=FONTS)))


@pytest.mark.parametrize("text", HOSTILE)
def test_marks_of_the_typesetter_come_out_literally(text):
    shown = _paper_with(text)
    # Title, seed, stem, two options, three cells and the caution.
    assert shown.count(squeezed(text)) == 9


@pytest.mark.parametrize("text", HOSTILE)
def test_working_and_sources_come_out_literally(text):
    question = NUMERIC | {
        "sources": [{"tag": "published", "text": text, "key": "k"}],
        "key": NUMERIC["key"] | {"working": [text], "band_text": text, "shown": text},
    }
    shown = whole_text(answer_key(form_of(question), paper="a4", fonts=FONTS))
    # Source, working, key and band, and both again in the list at the top.
    assert squeezed(shown).count(squeezed(text)) == 6


@settings(max_examples=25, deadline=None)
@given(st.text(alphabet="ab1 #$*_@[](){}<>\\`~=+-/|^&%!?.,:;'\"µ", min_size=1, max_size=30))
def test_no_mixture_of_marks_is_ever_run(text):
    question = NUMERIC | {"key": NUMERIC["key"] | {"working": [f"w{text}w"]}}
    shown = whole_text(answer_key(form_of(question), paper="a4", fonts=FONTS))
    assert squeezed(f"w{text}w") in squeezed(shown)


@settings(max_examples=15, deadline=None)
@given(st.text(alphabet="ab1 #$*_@[](){}<>\\`~=+-/|^&%!?.,:;'\"µ", min_size=1, max_size=30))
def test_unescaped_marks_in_a_stem_never_stop_the_paper(text):
    form = form_of(CHOICE | {"stem": f"start {text} end"}, CHOICE | {"stem": text})
    shown = whole_text(question_paper(form, paper="a4", fonts=FONTS))
    assert "Question 1" in shown
    assert "Question 2" in shown


def test_texts_of_many_paragraphs_print_everywhere_and_block_marks_are_letters():
    lines = ("One.", "Two:", "- three\n- four", "> seven", "# eight", "| nine |\n|---|")
    text, shown = "\n\n".join(lines), squeezed(" ".join(lines))
    number = NUMERIC | {"stem": text, "caution": text}
    number["key"] = NUMERIC["key"] | {"says": text}
    written = WRITTEN | {"key": WRITTEN["key"] | {"model": text}}
    form = form_of(number, written, cautions=[text + "\n\nFor all."])
    on_paper = whole_text(question_paper(form, paper="a4", fonts=FONTS))
    on_key = whole_text(answer_key(form, paper="a4", fonts=FONTS))
    # Form caution, stem and caution; then stem, caution, feedback and model answer.
    assert squeezed(on_paper).count(shown) == 3
    assert squeezed(on_key).count(shown) == 4
