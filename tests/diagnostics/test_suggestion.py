"""Suggestions: the known name that was most likely meant, and silence where none is near."""

import pytest

from generator.diagnostics import did_you_mean, nearest_name

NAMES = ["wet_film", "dry_film", "coats_needed"]


@pytest.mark.parametrize(
    ("typed", "meant"),
    [
        ("wet_flim", "wet_film"),
        ("wetfilm", "wet_film"),
        ("coat_needed", "coats_needed"),
        ("dry-film", "dry_film"),
    ],
)
def test_a_slip_of_the_fingers_finds_the_name(typed: str, meant: str) -> None:
    assert nearest_name(typed, NAMES) == meant


@pytest.mark.parametrize("typed", ["", "x", "humidity", "zzzzzzzz"])
def test_a_word_far_from_all_names_brings_no_guess(typed: str) -> None:
    assert nearest_name(typed, NAMES) is None
    assert did_you_mean(typed, NAMES) == ""


def test_a_hint_is_a_question_with_the_name_in_it() -> None:
    assert did_you_mean("wet_flim", NAMES) == "did you mean 'wet_film'?"


def test_the_guess_does_not_depend_on_the_order_of_the_names() -> None:
    assert nearest_name("bat", ["cat", "hat"]) == nearest_name("bat", ["hat", "cat"])


def test_no_known_names_bring_no_guess() -> None:
    assert nearest_name("wet_film", []) is None
