"""A page tells each hazard in full once, and names it where it comes up again."""

import re
from dataclasses import replace
from pathlib import Path

from generator.website.context.caution_boxes import caution_box
from generator.website.context.page_context import PageContext
from generator.website.context.site_context import SiteContext
from generator.website.pages.lesson_pages import lesson_page
from tests.website.small_course import small_course

THEME = Path(__file__).parents[2] / "site_theme"
FULL = "Have the air moving before the can is open."
OWN = "Keep breathing protection on while the film is wet."


def lesson(text: str) -> tuple[str, SiteContext]:
    desk = SiteContext(replace(small_course(), lessons={"film_build": text}), THEME)
    return lesson_page("film_build", desk)[0].html, desk


def test_a_box_tells_a_hazard_in_full_once_and_names_it_after_that() -> None:
    draft = PageContext(small_course(), "course/film_build.md")
    first = caution_box(draft, ["solvent_vapor", "solvent_vapor"])
    second = caution_box(draft, ["solvent_vapor"])
    assert [told.hazard.caution for told in first.fresh] == [FULL]
    assert (first.again, second.fresh) == ((), ())
    assert [told.anchor for told in second.again] == ["hazard-solvent-vapor"]


def test_a_caution_of_the_authors_own_is_said_once_on_a_page() -> None:
    draft = PageContext(small_course(), "course/film_build.md")
    assert caution_box(draft, [], [OWN, f" {OWN}\n"]).texts == (OWN,)
    assert caution_box(draft, [], [OWN]).is_empty


def test_a_card_after_a_caution_block_refers_to_the_text_above() -> None:
    html, desk = lesson(
        "# Film\n\n```caution solvent_vapor\nMind the lamp.\n```\n\n```procedure wet_check\n```\n"
        "\n```procedure wet_check\n```\n"
    )
    assert not desk.problems
    assert html.count(FULL) == html.count("Mind the lamp.") == html.count(OWN) == 1
    assert html.count('id="hazard-solvent-vapor"') == 1
    # each of the two cards names it at its head and at its step
    assert html.count('href="#hazard-solvent-vapor"') == 4
    assert len(re.findall(r'class="caution brief"', html)) == 2


def test_a_card_tells_a_hazard_beside_the_step_that_meets_it() -> None:
    html, _ = lesson("# Film\n\n```procedure wet_check\n```\n")
    assert html.count(FULL) == 1
    assert "Against solvent vapor: moving air, a mask that fits" in html
    step = html[html.index("Push the comb square") :]
    assert FULL in step[: step.index("</li>")]


def test_an_unknown_hazard_is_reported_at_its_line() -> None:
    _, desk = lesson("# Film\n\n```caution solvent_vapour\n```\n")
    assert [(p.place.line, p.rule) for p in desk.problems] == [(3, "lesson-block")]
    assert "solvent_vapour" in desk.problems[0].message
