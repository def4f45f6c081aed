"""Question data comes in small parts: complete, light, and no heavier with ten times the bank."""

import gzip
import json
from dataclasses import replace
from itertools import pairwise
from pathlib import Path
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from generator.bank.models import Module
from generator.website.context.course import Course, Question, Variants
from generator.website.context.page_context import BuiltPage, SiteFile
from generator.website.context.site_context import SiteContext
from generator.website.questions.methods import method_of, relations_of_items
from generator.website.questions.packing import packed
from generator.website.questions.question_pages import question_pages
from generator.website.questions.question_parts import part_files, parts_index
from generator.website.questions.written_questions import ModuleQuestions, written_questions
from tests.real import real_bank, real_course
from tests.some import some
from tests.website.small_course import small_course
from tests.website.small_questions import CHOICE, WET_FILM

ROOT = Path(__file__).parents[2]
THEME = ROOT / "site_theme"
MOST_OF_A_MODULE = 60_000
MOST_OF_A_PART = 9_000
MOST_PLAIN, FRAME = 150_000, 4_000
MOST_OBJECTIVES_ASKED = 10


@pytest.fixture(scope="module")
def course() -> Course:
    """Read the real course once."""
    return real_course()


def times_ten(course: Course, name: str) -> Course:
    """Return a module ten times its questions, each copy with words of its own."""
    copies = tuple(
        tuple(
            {**question, "id": f"{question['id']}_{turn}", "stem": f"{question['stem']} ({turn})"}
            for question in variants
        )
        for turn in range(10)
        for variants in course.questions[name]
    )
    return replace(course, questions={**course.questions, name: copies})


def made(course: Course, module: Module) -> tuple[tuple[BuiltPage, ...], tuple[SiteFile, ...]]:
    """Build the question pages and the parts of a module."""
    desk = SiteContext(course, THEME)
    written = written_questions(module, desk)
    pages = question_pages(module, desk, written)
    assert desk.problems == []
    return pages, part_files(course, written)


def written(course: Course, module: Module) -> ModuleQuestions:
    """Write the questions of a module."""
    return written_questions(module, SiteContext(course, THEME))


def packed_size(text: str) -> int:
    """Return the size as it travels."""
    return len(gzip.compress(text.encode(), mtime=0))


def held(file: SiteFile) -> tuple[str, list[dict[str, Any]]]:
    """Read a part back: its name and its questions."""
    name, _, text = file.text.removeprefix("Guidecoat.parts[").partition("]=")
    found: list[dict[str, Any]] = json.loads(text.removesuffix(";\n"))
    return json.loads(name), found


def test_every_question_a_page_can_mark_is_in_exactly_one_part(course: Course) -> None:
    for module in course.taught_modules():
        _, files = made(course, module)
        found = [question["id"] for file in files for question in held(file)[1]]
        marked = [
            variants[0]["id"]
            for variants in course.questions.get(module.module, ())
            if variants[0]["kind"] != "written" and not course.is_theirs(variants[0])
        ]
        assert sorted(found) == sorted(marked)
    assert any(course.is_theirs(v[0]) for asked in course.questions.values() for v in asked)


def test_a_part_is_named_by_its_file_and_its_first_item_stands_in_the_index(
    course: Course,
) -> None:
    for module in some(course.taught_modules()):
        _, files = made(course, module)
        index = parts_index(course, {module.module: written(course, module)})
        named = {
            f"{entry['objective']}/{number}": first
            for entry in index["objectives"]
            for number, first in enumerate(entry["parts"], start=1)
        }
        for file in files:
            name, questions = held(file)
            objective, _, number = name.rpartition("/")
            assert file.path == f"parts/{objective}-{number}.js"
            assert named.pop(name) == questions[0]["id"]
            assert [q["id"] for q in questions] == sorted(q["id"] for q in questions)
        assert named == {}


def test_a_module_and_what_a_check_loads_stay_light(course: Course) -> None:
    for module in some(course.taught_modules()):
        pages, files = made(course, module)
        for page in pages:
            assert packed_size(page.html) <= MOST_OF_A_MODULE, page.path
            assert len(page.html.encode()) <= MOST_PLAIN - FRAME, page.path
        sizes = sorted((packed_size(file.text) for file in files), reverse=True)
        assert all(size <= MOST_OF_A_PART for size in sizes)
        assert sum(sizes[:MOST_OBJECTIVES_ASKED]) <= MOST_OF_A_MODULE, module.module


@pytest.mark.parametrize("name", ["film_build", "primers"])
def test_ten_times_the_bank_leaves_pages_and_parts_as_heavy_as_they_were(
    course: Course, name: str
) -> None:
    module = course.module_named(name)
    assert module is not None
    pages, files = made(times_ten(course, name), module)
    assert len(pages) >= 5
    assert max(packed_size(page.html) for page in pages) <= MOST_OF_A_MODULE
    assert max(packed_size(file.text) for file in files) <= MOST_OF_A_PART
    asked = sum(page.html.count('data-item="') for page in pages)
    assert asked == 10 * len(course.questions[name])


def test_sheets_of_a_long_module_lead_on_and_every_objective_is_found_on_one(
    course: Course,
) -> None:
    module = course.module_named("film_build")
    assert module is not None
    long = times_ten(course, "film_build")
    pages, _ = made(long, module)
    by_path = {page.path: page.html for page in pages}
    assert list(by_path)[:2] == ["film_build-questions.html", "film_build-questions-2.html"]
    for one, following in pairwise(pages):
        assert f'href="{following.path}"' in one.html
    places = [place for _, place in written(long, module).places(module.module).values()]
    assert len({place.partition("#")[0] for place in places}) > 1
    for place in places:
        path, _, anchor = place.partition("#")
        assert f'<h2 id="{anchor}">' in by_path[path]


@given(sizes=st.lists(st.integers(1, 40), max_size=12), most=st.integers(300, 2000))
def test_packing_keeps_order_and_fills_no_run_beyond_its_bound(sizes: list[int], most: int) -> None:
    items = [({"id": str(n), "text": "x" * 100 * size},) for n, size in enumerate(sizes)]

    def weight(variants: Variants) -> int:
        return len(variants[0]["text"])

    runs = packed(items, most, weight)
    assert [item for run in runs for item in run] == items
    for run in runs:
        assert len(run) == 1 or sum(weight(item) for item in run) <= most
    for one, following in pairwise(runs):
        assert sum(weight(item) for item in one) + weight(following[0]) > most


def test_the_method_is_the_relation_the_record_or_else_the_objective() -> None:
    relations = {"film_build/dry_from_wet/target": "wet_film"}
    assert method_of(WET_FILM[0], relations) == "wet_film"
    assert method_of(CHOICE, relations) == "film_build/read_gauges"
    derived: Question = {**CHOICE, "id": "procedures/wet_check/order"}
    assert method_of(derived, relations) == "procedures/wet_check"


def test_every_numeric_item_that_calls_a_relation_has_it_as_its_method(course: Course) -> None:
    found = relations_of_items(real_bank())
    assert found["film_build/dry_from_wet/wet_film_for_target"] == "wet_film"
    assert len(found) > 100


def test_an_objective_without_questions_to_mark_has_no_part(course: Course) -> None:
    module = course.modules[0]
    question = {**CHOICE, "kind": "written", "module": module.module}
    alone = replace(course, questions={module.module: ((question,),)})
    found = written(alone, module)
    assert found.parts == {}
    assert parts_index(alone, {module.module: found}) == {"modules": {}, "objectives": []}


def test_a_rule_of_another_place_stands_on_its_page_and_in_no_check() -> None:
    theirs = {**CHOICE, "id": CHOICE["id"] + "_theirs", "place": "Great Britain"}
    ours = {**CHOICE, "id": CHOICE["id"] + "_ours", "place": "United States"}
    small = replace(small_course(), places=("United States",))
    small = replace(small, questions={"film_build": ((CHOICE,), (theirs,), (ours,))})
    module = small.modules[0]
    found = written(small, module)
    asked = [v[0]["id"] for runs in found.parts.values() for run in runs for v in run]
    assert sorted(asked) == sorted([CHOICE["id"], ours["id"]])
    assert "Whose rule: Great Britain. Your shop has its own." in found.html[theirs["id"]]
    assert "Whose rule: United States." in found.html[ours["id"]]
    assert "Whose rule" not in found.html[str(CHOICE["id"])]
