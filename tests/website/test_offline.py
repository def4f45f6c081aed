"""The offline worker is named by the content it keeps."""

import json
import re
from pathlib import Path

from generator.website.offline import offline_worker
from generator.website.site import build_site
from tests.website.small_course import small_course

THEME = Path(__file__).parents[2] / "site_theme"
PAGES = build_site(small_course(), THEME).pages


def cache_name(worker: str) -> str:
    """Find the name of the cache."""
    found = re.search(r'"(guidecoat-[0-9a-f]{16})"', worker)
    assert found
    return found[1]


def test_the_same_content_keeps_its_name() -> None:
    assert offline_worker(PAGES, THEME) == offline_worker(PAGES, THEME)


def test_a_changed_page_gets_a_new_name() -> None:
    changed = (PAGES[0]._replace(html=PAGES[0].html + " "), *PAGES[1:])
    assert cache_name(offline_worker(changed, THEME)) != cache_name(offline_worker(PAGES, THEME))


def test_every_page_style_script_and_font_is_kept() -> None:
    listed = json.loads(re.findall(r"PATHS = (\[.*?\]);", offline_worker(PAGES, THEME), re.S)[0])
    files = {
        path.relative_to(THEME).as_posix()
        for path in (THEME / "assets").rglob("*")
        if path.suffix in (".css", ".js", ".woff2", ".svg")
    }
    assert set(listed) == {page.path for page in PAGES} | files
