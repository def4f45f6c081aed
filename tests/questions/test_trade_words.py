"""Words of a text as they are compared: stems, numbers with units, no small words."""

from generator.questions.trade_words import as_written, stem, trade_words, weights


def test_forms_of_a_word_are_one():
    assert len({stem(word) for word in ("spray", "sprays", "sprayed", "spraying", "sprayer")}) == 1
    assert stem("filters") == stem("filter")
    assert stem("glove") == stem("gloves")


def test_a_number_is_one_word_with_its_unit():
    assert trade_words("A filter that catches 98\u00a0% of mist") >= {"98%"}
    assert trade_words("98 %") == trade_words("98\u00a0%")
    assert trade_words("30 psi") != trade_words("30 bar")


def test_a_hyphened_word_is_kept_whole_beside_its_parts():
    assert "two-part" in trade_words("Two-part putty")
    assert trade_words("wet-on-wet") >= {"wet"}


def test_words_that_carry_nothing_are_left_out():
    assert trade_words("What should you do before the next of these?") == frozenset()


def test_words_are_told_as_the_text_has_them_and_once():
    words = trade_words("spray gloves 98 %")
    assert as_written("Sprayed with gloves, spraying at 98 %", words) == (
        "sprayed",
        "gloves",
        "98 %",
    )


def test_a_rare_word_weighs_more_and_one_that_all_have_nothing():
    weight = weights([frozenset({"coat", "peroxide"}), frozenset({"coat"})])
    assert weight["peroxide"] > weight["coat"] == 0
