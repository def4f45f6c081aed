"""Pages are plain text from plain data: complete, linked, safe and the same every time."""

import json
import re
from dataclasses import replace
from html.parser import HTMLParser
from pathlib import Path

import pytest

from generator.website.context.page_context import BuiltPage
from generator.website.pages.site import Site, build_site
from generator.website.questions.marking_data import marking_data
from tests.some import some
from tests.website.small_course import small_course
from tests.website.small_questions import CHOICE, ORDER

THEME = Path(__file__).parents[2] / "site_theme"
FRAME = THEME / "blocks" / "caution_symbol.html"


class Reader(HTMLParser):
    """Collects what the tests ask about."""

    def __init__(self) -> None:
        super().__init__()
        self.ids: list[str] = []
        self.links: list[str] = []
        self.attributes: set[str] = set()
        self.tags: list[str] = []
        self.references: list[str] = []

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        """Note the element."""
        self.tags.append(tag)
        for name, value in attrs:
            self.attributes.add(name)
            if name == "id":
                self.ids.append(value or "")
            if name == "href":
                self.links.append(value or "")
            if name in ("aria-labelledby", "aria-describedby", "for"):
                self.references.extend((value or "").split())


def read(page: BuiltPage) -> Reader:
    """Read a page; what stands in its templates is left out, as a browser does."""
    reader = Reader()
    reader.feed(re.sub(r"<template.*?</template>", "", page.html, flags=re.DOTALL))
    return reader


@pytest.fixture(scope="module")
def site() -> Site:
    """Build the small course."""
    return build_site(small_course(), THEME)


def page_named(site: Site, path: str) -> BuiltPage:
    """Find a page."""
    return next(page for page in site.pages if page.path == path)


def test_the_small_course_has_no_problems(site: Site) -> None:
    assert site.problems == ()


def test_every_link_leads_to_a_page_and_a_place_that_exist(site: Site) -> None:
    frame = set(re.findall(r'id="([^"]*)"', FRAME.read_text("utf-8")))
    assert frame == {"caution-sign"}
    places = {page.path: {*read(page).ids, *frame} for page in site.pages}
    lost = []
    for page in site.pages:
        for link in read(page).links:
            path, _, place = link.partition("#")
            target = path or page.path
            if target not in places or (place and place not in places[target]):
                lost.append(f"{page.path}: {link}")
    assert lost == []


def test_ids_are_unique_and_every_reference_has_its_element(site: Site) -> None:
    for page in some(site.pages):
        found = read(page)
        assert len(found.ids) == len(set(found.ids)), page.path
        assert set(found.references) <= set(found.ids), page.path


def test_no_page_carries_style_or_script_that_the_policy_forbids(site: Site) -> None:
    for page in some(site.pages):
        found = read(page)
        assert "style" not in found.attributes, page.path
        assert "style" not in found.tags, page.path
        assert not {name for name in found.attributes if name.startswith("on")}, page.path
        scripts = re.findall(r"<script[^>]*>", page.html)
        assert all('type="application/json"' in script for script in scripts), page.path


def test_the_same_course_gives_the_same_bytes() -> None:
    assert build_site(small_course(), THEME) == build_site(small_course(), THEME)


def test_a_lesson_shows_each_record_once_stated(site: Site) -> None:
    lesson = page_named(site, "film_build.html").html
    for expected in (
        "Push the comb square into the wet film",
        "<strong>1 before 2.</strong>",
        "Pin-size domes",
        "There before colour goes on",
        "Dry film, µm",
        "wet film = 70",
        "128.33",
        "USAF TO 1-1-8, 6.3",
        "Read in the document itself.",
        "What do you do <strong>before</strong>",
    ):
        assert expected in lesson
    assert "<!--" not in lesson


def test_sources_say_in_words_how_well_they_are_known(site: Site) -> None:
    words = page_named(site, "sources.html").html
    assert "Read in the document itself." in words
    assert "Read where another text repeats it." in words


def test_cautions_of_lessons_and_procedures_are_gathered(site: Site) -> None:
    words = page_named(site, "cautions.html").html
    assert words.count("Have the air moving before the can is open.") == 1
    assert "Go out to fresh air." in words
    assert "Air-fed protection stays on" in words
    assert "Keep breathing protection on while the film is wet." in words


@pytest.mark.parametrize(
    ("lesson", "rule", "line"),
    [
        ("# Film\n\n```procedure nothing\n```\n", "lesson-block", 3),
        ("# Film\n\n```oops\n```\n", "lesson-block", 3),
        ("# Film\n\n\nSee [this](term:nothing).\n", "lesson-link", 4),
        ("# Film\n\n[away](https://example.org)\n", "lesson-link", 3),
        ("No heading at all.\n", "lesson-title", 1),
        ("# Film\n\n```worked wet_film\ndry_film: 70 kg\n```\n", "worked-example", 3),
        ("# Film\n\n```worked wet_film\nfilm: 70 um\n```\n", "worked-example", 3),
        ("# Film\n\n```question film_build/nothing/here\n```\n", "lesson-block", 3),
        ("# Film\n\n```figure nothing\n```\n", "lesson-block", 3),
    ],
)
def test_what_a_lesson_gets_wrong_is_reported_at_its_line(
    lesson: str, rule: str, line: int
) -> None:
    course = replace(small_course(), lessons={"film_build": lesson})
    problems = [p for p in build_site(course, THEME).problems if p.rule == rule]
    assert [(p.place.path, p.place.line) for p in problems] == [("course/film_build.md", line)]


def test_markup_in_a_question_cannot_become_a_script() -> None:
    evil = "<script>alert(1)</script> & <b>bold</b>"
    bad = {**CHOICE, "stem": evil}
    course = replace(small_course(), questions={"film_build": ((bad,),)})
    html = page_named(build_site(course, THEME), "film_build-questions.html").html
    assert "<script>alert" not in html
    assert "&lt;script&gt;alert(1)&lt;/script&gt; &amp; &lt;b&gt;bold" in html


def test_marking_data_holds_no_words_of_feedback() -> None:
    assert marking_data((ORDER,)) == {
        "variants": [
            {
                "kind": "order",
                "steps": "ABCD",
                "pairs": [
                    {"first": "B", "then": "A", "danger": True},
                    {"first": "A", "then": "C", "danger": False},
                    {"first": "C", "then": "D", "danger": False},
                ],
            }
        ]
    }


def test_marking_data_in_the_page_is_json_of_every_variant(site: Site) -> None:
    html = page_named(site, "film_build-questions.html").html
    blocks = re.findall(r'<script type="application/json">(.*?)</script>', html)
    kinds = [json.loads(block)["variants"][0]["kind"] for block in blocks]
    counts = [len(json.loads(block)["variants"]) for block in blocks]
    assert sorted(kinds) == [
        "choice",
        "match",
        "multiple_response",
        "numeric",
        "numeric",
        "order",
        "written",
    ]
    assert sorted(counts) == [1, 1, 1, 1, 1, 1, 3]


def test_pages_of_a_module_lead_to_one_another(site: Site) -> None:
    lesson = page_named(site, "film_build.html")
    questions = page_named(site, "film_build-questions.html")
    assert lesson.before is None
    assert lesson.after == (questions.path, questions.title)
    assert questions.before == (lesson.path, lesson.title)
