"""The strip shows each question as a patch, and the words say the same."""

import re
from fractions import Fraction
from xml.etree import ElementTree

from hypothesis import given
from hypothesis import strategies as st

from generator.reports.person.panel_strip import PATCH_WIDTH, SPECKS, panel_in_words, panel_strip
from tests.reports.toy_forms import answer

SVG = "{http://www.w3.org/2000/svg}"


def shapes(svg, kind):
    """Return the shapes of a class."""
    return [e for e in ElementTree.fromstring(svg).iter() if e.get("class") == kind]


def specks(svg):
    """Count the specks of mist."""
    return sum(len(re.findall("M", s.get("d"))) for k in ("fine", "coarse") for s in shapes(svg, k))


def test_a_right_answer_is_clean_and_a_wrong_one_under_mist():
    svg = panel_strip([answer(1, 1), answer(2, 0)])
    assert len(shapes(svg, "clean")) == 1
    assert len(shapes(svg, "primer")) == 1
    assert specks(svg) == SPECKS


def test_mist_thins_with_the_share_that_was_right():
    assert specks(panel_strip([answer(1, Fraction(2, 3))])) == SPECKS // 3


def test_what_is_left_out_or_waits_is_neither_clean_nor_misted():
    svg = panel_strip([answer(1, 0, status="illegible"), answer(2, 1, findings={"left_out": True})])
    assert len(shapes(svg, "open")) == 2
    assert specks(svg) == 0 and not shapes(svg, "clean")


SHARES = st.fractions(0, 1, max_denominator=6)


@given(st.lists(st.tuples(SHARES, st.sampled_from(["", "illegible", "blank"])), min_size=1))
def test_each_question_is_one_patch_inside_the_picture_and_once_in_the_words(rows):
    answers = [
        answer(n, 0 if status else share, status=status)
        for n, (share, status) in enumerate(rows, 1)
    ]
    svg = panel_strip(answers)
    assert panel_strip(answers) == svg
    width = PATCH_WIDTH * len(answers)
    assert ElementTree.fromstring(svg).get("viewBox").split()[2] == str(width)
    patches = [shape for kind in ("clean", "primer", "open") for shape in shapes(svg, kind)]
    assert sorted(int(p.get("x")) for p in patches) == list(range(0, width, PATCH_WIDTH))
    numbers = [int(n) for n in re.findall(r"\d+", panel_in_words(answers))]
    assert sorted(numbers) == [a.number for a in answers]


def test_the_words_name_the_numbers_by_what_they_came_to():
    answers = [answer(1, 1), answer(2, Fraction(1, 2)), answer(3, 0), answer(4, 0, status="blank")]
    assert panel_in_words(answers) == "Clean: 1. Thin mist: 2. Mist: 3, 4."
