"""The real course as it is written out: repeatable, complete, light, and without any exam item."""

import gzip
import re
from pathlib import Path

import pytest

from generator.bank import load_bank
from generator.website.engine import build_into
from tests.website.test_pages import Reader

ROOT = Path(__file__).parents[2]
MOST_SCRIPT = 30_000
MOST_FONT = 75_000


@pytest.fixture(scope="module")
def site(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """Build the real course once."""
    folder = tmp_path_factory.mktemp("site")
    build_into(ROOT / "mkdocs.yml", folder)
    return folder


def contents(folder: Path) -> dict[str, bytes]:
    """Give every file of a folder with its bytes."""
    return {
        path.relative_to(folder).as_posix(): path.read_bytes()
        for path in sorted(folder.rglob("*"))
        if path.is_file()
    }


def test_two_builds_give_the_same_bytes(site: Path, tmp_path: Path) -> None:
    build_into(ROOT / "mkdocs.yml", tmp_path / "again")
    assert contents(tmp_path / "again") == contents(site)


def test_no_exam_item_reaches_any_file(site: Path) -> None:
    bank, _ = load_bank(ROOT / "question_bank")
    assert bank is not None
    kept_back = [name for name, entry in bank.items.items() if entry.record.pool == "exam"]
    everything = "\n".join(path.read_text("utf-8") for path in site.rglob("*.html"))
    assert len(kept_back) > 50
    assert [name for name in kept_back if f'"{name}"' in everything] == []
    stems = [bank.items[name].record.stem[:60] for name in kept_back]
    assert [stem for stem in stems if stem in everything] == []


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
    for path in site.glob("*.html"):
        reader = Reader()
        reader.feed(path.read_text("utf-8"))
        assert "style" not in reader.attributes, path.name
        assert not {name for name in reader.attributes if name.startswith("on")}, path.name


def test_scripts_and_fonts_stay_light(site: Path) -> None:
    scripts = b"".join(path.read_bytes() for path in (site / "assets/js").glob("*.js"))
    fonts = sum(path.stat().st_size for path in (site / "assets/fonts").glob("*.woff2"))
    assert len(gzip.compress(scripts, mtime=0)) < MOST_SCRIPT
    assert fonts < MOST_FONT


def test_only_what_a_reader_needs_is_written(site: Path) -> None:
    kinds = {path.suffix for path in site.rglob("*") if path.is_file()}
    assert kinds == {".html", ".css", ".js", ".woff2", ".txt", ".svg"}
    assert not (site / "fonts_print").exists()
    assert not (site / "sitemap.xml").exists()
