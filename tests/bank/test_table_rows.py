"""Table rows: from the record itself or from a data file of the relations."""

from pathlib import Path

import pytest

from generator.bank import load_bank
from generator.bank.bank import Entry
from generator.bank.models import Table
from generator.bank.table_rows import table_rows
from tests.bank.small_bank import put, small_project

HEAD = """\
title: Grades
objective: filler/shape
source: common_practice
columns: [{name: Grade, unit: one}, {name: Size, unit: um}]
"""


def table(root: Path, body: str) -> Entry[Table]:
    put(root, "tables/grades.yml", HEAD + body)
    bank, problems = load_bank(root / "question_bank")
    assert problems == ()
    assert bank is not None
    return bank.tables["grades"]


def test_rows_of_a_record_stay_as_typed(tmp_path: Path) -> None:
    entry = table(small_project(tmp_path), "rows: [[80, 201], [010, 1.50]]\n")
    assert table_rows(entry) == (("80", "201"), ("010", "1.50"))


def test_rows_come_from_the_published_table_that_the_record_names(tmp_path: Path) -> None:
    # P-grade mean sizes as published: P80 is 201 micrometres
    entry = table(small_project(tmp_path), "rows_from: p_grades_2008\n")
    assert ("80", "201") in table_rows(entry)


def test_a_table_file_that_is_not_there_is_an_error(tmp_path: Path) -> None:
    entry = table(small_project(tmp_path), "rows_from: nowhere\n")
    with pytest.raises(FileNotFoundError):
        table_rows(entry)
