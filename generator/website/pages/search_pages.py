"""The search page and the list it searches."""

import json
from collections.abc import Iterable

from generator.website.context import BuiltPage, SiteContext, SiteFile
from generator.website.pages.search_entries import other_names, search_entries

LIST = "search_list.js"


def search_page(desk: SiteContext) -> BuiltPage:
    """Build the page; what it finds comes from the list beside it."""
    html = desk.fill("pages/search.html", desk.draft("course"))
    return BuiltPage("search.html", html, "Search", "search")


def search_list(pages: Iterable[BuiltPage], desk: SiteContext) -> SiteFile:
    """Write the list as a script with one name, so that it loads from a memory stick too."""
    lessons = [page for page in pages if page.kind == "lesson"]
    draft = desk.draft("course")
    content = {
        "entries": search_entries(desk.course, lessons, draft),
        "names": other_names(desk.course),
    }
    text = json.dumps(content, ensure_ascii=False, separators=(",", ":"))
    # a text that holds the end of a script would end the script it is put into
    text = text.replace("<", "\\u003c")
    return SiteFile(LIST, f'"use strict";\nvar guidecoatSearchList = {text};\n')
