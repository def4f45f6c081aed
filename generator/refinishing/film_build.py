"""Building a film: coats, layers and what sanding takes off."""

from fractions import Fraction
from math import ceil
from typing import NamedTuple

from generator.diagnostics import OutsideValidity
from generator.refinishing.annotations import Coats, Micrometre, Percent
from generator.refinishing.bounds import (
    HUNDRED,
    require_above_zero,
    require_not_below_zero,
    require_share,
)
from generator.refinishing.relation import relation


class CoatPlan(NamedTuple):
    """Coats for a film: how many, the most each leaves, and the wet film of equal coats."""

    coats: Coats
    dry_per_coat: Micrometre
    wet_per_equal_coat: Micrometre


class SandOffFilm(NamedTuple):
    """The film to put on so that enough is left after sanding."""

    dry: Micrometre
    wet: Micrometre


@relation(
    equation="coats = target ÷ (wet_per_coat × volume_solids ÷ 100 %), rounded up; "
    "dry_per_coat = wet_per_coat × volume_solids ÷ 100 %; "
    "wet_per_equal_coat = target ÷ coats × 100 % ÷ volume_solids",
    source="common_practice",
    place="target over dry film of one coat",
    status="definition",
    rounding={"coats": "up"},
)
def coats_needed(target: Micrometre, wet_per_coat: Micrometre, volume_solids: Percent) -> CoatPlan:
    """Return the whole number of coats for a dry film when each coat has a thickest wet film.

    Valid: films above zero; volume solids of the mix as sprayed, above 0 % and at most 100 %.
    Deviates: none; an exact quotient does not gain a coat.
    Checked: 120 µm from 100 µm wet coats at 50 % takes 3 coats of 80 µm wet; arithmetic.
    """
    require_above_zero(target_film=target, wet_film_of_one_coat=wet_per_coat)
    require_share(volume_solids=volume_solids)
    dry_per_coat = Fraction(wet_per_coat) * volume_solids / HUNDRED
    coats = Fraction(ceil(target / dry_per_coat))
    return CoatPlan(coats, dry_per_coat, target / coats * HUNDRED / volume_solids)


@relation(
    equation="film_stack = first + second + third + fourth - sanded_off",
    source="common_practice",
    place="sum of the layers",
    status="definition",
)
def film_stack(
    first: Micrometre,
    second: Micrometre,
    third: Micrometre = Fraction(0),
    fourth: Micrometre = Fraction(0),
    sanded_off: Micrometre = Fraction(0),
) -> Micrometre:
    """Return the whole dry film of up to four layers, less what was sanded off.

    Valid: layers from zero up; no more sanded off than was there.
    Deviates: none.
    Checked: 20, 60, 15 and 50 µm less 25 µm is 120 µm; arithmetic.
    """
    require_not_below_zero(
        first_layer=first, second_layer=second, third_layer=third, fourth_layer=fourth
    )
    require_not_below_zero(sanded_off_film=sanded_off)
    stack = Fraction(first) + second + third + fourth
    if sanded_off > stack:
        raise OutsideValidity("More is sanded off than the layers hold.")
    return stack - sanded_off


@relation(
    equation="dry = wanted + sand_off; wet = (wanted + sand_off) × 100 % ÷ volume_solids",
    source="common_practice",
    place="wanted film plus the film that sanding takes",
    status="definition",
)
def film_for_sand_off(
    wanted: Micrometre, sand_off: Micrometre, volume_solids: Percent
) -> SandOffFilm:
    """Return the dry and wet film to apply so that the wanted film is left after sanding.

    Valid: wanted film above zero; sand-off from zero up; solids above 0 % and at most 100 %.
    Deviates: the wet film is the sum over all coats.
    Checked: 60 µm wanted and 30 µm sanded off at 48 % is 90 µm dry, 187.5 µm wet; arithmetic.
    """
    require_above_zero(wanted_film=wanted)
    require_not_below_zero(sanded_off_film=sand_off)
    require_share(volume_solids=volume_solids)
    dry = Fraction(wanted) + sand_off
    return SandOffFilm(dry, dry * HUNDRED / volume_solids)
