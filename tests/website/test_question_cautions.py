"""A question's caution comes with its feedback, and beside the question only in hands-on work."""

from pathlib import Path
from typing import Any

from generator.website.context.page_context import PageContext
from generator.website.context.site_context import SiteContext
from generator.website.questions.question_html import question_html
from tests.website.small_course import small_course
from tests.website.small_questions import CHOICE, WET_FILM

THEME = Path(__file__).parents[2] / "site_theme"
TOLD = [
    {"hazard": "acid", "text": "Acid *burns* eyes."},
    {"hazard": "", "text": "Keep the lid on."},
]


def html_of(*variants: dict[str, Any]) -> str:
    course = small_course()
    return question_html(
        variants, PageContext(course, "course/film_build.md"), SiteContext(course, THEME), "Q"
    )


def test_a_caution_stands_with_the_answer_and_reasons_alone() -> None:
    before, _, after = html_of(CHOICE | {"cautions": TOLD}).partition('<details class="reasons">')
    assert "lid on" not in before
    assert "Acid <em>burns</em> eyes." in after
    assert after.count('class="caution"') == after.count("Keep the lid on.") == 1


def test_a_caution_of_hands_on_work_stands_before_the_question() -> None:
    html = html_of(CHOICE | {"hands_on": True, "caution": "The blade is sharp."})
    assert html.index("The blade is sharp.") < html.index('class="ask"')
    assert html.count("The blade is sharp.") == 1


def test_other_numbers_do_not_repeat_the_caution_and_another_draw_brings_its_own() -> None:
    numbers = html_of(*(variant | {"cautions": TOLD} for variant in WET_FILM))
    assert numbers.count("Keep the lid on.") == 1
    other = [{"hazard": "dust", "text": "Mask on."}]
    draws = html_of(CHOICE | {"cautions": TOLD}, CHOICE | {"cautions": other})
    assert draws.count("Keep the lid on.") == draws.count("Mask on.") == 1


def test_a_question_without_cautions_has_no_box() -> None:
    assert 'class="caution"' not in html_of(CHOICE)
