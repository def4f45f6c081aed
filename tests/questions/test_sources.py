"""Sources as readers see them: what is from memory never looks published."""

import pytest

from generator.bank.models import SourceTag
from generator.questions.sources import COMMON_PRACTICE, FROM_MEMORY, shown_source, shown_sources
from tests.questions.small_bank import bank_of


@pytest.fixture(scope="module")
def bank(tmp_path_factory):
    return bank_of(tmp_path_factory.mktemp("bank"), {})


@pytest.mark.parametrize(
    ("key", "place", "tag", "text"),
    [
        ("panel_manual", "section 3", "published", "Panel manual 7, section 3"),
        ("panel_manual", "", "published", "Panel manual 7"),
        ("told_again", "clause 5", "published", "Old norm, clause 5 (as restated in another text)"),
        ("old_book", "page 9", "from_memory", "Old book, page 9 (from memory, not read again)"),
        ("common_practice", "", "common_practice", COMMON_PRACTICE),
        ("from_memory", "", "from_memory", FROM_MEMORY),
    ],
)
def test_each_standing_is_told_in_words(bank, key, place, tag, text):
    shown = shown_source(bank.sources, SourceTag(key, place))
    assert (shown.tag, shown.text) == (tag, text)


def test_a_key_that_names_no_source_is_never_called_published(bank):
    assert shown_source(bank.sources, SourceTag("nowhere", "p. 1")).tag == "from_memory"


def test_the_key_is_told_where_a_document_stands_behind_it(bank):
    tags = [SourceTag("panel_manual", ""), SourceTag("common_practice", "")]
    assert [shown.key for shown in shown_sources(bank, tags)] == ["panel_manual", ""]


def test_common_practice_points_to_the_data_sheet():
    assert "data sheet governs" in COMMON_PRACTICE


def test_a_tag_from_memory_says_that_it_decides_no_mark():
    assert "never decides a mark" in FROM_MEMORY
