"""The order in which test processes take files is one of files that are there."""

from pathlib import Path

from tests.conftest import LONGEST_FIRST
from tests.readme_parts import README

HERE = Path(__file__).parent


def test_every_file_that_comes_first_is_there_and_named_once() -> None:
    assert [name for name in LONGEST_FIRST if not (HERE / name).is_file()] == []
    assert len(set(LONGEST_FIRST)) == len(LONGEST_FIRST)


def test_the_readme_runs_the_tests_side_by_side() -> None:
    assert README.count("-m pytest -n auto\n") == 1
