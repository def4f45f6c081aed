"""One style sheet and one script for every page: a phone waits for each file it has to ask for."""

from pathlib import Path

from generator.website.draft import SiteFile

STYLES = ("ground", "pages", "questions", "checks", "figures")
PAPER = "paper"
# in the order they lean on one another; `start` sets the page going
SCRIPTS = (
    "type",
    "elements",
    "numbers",
    "unit_words",
    "schedule",
    "progress",
    "panel",
    "marking",
    "parts",
    "answering",
    "questions",
    "leaves",
    "choosing",
    "sitting",
    "checks",
    "look_back",
    "print",
    "start",
    "edition",
)
BEFORE_UNITS = "elements"
SEARCH_SCRIPTS = ("finding", "search")


def bundles(theme: Path, units: str) -> tuple[SiteFile, ...]:
    """Give the style sheet, the script of every page and the script of the search page.

    theme  folder with assets/css and assets/js
    units  the generated script of units
    """
    paper = f"@media print {{\n{_style(theme, PAPER)}}}\n"
    styles = "".join(_style(theme, name) for name in STYLES) + paper
    scripts = {name: _script(theme, name) for name in SCRIPTS}
    scripts[BEFORE_UNITS] += units
    search = [_script(theme, name) for name in SEARCH_SCRIPTS]
    # the sheet stands one folder above the theme's own sheets
    return (
        SiteFile("assets/course.css", styles.replace("url(../fonts/", "url(fonts/")),
        SiteFile("assets/course.js", "".join(scripts.values())),
        SiteFile("assets/search.js", "".join(search)),
    )


def _style(theme: Path, name: str) -> str:
    return (theme / "assets" / "css" / f"{name}.css").read_text(encoding="utf-8")


def _script(theme: Path, name: str) -> str:
    return (theme / "assets" / "js" / f"{name}.js").read_text(encoding="utf-8")
