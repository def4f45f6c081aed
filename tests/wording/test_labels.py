"""Each tag, status and verdict has its words, and they are complete."""

from typing import get_args

from generator.marking.answers.mark_form import Verdict
from generator.wording import (
    SHORT_VERDICT_WORDS,
    TAG_WORDS,
    VERDICT_WORDS,
    status_words,
)


def test_every_verdict_has_long_and_short_words() -> None:
    assert set(get_args(Verdict)) == set(VERDICT_WORDS) == set(SHORT_VERDICT_WORDS)


def test_every_tag_and_status_has_words_and_none_sounds_better_than_it_is() -> None:
    assert set(TAG_WORDS) == {"published", "common_practice", "from_memory"}
    assert "no published source" in TAG_WORDS["common_practice"]
    assert "not checked" in TAG_WORDS["from_memory"]
    assert status_words("read") == "read in the document itself"
    assert status_words("from_memory", "rule") == "from memory, not checked against the rule"
