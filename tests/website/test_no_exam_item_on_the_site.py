"""Nothing of the exam pool reaches a page: no stem, no option, no id."""

from pathlib import Path

import pytest

from generator.bank import Bank, load_bank
from generator.website.gather import read_course
from generator.website.pages.site import build_site

ROOT = Path(__file__).parents[2]


@pytest.fixture(scope="module")
def bank() -> Bank:
    loaded, _ = load_bank(ROOT / "question_bank", ROOT / "course")
    assert loaded is not None
    return loaded


@pytest.fixture(scope="module")
def pages() -> str:
    course, _ = read_course(ROOT / "question_bank", ROOT / "course", ROOT / "site_theme")
    assert course is not None
    return "\n".join(page.html for page in build_site(course, ROOT / "site_theme").pages)


def test_the_bank_keeps_items_for_exams(bank: Bank) -> None:
    assert sum(entry.record.use == "exam" for entry in bank.items.values()) >= 50


def test_no_exam_item_is_named_on_a_page(bank: Bank, pages: str) -> None:
    exam = [name for name, entry in bank.items.items() if entry.record.use == "exam"]
    assert [name for name in exam if f'"{name}"' in pages] == []


def test_no_exam_stem_stands_on_a_page(bank: Bank, pages: str) -> None:
    plain = pages.replace("&#39;", "'").replace("&#34;", '"').replace("&quot;", '"')
    study = " ".join(e.record.stem for e in bank.items.values() if e.record.use != "exam")
    found = [
        name
        for name, entry in bank.items.items()
        if entry.record.use == "exam"
        and entry.record.stem in plain
        and entry.record.stem not in study
    ]
    assert found == []


def test_study_items_do_stand_on_a_page(bank: Bank, pages: str) -> None:
    study = [name for name, entry in bank.items.items() if entry.record.use == "study"]
    assert [name for name in study if f'"{name}"' not in pages] == []
