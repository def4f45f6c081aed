"""Tables of the question bank agree with the relations and the files behind them."""

from fractions import Fraction
from pathlib import Path

import pytest
import yaml

from generator.refinishing.abrasives import cami_size, grade_size
from generator.refinishing.mixing_percent import parts_to_reduction
from generator.refinishing.published_tables import published_table

TABLES = Path(__file__).parents[2] / "question_bank" / "tables"


def table(name):
    return yaml.load((TABLES / f"{name}.yml").read_text("utf-8"), yaml.BaseLoader)


@pytest.mark.parametrize(
    ("name", "size"), [("abrasive_grades_p", grade_size), ("abrasive_grades_cami", cami_size)]
)
def test_grade_tables_show_the_file_the_relations_read(name, size):
    # table of P and CAMI abrasive grades
    record = table(name)
    published = published_table(record["rows_from"])
    assert [column["name"] for column in record["columns"]] == list(published.columns)
    assert record["source"].startswith(published.remarks["source"])
    for grade, printed in published.rows:
        assert size(Fraction(grade)) == Fraction(printed)


def test_parts_and_percentages_mean_the_same_thinning():
    # arithmetic, to the one decimal that the table shows
    rows = table("percent_equivalents")["rows"]
    assert len(rows) == 7
    for parts, of_base, of_mix in rows:
        found = parts_to_reduction(*(Fraction(part) for part in parts.split(":")))
        for exact, shown in zip(found, (of_base, of_mix), strict=True):
            assert abs(exact - Fraction(shown)) <= Fraction("0.05")


def test_transfer_efficiency_ranges_are_those_of_the_best_practice_page():
    # EPA Design for the Environment, auto refinishing best practices
    rows = {gun: (low, high) for gun, low, high in table("transfer_efficiency")["rows"]}
    assert rows["High volume low pressure gun"] == ("60", "70")
    assert rows["Conventional gun"] == ("20", "30")


def test_a_table_that_is_not_there_is_reported_as_missing():
    with pytest.raises(FileNotFoundError):
        published_table("p_grades_1066")
