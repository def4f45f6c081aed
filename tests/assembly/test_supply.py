"""Filling all places of a paper at once, against trying every way."""

from itertools import product

from hypothesis import given
from hypothesis import strategies as st

from generator.assembly.supply.matching import unmatched

places = st.lists(st.sets(st.sampled_from("abcd")).map(sorted), max_size=5)


def most_filled(wants):
    """Try every way to give each place a record or nothing."""
    ways = product(*[[None, *records] for records in wants])
    return max(
        len(given)
        for way in ways
        if len(given := [record for record in way if record]) == len(set(given))
    )


@given(places)
def test_as_many_places_are_filled_as_can_be(wants):
    assert len(wants) - len(unmatched(wants)) == most_filled(wants)


def test_a_place_that_could_wait_gives_way_to_one_that_cannot():
    assert unmatched([["a", "b"], ["a"]]) == ()
    assert unmatched([["a", "b"], ["b", "c"], ["a"], ["a", "b", "d"]]) == ()


def test_the_place_left_over_is_named():
    assert unmatched([["a"], ["a"], ["b"]]) == (1,)
    assert unmatched([["a"], []]) == (1,)
    assert unmatched([]) == ()
