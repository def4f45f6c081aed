"""The real course as it is written out: complete, light, and closed to other hosts."""

import gzip
import re
from pathlib import Path

import pytest

from generator.website.offline.kept_offline import content_prints
from tests.some import some
from tests.website.test_pages import Reader

MOST_SCRIPT = 30_000
# what a page loads before and after the script of all pages: the list of parts, that of the search
OWN_SCRIPTS = {
    "today.html": (["check_index.js"], []),
    "look-back.html": (["check_index.js"], []),
    "search.html": ([], ["search_list.js", "assets/search.js"]),
}
MOST_PLAIN = 150_000
# a megabyte for a dozen lessons, pressed as the network carries them
MOST_KEPT_A_LESSON = 83_000
MOST_FONT = 75_000
MOST_OF_QUESTIONS = 60_000
MOST_OF_A_FIRST_VISIT = 150_000


@pytest.fixture(scope="module")
def site(real_site: Path) -> Path:
    """Return the real course as it was built."""
    assert len(list(real_site.glob("*.html"))) > 20
    return real_site


def test_every_link_and_file_of_the_course_exists(site: Path) -> None:
    pages = {}
    for path in sorted(site.glob("*.html")):
        reader = Reader()
        reader.feed(path.read_text("utf-8"))
        pages[path.name] = reader
    lost = []
    for name, reader in pages.items():
        for link in reader.links:
            target, _, place = link.partition("#")
            missing = not (site / (target or name)).is_file()
            if missing or (place and place not in pages[target or name].ids):
                lost.append(f"{name}: {link}")
    assert lost == []


def test_nothing_points_to_another_host(site: Path) -> None:
    pointers = re.compile(r"(?:src|href|url|action|content)\s*[=(]\s*[\"']?\s*(?:https?:)?//")
    found = [
        path.name
        for path in site.rglob("*")
        if path.suffix in (".html", ".css", ".js", ".svg")
        and pointers.search(path.read_text("utf-8"))
    ]
    assert found == []


def test_every_page_states_a_strict_content_policy(site: Path) -> None:
    policy = "default-src 'self'; base-uri 'none'; form-action 'none'; object-src 'none'"
    heads = [path.read_text("utf-8")[:400] for path in site.glob("*.html")]
    assert [head for head in heads if f'Policy" content="{policy}"' not in head] == []


def test_no_page_breaks_its_own_content_policy(site: Path) -> None:
    for path in some(site.glob("*.html")):
        reader = Reader()
        reader.feed(path.read_text("utf-8"))
        assert "style" not in reader.attributes, path.name
        assert not {name for name in reader.attributes if name.startswith("on")}, path.name


def packed(path: Path) -> int:
    """Return what a file weighs when it is sent."""
    data = path.read_bytes()
    return len(data) if path.suffix in (".woff2", ".png") else len(gzip.compress(data, mtime=0))


def test_the_script_of_every_page_stays_light(site: Path) -> None:
    assert packed(site / "assets/course.js") < MOST_SCRIPT
    assert packed(site / "assets/search.js") < MOST_SCRIPT / 3


def test_a_first_visit_to_a_lesson_stays_light(site: Path) -> None:
    fonts = sum(packed(path) for path in (site / "assets/fonts").glob("*.woff2"))
    assert fonts < MOST_FONT
    shared = [site / "assets/course.js", site / "assets/course.css", site / "assets/mark.svg"]
    first = fonts + sum(packed(path) for path in shared)
    lessons = [path for path in site.glob("*.html") if "-questions" not in path.name]
    heavy = {path.name: first + packed(path) for path in lessons}
    assert len(heavy) > 10
    assert {name: size for name, size in heavy.items() if size > MOST_OF_A_FIRST_VISIT} == {}


def test_the_questions_of_a_module_stay_light(site: Path) -> None:
    sizes = {path.name: packed(path) for path in site.glob("*-questions*.html")}
    assert len(sizes) >= 7
    assert {name: size for name, size in sizes.items() if size > MOST_OF_QUESTIONS} == {}


def test_a_question_page_is_light_before_it_is_pressed(site: Path) -> None:
    sizes = {path.name: path.stat().st_size for path in site.glob("*-questions*.html")}
    assert len(sizes) > 20
    assert max(sizes.values()) < MOST_PLAIN


def test_all_that_a_phone_keeps_stays_below_a_megabyte_for_a_dozen_lessons(site: Path) -> None:
    kept = [site / path for path in content_prints(site)]
    assert len(kept) > 50
    size = sum(len(gzip.compress(path.read_bytes(), 9, mtime=0)) for path in kept)
    assert size < MOST_KEPT_A_LESSON * len(list(site.glob("*-questions.html")))


def test_a_page_asks_for_one_style_sheet_and_one_script(site: Path) -> None:
    for path in some(site.glob("*.html")):
        head = path.read_text("utf-8").partition("</head>")[0]
        assert re.findall(r'rel="stylesheet" href="([^"]+)"', head) == ["assets/course.css"]
        first, last = OWN_SCRIPTS.get(path.name, ([], []))
        assert re.findall(r'<script defer src="([^"]+)"', head) == [
            *first,
            "assets/course.js",
            *last,
        ]


def test_only_what_a_reader_needs_is_written(site: Path) -> None:
    kinds = {path.suffix for path in site.rglob("*") if path.is_file()}
    assert kinds == {".html", ".css", ".js", ".woff2", ".txt", ".svg", ".png", ".webmanifest"}
    assert not (site / "fonts_print").exists()
    assert not (site / "assets/js").exists()
    assert not (site / "sitemap.xml").exists()
