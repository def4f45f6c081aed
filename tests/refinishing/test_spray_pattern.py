"""Counting strokes: half overlap is published, the count is geometry checked strip by strip."""

from fractions import Fraction

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

from generator.diagnostics import OutsideValidity
from generator.refinishing import CATALOGUE
from generator.refinishing.spray_pattern import fan_at_distance, spray_passes

HEIGHTS = st.integers(10, 2000).map(lambda tenths: Fraction(tenths, 10))
FANS = st.integers(50, 450).map(lambda tenths: Fraction(tenths, 10))
OVERLAPS = st.sampled_from([0, 50, 75, 80]).map(Fraction)


def exact(*numbers: object) -> tuple[Fraction, ...]:
    return tuple(Fraction(str(number)) for number in numbers)


@pytest.mark.parametrize(
    ("overlap", "spacing", "passes", "layers", "outside"),
    [(50, "12.5", 6, 2, "0"), (75, "6.25", 13, 4, "6.25")],
)
def test_strokes_over_a_panel(overlap, spacing, passes, layers, outside):
    # TM 1-1500-344 A-8: half overlap; the count is our own geometry
    found = spray_passes(*exact(60, 25, overlap))
    assert found == (Fraction(spacing), layers, passes, Fraction(outside))


def layers_at(place: Fraction, fan: Fraction, plan: tuple) -> int:
    centres = (-plan.start_outside + stroke * plan.spacing for stroke in range(int(plan.passes)))
    return sum(centre - fan / 2 < place < centre + fan / 2 for centre in centres)


@given(HEIGHTS, FANS, OVERLAPS, st.integers(1, 999))
def test_every_strip_of_the_panel_gets_all_its_layers(height, fan, overlap, share):
    # strokes laid down one by one as oracle
    plan = spray_passes(height, fan, overlap)
    place = height * share / 1000
    on_a_border = (place + plan.start_outside + fan / 2) % plan.spacing == 0
    assume(not on_a_border)
    assert layers_at(place, fan, plan) == plan.layers


@given(HEIGHTS, FANS)
def test_one_stroke_less_leaves_the_last_strip_thin(height, fan):
    plan = spray_passes(height, fan, Fraction(50))
    short = plan._replace(passes=plan.passes - 1)
    assert layers_at(height - Fraction(1, 1000), fan, short) < plan.layers


def test_three_quarter_overlap_counted_like_half_leaves_three_layers_at_the_edge():
    # a count of one more than the strips, first stroke on the edge, is right at 50 % only
    plan = spray_passes(*exact(60, 25, 75))
    naive = plan._replace(passes=Fraction(60) / plan.spacing + 1, start_outside=Fraction(0))
    assert layers_at(Fraction("0.1"), Fraction(25), naive) == 3
    assert layers_at(Fraction("0.1"), Fraction(25), plan) == 4


@given(FANS, st.integers(1, 30))
def test_an_exact_number_of_strips_does_not_gain_a_stroke(fan, strips):
    assert spray_passes(fan / 2 * strips, fan, Fraction(50)).passes == strips + 1


@pytest.mark.parametrize("overlap", ["60", "33", "100", "-10"])
def test_overlaps_that_do_not_count_out_even_are_refused(overlap):
    with pytest.raises(OutsideValidity, match="overlap"):
        spray_passes(*exact(60, 25, overlap))


def test_the_fan_at_another_distance():
    # straight fan, from memory
    found = fan_at_distance(*exact(20, 15, 20))
    assert abs(found.new_fan_width - Fraction("26.7")) <= Fraction("0.05")
    assert found.film_ratio == Fraction("0.75")
    assert CATALOGUE["fan_at_distance"].facts.status == "from_memory"


@given(FANS, FANS, FANS)
def test_the_same_paint_lands_on_the_wider_fan(fan, distance, new_distance):
    found = fan_at_distance(fan, distance, new_distance)
    assert found.new_fan_width * found.film_ratio == fan


def test_a_fan_at_no_distance_is_refused():
    with pytest.raises(OutsideValidity, match="distance"):
        fan_at_distance(*exact(20, 0, 20))
