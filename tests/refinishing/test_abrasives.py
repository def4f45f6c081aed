"""Grades against the published table of P and CAMI grades."""

from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from generator.diagnostics import OutsideValidity
from generator.refinishing.abrasives import cami_size, grade_size, grade_step, nearest_p_grade
from generator.refinishing.published_tables import published_table

P_GRADES = tuple(published_table("p_grades_2008").pairs())
CAMI_GRADES = tuple(published_table("cami_grades_2008").pairs())


@pytest.mark.parametrize(
    ("grade", "printed"),
    [(80, "201"), (400, "35.0"), (800, "21.8"), (2000, "10.3"), (1500, "12.6")],
)
def test_mean_size_of_a_p_grade_as_printed(grade, printed):
    # table of P and CAMI grades
    assert grade_size(Fraction(grade)) == Fraction(printed)


@pytest.mark.parametrize(("cami", "size", "nearest"), [(400, "23.0", 800), (240, "53.0", 280)])
def test_a_cami_grade_is_matched_by_size(cami, size, nearest):
    # table of P and CAMI grades; nearest by mean size is our rule
    assert cami_size(Fraction(cami)) == Fraction(size)
    assert nearest_p_grade(Fraction(cami)) == nearest


def test_the_popular_list_that_pairs_240_with_p240_is_a_slip():
    # a list in circulation pairs by number; P280 lies nearer by size
    cami = cami_size(Fraction(240))
    assert abs(grade_size(Fraction(240)) - cami) > abs(grade_size(Fraction(280)) - cami)


@pytest.mark.parametrize(("cami", "other_table"), [(60, 268), (80, 192), (24, 715)])
def test_the_second_tables_cami_sizes_differ_by_less_than_two_percent(cami, other_table):
    # a second published table prints slightly other sizes for these three grades
    size = cami_size(Fraction(cami))
    assert size != other_table
    assert abs(size - other_table) / size < Fraction(2, 100)


@pytest.mark.parametrize(
    ("first", "second", "ratio", "between"),
    [(80, 180, "2.45", 3), (320, 400, "1.32", 1), (400, 800, "1.61", 2)],
)
def test_a_step_between_grades(first, second, ratio, between):
    # sizes from the table of P and CAMI grades
    step = grade_step(Fraction(first), Fraction(second))
    assert abs(step.size_ratio - Fraction(ratio)) <= Fraction("0.005")
    assert step.grades_between == between


def test_the_tables_are_whole_and_get_finer_downward():
    # table of P and CAMI grades: 28 and 20 rows
    for name, rows in (("p_grades_2008", 28), ("cami_grades_2008", 20)):
        pairs = published_table(name).pairs()
        assert len(pairs) == rows
        assert sorted(pairs) == list(pairs)
        assert sorted(pairs.values(), reverse=True) == list(pairs.values())


def test_each_table_says_where_it_was_read():
    for name in ("p_grades_2008", "cami_grades_2008"):
        table = published_table(name)
        assert set(table.remarks) == {"source", "table", "unit", "read"}
        assert table.remarks["source"] == "p_grade_table"
        assert all(len(row) == len(table.columns) for row in table.rows)


@given(st.sampled_from(CAMI_GRADES), st.sampled_from(P_GRADES))
def test_no_p_grade_is_nearer_than_the_one_given(cami, other):
    size = cami_size(cami)
    gap = abs(grade_size(nearest_p_grade(cami)) - size)
    assert gap <= abs(grade_size(other) - size)


@given(st.lists(st.sampled_from(P_GRADES), min_size=3, max_size=3, unique=True))
def test_two_steps_multiply_and_count_up_to_the_whole_step(grades):
    a, b, c = sorted(grades)
    whole, one, two = grade_step(a, c), grade_step(a, b), grade_step(b, c)
    assert whole.size_ratio == one.size_ratio * two.size_ratio
    assert whole.grades_between == one.grades_between + two.grades_between + 1


def test_a_grade_outside_the_table_is_refused_with_its_neighbours():
    with pytest.raises(OutsideValidity, match="P70 is not in the table; the nearest are P60"):
        grade_size(Fraction(70))
    with pytest.raises(OutsideValidity, match="P3000"):
        grade_size(Fraction(3000))


@pytest.mark.parametrize(("first", "second"), [(180, 80), (180, 180)])
def test_a_step_to_a_coarser_grade_is_refused(first, second):
    with pytest.raises(OutsideValidity, match="finer"):
        grade_step(Fraction(first), Fraction(second))
