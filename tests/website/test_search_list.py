"""The search list holds lessons, terms, procedures and faults, and never a question."""

import json
from dataclasses import replace
from pathlib import Path
from typing import Any

import pytest

from generator.bank import Bank
from generator.website.context.course import Course
from generator.website.context.page_context import BuiltPage, PageSection
from generator.website.pages.search_entries import lesson_entries, other_names
from generator.website.pages.search_pages import LIST
from generator.website.pages.site import build_site
from tests.real import real_bank
from tests.website.small_course import small_course

ROOT = Path(__file__).parents[2]
THEME = ROOT / "site_theme"
START = '"use strict";\nvar guidecoatSearchList = '


def search_list(course: Course) -> dict[str, Any]:
    """Build a course and read its list back."""
    (text,) = (file.text for file in build_site(course, THEME).files if file.path == LIST)
    return read_list(text)


def read_list(text: str) -> dict[str, Any]:
    """Read the list out of its script."""
    assert text.startswith(START)
    found: dict[str, Any] = json.loads(text.removeprefix(START).rstrip().removesuffix(";"))
    return found


@pytest.fixture(scope="module")
def small() -> dict[str, Any]:
    """Read the list of the small course."""
    return search_list(small_course())


@pytest.fixture(scope="module")
def real(real_site: Path) -> str:
    """Return the list of the real course as text."""
    return json.dumps(read_list((real_site / LIST).read_text("utf-8")), ensure_ascii=False)


@pytest.fixture(scope="module")
def bank() -> Bank:
    """Return the real bank."""
    return real_bank()


def entry(found: dict[str, Any], title: str) -> list[str]:
    """Find an entry by its title."""
    (one,) = (entry for entry in found["entries"] if entry[1] == title)
    return list(one)


def test_each_kind_of_thing_is_listed_with_its_place(small: dict[str, Any]) -> None:
    kinds = {(one[0], one[2]) for one in small["entries"]}
    assert {
        ("Fault", "faults.html#popping"),
        ("Procedure", "procedures.html#wet_check"),
        ("Glossary", "glossary.html#solvent_trap"),
        ("Lesson", "film_build.html"),
        ("Lesson", "film_build.html#why-it-matters"),
    } <= kinds


def test_a_lesson_is_cut_at_its_headings_and_keeps_its_cautions(small: dict[str, Any]) -> None:
    why = entry(small, "Why it matters")
    assert why[3] == "Film build"
    assert "A thin film wears through." in why[5]
    assert "Air-fed protection stays on until the booth is clear." in why[5]


def test_cards_and_questions_inside_a_lesson_are_left_out(small: dict[str, Any]) -> None:
    lessons = " ".join(one[5] for one in small["entries"] if one[0] == "Lesson")
    for words in ("What do you do before", "A gauge drifts", "Push the comb", "Pin-size domes"):
        assert words not in lessons


def test_a_part_without_words_is_no_entry_and_the_others_have_their_address() -> None:
    parts = (
        PageSection("X", "", "Before all."),
        PageSection("A", "a", "kept kept too"),
        PageSection("Cards", "cards", ""),
    )
    first, second = lesson_entries(BuiltPage("x.html", "", "X", "lesson", sections=parts))
    assert (first.title, first.address, first.place) == ("X", "x.html", "")
    assert (second.text, second.address, second.place) == ("kept kept too", "x.html#a", "X")


def test_a_fault_is_found_by_its_other_names(small: dict[str, Any]) -> None:
    assert entry(small, "Solvent popping")[4] == "boil"
    assert ["boil", "Solvent popping"] in small["names"]


def test_a_remark_in_brackets_is_no_part_of_a_name() -> None:
    course = small_course()
    term = course.terms["solvent_trap"].model_copy(update={"other_names": ("trap (slang)",)})
    names = other_names(replace(course, terms={"solvent_trap": term}))
    assert ("trap", "Trapped solvent") in names


def test_no_stem_of_any_item_is_in_the_list(real: str, bank: Bank) -> None:
    stems = {name: entry.record.stem[:60] for name, entry in bank.items.items()}
    assert len(stems) > 200
    assert [name for name, stem in stems.items() if stem in real] == []


def test_every_fault_term_and_procedure_is_in_the_list(real: str, bank: Bank) -> None:
    wanted = {
        *(f"faults.html#{name}" for name in bank.faults),
        *(f"procedures.html#{name}" for name in bank.procedures),
        *(f"glossary.html#{name}" for name in bank.glossary),
    }
    assert {address for address in wanted if f'"{address}"' not in real} == set()
