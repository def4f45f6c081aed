"""Places: how they are written, ordered and moved."""

import pytest

from generator.diagnostics import Place


def test_a_place_is_written_as_path_line_column() -> None:
    assert str(Place("question_bank/glossary.yml", 12, 3)) == "question_bank/glossary.yml:12:3"


def test_a_shifted_place_keeps_its_line() -> None:
    assert Place("a.yml", 2, 5).shifted(7) == Place("a.yml", 2, 12)


def test_places_sort_by_number_and_not_by_digits() -> None:
    places = [
        Place("b.yml", 1, 1),
        Place("a.yml", 10, 1),
        Place("a.yml", 2, 11),
        Place("a.yml", 2, 9),
    ]
    assert [str(place) for place in sorted(places)] == [
        "a.yml:2:9",
        "a.yml:2:11",
        "a.yml:10:1",
        "b.yml:1:1",
    ]


def test_a_place_cannot_be_changed() -> None:
    place = Place("a.yml", 1, 1)
    with pytest.raises(AttributeError):
        place.line = 2  # type: ignore[misc]
