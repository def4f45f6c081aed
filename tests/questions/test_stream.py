"""Repeatable chance: fixed vectors, evenness, and shuffles that lose nothing.

The vectors follow from SHA-256 (FIPS 180-4): the key is the digest of the label, and the stream
is the digests of key and block number, read as big-endian words of 64 bits.
"""

from collections import Counter
from hashlib import sha256

import pytest
from hypothesis import given
from hypothesis import strategies as st

from generator.questions.drawing.seeded_random import SeededRandom

LONG_LABEL = ("bank-v1", "form-A", "student-007", "item-prep-012", "0")


def first_words(*fields):
    key = sha256("|".join(fields).encode()).digest()
    block = sha256(key + bytes(8)).digest()
    return [block[i : i + 8].hex() for i in range(0, 32, 8)]


def test_the_first_words_of_a_known_label_are_the_written_ones():
    assert first_words("demo")[:3] == ["db292fd447e6e100", "ba3b594144b58fa8", "3fa0b1d73678dbc7"]
    assert first_words(*LONG_LABEL)[0] == "3216417c0297d726"


def test_the_stream_reads_the_words_from_the_front():
    stream = SeededRandom("demo")
    assert [f"{stream.below(2**64):016x}" for _ in range(4)] == first_words("demo")


def test_a_second_block_follows_when_the_first_is_used_up():
    stream = SeededRandom("demo")
    for _ in range(4):
        stream.below(2**64)
    second = sha256(sha256(b"demo").digest() + (1).to_bytes(8, "big")).digest()
    assert stream.below(2**64) == int.from_bytes(second[:8], "big")


@pytest.mark.parametrize(
    ("fields", "numbers", "letters"),
    [
        (("demo",), [0, 4, 7, 3, 5, 5, 4, 2, 5, 3], "EHCFGBDA"),
        (LONG_LABEL, [2, 9, 0, 6, 5, 8, 0, 1, 8, 3], "DAFEHCBG"),
    ],
)
def test_a_label_always_gives_the_same_numbers_and_the_same_shuffle(fields, numbers, letters):
    stream = SeededRandom(*fields)
    assert [stream.below(10) for _ in range(10)] == numbers
    assert "".join(SeededRandom(*fields).shuffled("ABCDEFGH")) == letters


def test_fields_are_joined_by_a_bar():
    assert SeededRandom("a", "b").below(2**64) == SeededRandom("a|b").below(2**64)


def test_two_labels_part_ways():
    one, two = SeededRandom("panel", "1"), SeededRandom("panel", "2")
    assert [one.below(1000) for _ in range(5)] != [two.below(1000) for _ in range(5)]


# upper 0.1 % points of chi-square: NIST/SEMATECH e-Handbook, section 1.3.6.7.4
@pytest.mark.parametrize(("count", "limit"), [(6, 20.515), (10, 27.877), (24, 49.728)])
def test_numbers_below_a_count_are_evenly_spread(count, limit):
    stream = SeededRandom("evenness", str(count))
    draws = 400 * count
    seen = Counter(stream.below(count) for _ in range(draws))
    square = sum((seen[number] - 400) ** 2 / 400 for number in range(count))
    assert set(seen) <= set(range(count))
    assert square < limit


def test_every_order_of_four_things_is_about_as_likely():
    seen = Counter(SeededRandom("orders", str(n)).shuffled("ABCD") for n in range(9600))
    square = sum((seen[order] - 400) ** 2 / 400 for order in seen)
    assert len(seen) == 24
    assert square < 49.728


def test_the_first_draws_of_neighbouring_labels_are_evenly_spread():
    seen = Counter(SeededRandom("bank", "form", f"student-{n:03}").below(10) for n in range(4000))
    assert sum((seen[number] - 400) ** 2 / 400 for number in range(10)) < 27.877


def test_words_past_the_last_whole_multiple_are_passed_over():
    words = [int(word, 16) for word in first_words("demo")]
    count = words[0]  # for this count the first word lies at the ceiling
    assert 2**64 - 2**64 % count == count
    kept = next(word for word in words if word < count)
    assert SeededRandom("demo").below(count) == kept == words[1]


@given(st.text(), st.lists(st.integers(), max_size=40))
def test_a_shuffle_loses_and_adds_nothing(label, things):
    assert sorted(SeededRandom(label).shuffled(things)) == sorted(things)


@given(st.text(), st.integers(min_value=1, max_value=2**64))
def test_a_number_is_below_its_count(label, count):
    assert 0 <= SeededRandom(label).below(count) < count


@given(st.text(), st.lists(st.integers(), unique=True, max_size=12), st.integers(0, 15))
def test_a_sample_holds_different_things_of_the_pile(label, things, count):
    sample = SeededRandom(label).sample(things, count)
    assert len(sample) == min(count, len(things))
    assert len(set(sample)) == len(sample)
    assert set(sample) <= set(things)


@pytest.mark.parametrize("count", [0, -1])
def test_nothing_to_draw_from_is_refused(count):
    with pytest.raises(ValueError, match="at least one thing"):
        SeededRandom("demo").below(count)


def test_choosing_takes_the_thing_at_the_number_drawn():
    assert SeededRandom("demo").choose("ABCDEFGHIJ") == "ABCDEFGHIJ"[SeededRandom("demo").below(10)]
