"""The offline worker lists every file of an edition by its content."""

import base64
import hashlib
import json
import re
from pathlib import Path

import pytest

from generator.website.offline.kept_offline import (
    WORKER,
    app_manifest,
    content_prints,
    offline_worker,
    write_worker,
)

THEME = Path(__file__).parents[2] / "site_theme"


@pytest.fixture
def site(tmp_path: Path) -> Path:
    """Return a folder with a page, a script, a typeface and its licence."""
    for name in ("index.html", "assets/course.js", "assets/fonts/face.woff2", "assets/fonts/L.txt"):
        (tmp_path / name).parent.mkdir(parents=True, exist_ok=True)
        (tmp_path / name).write_text(f"text of {name}", encoding="utf-8")
    return tmp_path


def cache_name(worker: str) -> str:
    """Find the name of the edition."""
    found = re.search(r'NAME = KIND \+ "([0-9a-f]{16})"', worker)
    assert found
    return found[1]


def listed(worker: str) -> dict[str, str]:
    """Read the list of files."""
    found = re.search(r"PRINTS = (\{.*?\});", worker, re.DOTALL)
    assert found
    prints: dict[str, str] = json.loads(found[1])
    return prints


def test_every_file_but_licences_and_the_worker_is_listed(site: Path) -> None:
    write_worker(site, THEME)
    worker = (site / WORKER).read_text("utf-8")
    assert set(listed(worker)) == {"index.html", "assets/course.js", "assets/fonts/face.woff2"}


def test_what_the_pages_hold_already_and_icons_are_not_kept(site: Path) -> None:
    for name in ("parts/film_build/coats-1.js", "assets/icons/mark-192.png"):
        (site / name).parent.mkdir(parents=True, exist_ok=True)
        (site / name).write_text("text", encoding="utf-8")
    assert set(content_prints(site)) == {
        "index.html",
        "assets/course.js",
        "assets/fonts/face.woff2",
    }


def test_a_print_is_what_a_browser_checks(site: Path) -> None:
    """Subresource integrity: the algorithm's name and the digest in base 64."""
    digest = hashlib.sha256((site / "index.html").read_bytes()).digest()
    wanted = "sha256-" + base64.b64encode(digest).decode()
    assert content_prints(site)["index.html"] == wanted


def test_the_same_content_keeps_its_name(site: Path) -> None:
    write_worker(site, THEME)
    once = (site / WORKER).read_text("utf-8")
    write_worker(site, THEME)
    assert (site / WORKER).read_text("utf-8") == once


@pytest.mark.parametrize("name", ["index.html", "assets/course.js", "assets/fonts/face.woff2"])
def test_any_changed_file_gives_a_new_name(site: Path, name: str) -> None:
    before = cache_name(offline_worker(content_prints(site), THEME))
    (site / name).write_text("other", encoding="utf-8")
    assert cache_name(offline_worker(content_prints(site), THEME)) != before


def test_a_changed_worker_gives_a_new_name(site: Path, tmp_path: Path) -> None:
    theme = tmp_path / "theme"
    theme.mkdir()
    text = (THEME / "offline.js.txt").read_text("utf-8")
    (theme / "offline.js.txt").write_text(text + "// more\n", encoding="utf-8")
    prints = content_prints(site)
    assert cache_name(offline_worker(prints, theme)) != cache_name(offline_worker(prints, THEME))


def test_the_manifest_names_icons_that_exist_in_both_sizes_browsers_ask_for() -> None:
    """Web application manifest, W3C: name, start, display and icons of 192 and 512 px."""
    content = json.loads(app_manifest("A course"))
    assert content["name"] == "A course"
    assert (content["start_url"], content["display"]) == ("index.html", "standalone")
    assert {icon["sizes"] for icon in content["icons"]} >= {"192x192", "512x512"}
    assert "maskable" in {icon["purpose"] for icon in content["icons"]}
    for icon in content["icons"]:
        assert (THEME / icon["src"]).is_file()


@pytest.mark.parametrize(
    ("name", "size"),
    [("mark-192", 192), ("mark-512", 512), ("mark-tile-512", 512), ("mark-tile-180", 180)],
)
def test_an_icon_is_as_large_as_its_name_says(name: str, size: int) -> None:
    """Portable Network Graphics, W3C: the header holds width and height."""
    data = (THEME / "assets" / "icons" / f"{name}.png").read_bytes()
    assert data[:8] == b"\x89PNG\r\n\x1a\n"
    assert [int.from_bytes(data[at : at + 4], "big") for at in (16, 20)] == [size, size]
