"""Nothing of the exam pool reaches any file of the built course: no stem and no id.

What is looked for is found where it belongs: study items stand on the site by the same search.
"""

from html import unescape
from pathlib import Path

import pytest

from generator.bank.models import Item
from tests.real import real_bank

KINDS = (".html", ".js")
SEARCH_LIST = "search_list.js"


@pytest.fixture(scope="module")
def files(real_site: Path) -> dict[str, str]:
    """Read every page and script of the built course."""
    found = {
        path.relative_to(real_site).as_posix(): path.read_text("utf-8")
        for path in sorted(real_site.rglob("*"))
        if path.suffix in KINDS
    }
    assert SEARCH_LIST in found
    return found


@pytest.fixture(scope="module")
def everything(files: dict[str, str]) -> str:
    return "\n".join(files.values())


@pytest.fixture(scope="module")
def read(everything: str) -> str:
    """Return all texts as a reader meets them, out of HTML and out of JSON."""
    return unescape(everything).replace('\\"', '"')


def of_pool(*pools: str) -> dict[str, Item]:
    items = real_bank().items.items()
    return {name: entry.record for name, entry in items if entry.record.use in pools}


def test_the_bank_keeps_items_for_exams() -> None:
    assert len(of_pool("exam")) > 50


def test_no_exam_item_is_named_in_any_file(everything: str) -> None:
    assert [name for name in of_pool("exam") if f'"{name}"' in everything] == []


def test_no_exam_item_is_named_among_what_a_script_looks_up(files: dict[str, str]) -> None:
    looked_up = [text for path, text in files.items() if path.startswith("parts/")]
    assert len(looked_up) > 50
    named = "\n".join([*looked_up, files[SEARCH_LIST]])
    assert [name for name in of_pool("exam") if name in named] == []


def test_no_exam_stem_begins_in_any_file(everything: str, files: dict[str, str]) -> None:
    exam = of_pool("exam")
    assert [name for name, item in exam.items() if item.stem[:60] in everything] == []
    listed = files[SEARCH_LIST]
    assert [name for name, item in exam.items() if item.stem[:50] in listed] == []


def test_no_exam_stem_stands_in_any_file_as_it_is_read(read: str) -> None:
    study = " ".join(item.stem for item in of_pool("study", "both").values())
    found = [
        name
        for name, item in of_pool("exam").items()
        if item.stem in read and item.stem not in study
    ]
    assert found == []


def test_study_items_are_named_on_the_site(everything: str) -> None:
    assert [name for name in of_pool("study") if f'"{name}"' not in everything] == []


def test_stems_of_study_items_are_found_by_the_same_search(everything: str, read: str) -> None:
    # stems with a drawn number or Markdown in them stand on the site in other words
    plain = {n: i.stem for n, i in of_pool("study").items() if not set(i.stem) & set("{}*_[]<>&")}
    assert len(plain) > 50
    assert [name for name, stem in plain.items() if stem not in read] == []
    begins = [name for name, stem in plain.items() if stem[:60] in everything]
    assert len(begins) > len(plain) * 0.9
