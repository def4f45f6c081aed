"""Each tag, status, kind and verdict has its words, and they are complete."""

from typing import get_args

from generator.marking.answers.mark_form import Verdict
from generator.printing.content.paper_content import _ANSWER_SPACES
from generator.wording import (
    KIND_WORDS,
    SHORT_VERDICT_WORDS,
    TAG_WORDS,
    VERDICT_WORDS,
    objective_name,
    status_words,
)


def test_every_verdict_has_long_and_short_words() -> None:
    assert set(get_args(Verdict)) == set(VERDICT_WORDS) == set(SHORT_VERDICT_WORDS)


def test_every_kind_that_a_paper_can_ask_has_words() -> None:
    assert set(KIND_WORDS) == set(_ANSWER_SPACES)
    assert all(words.heading and words.task for words in KIND_WORDS.values())
    assert [kind for kind, words in KIND_WORDS.items() if not words.prompt] == ["written"]


def test_every_tag_and_status_has_words_and_none_sounds_better_than_it_is() -> None:
    assert set(TAG_WORDS) == {"published", "common_practice", "from_memory"}
    assert "no published source" in TAG_WORDS["common_practice"]
    assert "not checked" in TAG_WORDS["from_memory"]
    assert status_words("read") == "read in the document itself"
    assert status_words("from_memory", "rule") == "from memory, not checked against the rule"


def test_an_objective_has_its_module_however_the_question_spells_it() -> None:
    assert objective_name({"module": "film", "objective": "wet"}) == "film/wet"
    assert objective_name({"module": "film", "objective": "film/wet"}) == "film/wet"
