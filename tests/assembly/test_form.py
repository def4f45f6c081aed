"""A form: marks of each kind, pass marks that round up, and its plain data."""

import json
from dataclasses import replace
from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from generator.assembly import build_forms, form_as_plain
from generator.assembly.forms.form import Form, FormQuestion, marks_of
from generator.questions import askables
from tests.assembly.small_papers import papers, plan
from tests.questions.small_bank import FULL, bank_of


@pytest.fixture(scope="module")
def questions(tmp_path_factory):
    bank = bank_of(tmp_path_factory.mktemp("bank"), FULL)
    return {a.name: a.make("A", ()) for a in askables(bank)}


@pytest.fixture(scope="module")
def form(tmp_path_factory):
    cells = ("{module: filler, count: 4}", "{module: cleaning, count: 2}")
    drawn = papers(tmp_path_factory.mktemp("form"), plan(*cells, pass_percent=75))
    return build_forms(*drawn, "spring", ("A",))[0]


@pytest.mark.parametrize(
    ("name", "marks"),
    [
        ("film_build/films/wet", 2),
        ("cleaning/wash/first", 1),
        ("filler/mix/safe", 2),
        ("cleaning/wash/order", 2),
        ("filler/shape/papers", 3),
        ("filler/mix/why", 3),
        ("procedures/mix_filler/order", 2),
        ("faults/sags/name", 1),
        ("tables/grades/look_up", 2),
    ],
)
def test_marks_follow_the_kind_and_count_pairs_and_points(questions, name, marks):
    assert marks_of(questions[name]) == marks


def with_marks(form, *marks, pass_percent):
    entries = tuple(
        FormQuestion(n, m, form.questions[0].question) for n, m in enumerate(marks, start=1)
    )
    return replace(form, questions=entries, pass_percent=pass_percent)


@pytest.mark.parametrize(
    ("marks", "pass_percent", "needed"),
    [((10,), 80, 8), ((11,), 80, 9), ((10, 3), 75, 10), ((1,), 1, 1), ((7,), 100, 7), ((7,), 0, 0)],
)
def test_part_marks_of_the_pass_mark_round_up(form, marks, pass_percent, needed):
    assert with_marks(form, *marks, pass_percent=pass_percent).pass_marks == needed


@given(st.lists(st.integers(1, 5), min_size=1, max_size=30), st.integers(0, 100))
def test_the_pass_mark_is_the_fewest_whole_marks_that_reach_the_percent(form, marks, pass_percent):
    paper = with_marks(form, *marks, pass_percent=pass_percent)
    assert paper.marks == sum(marks)
    assert Fraction(paper.pass_marks, paper.marks) >= Fraction(pass_percent, 100)
    assert paper.pass_marks == 0 or (
        Fraction(paper.pass_marks - 1, paper.marks) < Fraction(pass_percent, 100)
    )


def test_the_plain_form_holds_everything_paper_and_key_need(form):
    plain = form_as_plain(form)
    assert json.loads(json.dumps(plain)) == plain
    assert plain["marks"] == sum(entry["marks"] for entry in plain["questions"])
    assert plain["pass_marks"] == form.pass_marks
    assert plain["form"] == "A"
    assert [entry["number"] for entry in plain["questions"]] == [1, 2, 3, 4, 5, 6]


def test_every_caution_of_the_paper_stands_once_at_its_head(form):
    plain = form_as_plain(form)
    shown = [entry["question"]["caution"] for entry in plain["questions"]]
    assert plain["cautions"] == list(dict.fromkeys(caution for caution in shown if caution))
    assert len(plain["cautions"]) == len(set(plain["cautions"]))


def test_the_constants_are_the_exact_ones_to_the_figures_shown(form):
    # 1 in = 25.4 mm, 1 US gallon = 231 cubic inches, 1 Imperial gallon = 4.54609 L
    # (NIST SP 811, appendix B); 231 cubic inches spread 0.001 inch thin, in square feet
    text = " ".join(form_as_plain(form)["constants"])
    assert "25.4 µm" in text
    assert f"{231 * 2.54**3 / 1000:.3f} L" in text
    assert f"{4.54609:.3f} L" in text
    assert f"{231 / 0.001 / 144:,.0f}" in text


def test_a_form_is_not_changed_after_it_is_built(form):
    assert isinstance(form, Form)
    with pytest.raises(AttributeError):
        form.label = "B"
