"""Today's mixed check, and the look back at what went wrong."""

import json

from generator.website.context import BuiltPage, SiteContext, SiteFile
from generator.website.questions.question_parts import parts_index
from generator.website.questions.written_questions import Written

TODAY = "today.html"
LOOK_BACK = "look-back.html"
INDEX = "check_index.js"


def today_page(desk: SiteContext) -> BuiltPage:
    """Build the page of the daily check; its questions come from the parts it picks."""
    return _page("pages/today.html", TODAY, "Today's check", "today", desk)


def look_back_page(desk: SiteContext) -> BuiltPage:
    """Build the page that lists what was answered wrong, newest first."""
    return _page("pages/look_back.html", LOOK_BACK, "Look back", "look-back", desk)


def check_index(desk: SiteContext, written: Written) -> SiteFile:
    """Write the index of the whole course, which both pages load from one file."""
    index = parts_index(desk.course, written)
    text = json.dumps(index, ensure_ascii=False, separators=(",", ":")).replace("<", "\\u003c")
    return SiteFile(INDEX, f"var Guidecoat=window.Guidecoat||{{}};\nGuidecoat.wholeIndex={text};\n")


def _page(template: str, path: str, title: str, kind: str, desk: SiteContext) -> BuiltPage:
    draft = desk.draft("question_bank/outline.yml")
    return BuiltPage(path, desk.fill(template, draft), title, kind)
