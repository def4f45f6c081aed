"""Today's mixed check, and the look back at what went wrong."""

from generator.website.context import BuiltPage, SiteContext
from generator.website.questions.question_parts import parts_index

TODAY = "today.html"
LOOK_BACK = "look-back.html"


def today_page(desk: SiteContext) -> BuiltPage:
    """Build the page of the daily check; its questions come from the parts it picks."""
    return _page("pages/today.html", TODAY, "Today's check", "today", desk)


def look_back_page(desk: SiteContext) -> BuiltPage:
    """Build the page that lists what was answered wrong, newest first."""
    return _page("pages/look_back.html", LOOK_BACK, "Look back", "look-back", desk)


def _page(template: str, path: str, title: str, kind: str, desk: SiteContext) -> BuiltPage:
    index = parts_index(desk.course, desk.course.modules)
    draft = desk.draft("question_bank/outline.yml")
    return BuiltPage(path, desk.fill(template, draft, index=index), title, kind)
