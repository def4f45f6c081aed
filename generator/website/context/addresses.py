"""Where links lead: lessons, questions, glossary terms and sources, as addresses in the site."""

import re

from generator.website.context.course import Course

SCHEMES = ("source", "term", "lesson", "questions", "procedure", "fault", "table")
_PLAIN_PAGE = re.compile(r"([a-z0-9_-]+)(#[A-Za-z0-9_-]+)?\Z")
_PAGES = frozenset(
    (
        "index",
        "lessons",
        "glossary",
        "cautions",
        "sources",
        "procedures",
        "faults",
        "tables",
        "relations",
        "progress",
        "today",
        "look-back",
        "search",
    )
)


def anchor_of(text: str) -> str:
    """Make an anchor from words: small letters, digits and hyphens."""
    return re.sub(r"[^a-z0-9]+", "-", text.lower()).strip("-") or "part"


def lesson_address(module: str) -> str:
    """Return the file of a module's lesson."""
    return f"{module}.html"


def questions_address(module: str, sheet: int = 1) -> str:
    """Return the file of a module's questions; a very long list goes on over further sheets."""
    return f"{module}-questions.html" if sheet == 1 else f"{module}-questions-{sheet}.html"


def source_address(key: str) -> str:
    """Return the place of a source in the list of sources."""
    return f"sources.html#{key}"


def term_address(key: str) -> str:
    """Return the place of a term in the glossary."""
    return f"glossary.html#{key}"


def resolved(href: str, course: Course) -> str | None:
    """Turn what an author wrote into an address; None when it leads nowhere."""
    scheme, colon, key = href.partition(":")
    if colon:
        return _by_scheme(scheme, key, course)
    if href.startswith("#"):
        return href
    match = _PLAIN_PAGE.match(href.replace(".html", "").replace(".md", ""))
    if match is None or not _is_page(match[1], course):
        return None
    return f"{match[1]}.html{match[2] or ''}"


def _by_scheme(scheme: str, key: str, course: Course) -> str | None:
    known = {
        "source": (course.sources, source_address),
        "term": (course.terms, term_address),
        "lesson": (course.lessons, lesson_address),
        "questions": (course.questions, questions_address),
        "procedure": (course.procedures, lambda name: f"procedures.html#{name}"),
        "fault": (course.faults, lambda name: f"faults.html#{name}"),
        "table": (course.tables, lambda name: f"tables.html#{name}"),
    }
    if scheme not in known:
        return None
    names, address = known[scheme]
    return address(key) if key in names else None


def _is_page(name: str, course: Course) -> bool:
    return (
        name in _PAGES
        or name in course.lessons
        or (name.endswith("-questions") and name.removesuffix("-questions") in course.questions)
    )
