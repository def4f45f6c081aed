"""`guidecoat mark` with the files that the page to answer on a screen saves."""

import json
from pathlib import Path

import pytest

from generator.marking import response_as_plain
from tests.command_line.marking_project import (
    kept,
    marked,
    marking_project,
    refused,
    row,
    table,
    verdicts,
)
from tests.marking.small_forms import ANN, BOB, RIGHT, small_form
from tests.records.small_disk import small_disk as small_disk

A, B, C = (small_form(label)["form_id"] for label in "ABC")


@pytest.fixture
def shop(tmp_path: Path) -> Path:
    return marking_project(tmp_path / "shop")


def page_file(shop: Path, name: str = "ann.json", **changes: object) -> str:
    """Write what a page saves and give its name."""
    saved = {
        "kind": "guidecoat answers",
        "version": 1,
        "form_id": A,
        "label": "A",
        "edition": "1",
        "person": ANN,
        "responses": {str(n): response_as_plain(r) for n, r in RIGHT.items() if n != 6},
        "written": {"6": "First mask\nthen paint"},
        "minutes_used": 12,
        "minutes_over": 0,
    }
    (shop / name).write_text(json.dumps(saved | changes), "utf-8")
    return name


def test_a_file_of_the_page_is_marked_and_its_written_answer_shown_to_the_marker(
    shop: Path,
) -> None:
    said = marked(shop, page_file(shop)).stdout
    assert "10 of 14 marks, not finished" in said
    assert "    give the marks: question 6 written, not marked yet\n" in said
    assert "      6: First mask\n" in said
    assert "      6: then paint\n" in said
    marked(shop, table(shop, row("A", "", "", "", "", "", "2 1 1")))
    assert verdicts(shop) == {f"A {ANN}": "passed"}


def test_time_that_was_overrun_is_told_and_a_mistyped_code_is_put_right(shop: Path) -> None:
    name = page_file(shop, form_id=C, label="C", person="Ann", minutes_over=3, minutes_used=43)
    assert "'Ann' is not in the records" in refused(shop, name)
    said = marked(shop, name, "--person", ANN).stdout
    assert "    answered 3 minutes past its time\n" in said
    assert list(kept(shop)) == [f"C {ANN}"]


@pytest.mark.parametrize(
    ("changes", "said"),
    [
        ({"form_id": "7KQ2M4ZZ", "label": "Z"}, "no form '7KQ2M4ZZ' was issued"),
        ({"person": BOB}, f"was made for '{ANN}', not for '{BOB}'"),
        (
            {"responses": {"1": {"form": "chosen", "letters": ["E"]}}},
            "question 1 of form A: the question has no 'E'",
        ),
        (
            {"responses": {"9": {"form": "chosen", "letters": ["A"]}}},
            "form A has no question 9",
        ),
        ({"responses": {"1": {"form": "typed", "text": "5"}}}, "takes marked options"),
    ],
)
def test_a_file_of_the_page_that_is_not_of_its_form_is_refused(
    shop: Path, changes: dict[str, object], said: str
) -> None:
    error = refused(shop, page_file(shop, **changes))
    assert "ann.json:1:1: error: " in error
    assert said in error
