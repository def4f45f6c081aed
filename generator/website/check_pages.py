"""Today's mixed check, and the look back at what went wrong."""

from generator.website.desk import Desk
from generator.website.draft import BuiltPage
from generator.website.question_parts import parts_index
from generator.website.written_questions import Written

TODAY = "today.html"
LOOK_BACK = "look-back.html"


def today_page(desk: Desk, written: Written) -> BuiltPage:
    """Build the page of the daily check; its questions come from the parts it picks."""
    return _page("pages/today.html", TODAY, "Today's check", "today", desk, written)


def look_back_page(desk: Desk, written: Written) -> BuiltPage:
    """Build the page that lists what was answered wrong, newest first."""
    return _page("pages/look_back.html", LOOK_BACK, "Look back", "look-back", desk, written)


def _page(
    template: str, path: str, title: str, kind: str, desk: Desk, written: Written
) -> BuiltPage:
    index = parts_index(desk.course, written)
    draft = desk.draft("question_bank/outline.yml")
    return BuiltPage(path, desk.fill(template, draft, index=index), title, kind)
