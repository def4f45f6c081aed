"""Strokes over a panel, and the fan at another distance."""

from fractions import Fraction
from math import ceil
from typing import NamedTuple

from generator.diagnostics import OutsideValidity
from generator.refinishing.annotations import Bare, Percent
from generator.refinishing.annotations_air_and_cure import Centimetre, Layers, Passes
from generator.refinishing.bounds import HUNDRED, require_above_zero, require_not_below_zero
from generator.refinishing.relation import relation


class PassPlan(NamedTuple):
    """Strokes for one coat.

    spacing        how far the gun moves down between strokes
    layers         how often each spot is covered
    passes         strokes in all
    start_outside  how far beyond the edge the first stroke is aimed; zero is on the edge
    """

    spacing: Centimetre
    layers: Layers
    passes: Passes
    start_outside: Centimetre


class FanAtDistance(NamedTuple):
    """The fan at another distance, and the film against before."""

    new_fan_width: Centimetre
    film_ratio: Bare


@relation(
    equation="spacing = fan_width × (100 % - overlap) ÷ 100 %; "
    "layers = 100 % ÷ (100 % - overlap); "
    "passes = panel_height ÷ spacing, rounded up, then + layers - 1; "
    "start_outside = (layers ÷ 2 - 1) × spacing",
    source="tm_1_1500_344",
    place="A-8.2 and A-8.3, half overlap; the count is geometry of our own, not printed",
    status="read",
    rounding={"passes": "up"},
)
def spray_passes(panel_height: Centimetre, fan_width: Centimetre, overlap: Percent) -> PassPlan:
    """Return the strokes of one coat so that every strip of a panel gets the same layers.

    Valid: height and fan above zero; an overlap of whole layers, such as 50, 75 or 80 %.
    Deviates: at 50 % the first stroke is aimed at the edge; at 75 % it starts one spacing outside
        it and the last ends outside, else the edges get three layers instead of four.
    Checked: 60 cm, 25 cm fan and 50 % takes 6 strokes of 2 layers, 75 % takes 13 of 4; derived
        apart, not published.
    """
    require_above_zero(height_of_the_panel=panel_height, fan_width=fan_width)
    require_not_below_zero(overlap=overlap)
    if overlap >= HUNDRED:
        raise OutsideValidity("The overlap must be below 100 %, or the gun never moves on.")
    layers = HUNDRED / (HUNDRED - overlap)
    if layers.denominator != 1:
        raise OutsideValidity("Only an overlap of whole layers counts out even: 0, 50, 75 or 80 %.")
    spacing = fan_width / layers
    passes = ceil(panel_height / spacing) + layers - 1
    return PassPlan(spacing, layers, passes, (layers / 2 - 1) * spacing)


@relation(
    equation="new_fan_width = fan_width × new_distance ÷ distance; "
    "film_ratio = distance ÷ new_distance",
    source="spray_fan_geometry",
    place="straight fan from the cap, same speed",
    status="from_memory",
)
def fan_at_distance(
    fan_width: Centimetre, distance: Centimetre, new_distance: Centimetre
) -> FanAtDistance:
    """Return the width of the fan at another distance and the film against before.

    Valid: sizes above zero; same gun speed and settings.
    Deviates: from memory; farther off less paint lands, so the film falls more than this.
    Checked: 20 cm at 15 cm is 26.7 cm at 20 cm with 0.75 of the film; derived apart, not
        published.
    """
    require_above_zero(fan_width=fan_width, distance=distance, new_distance=new_distance)
    ratio = Fraction(new_distance) / distance
    return FanAtDistance(fan_width * ratio, 1 / ratio)
