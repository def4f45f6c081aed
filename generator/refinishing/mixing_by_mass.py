"""Mixing on a scale: from volumes and densities to grams."""

from fractions import Fraction
from typing import NamedTuple

from generator.diagnostics import OutsideValidity
from generator.refinishing.annotations import Bare, Gram, GramPerMillilitre, Millilitre, Parts
from generator.refinishing.bounds import (
    HUNDRED,
    require_above_zero,
    require_not_below_zero,
    three_parts,
)
from generator.refinishing.relation import relation


class MixMasses(NamedTuple):
    """A mix as weighed, with its density and the parts for each 100 parts of base by mass."""

    base: Gram
    hardener: Gram
    thinner: Gram
    total: Gram
    mixed_density: GramPerMillilitre
    hardener_per_100: Bare
    thinner_per_100: Bare


@relation(
    equation="base = base_volume × base_density; "
    "hardener = hardener_volume × hardener_density; "
    "thinner = thinner_volume × thinner_density; "
    "total = base + hardener + thinner; "
    "mixed_density = total ÷ (base_volume + hardener_volume + thinner_volume); "
    "hardener_per_100 = 100 × hardener ÷ base; "
    "thinner_per_100 = 100 × thinner ÷ base",
    source="common_practice",
    place="mass is volume times density",
    status="definition",
)
def masses_from_volumes(
    base_volume: Millilitre,
    hardener_volume: Millilitre,
    thinner_volume: Millilitre,
    base_density: GramPerMillilitre,
    hardener_density: GramPerMillilitre,
    thinner_density: GramPerMillilitre,
) -> MixMasses:
    """Turn a mix by volume into grams for the scale.

    Valid: base volume and all densities above zero; a volume of zero leaves that can out.
    Deviates: volumes are taken to add up; real mixes shrink a little.
    Checked: 400, 100, 100 mL at 1.35, 1.05, 0.88 g/mL give 540, 105, 88 g; arithmetic.
    """
    require_above_zero(
        volume_of_base=base_volume,
        density_of_base=base_density,
        density_of_hardener=hardener_density,
        density_of_thinner=thinner_density,
    )
    require_not_below_zero(volume_of_hardener=hardener_volume, volume_of_thinner=thinner_volume)
    base = Fraction(base_volume) * base_density
    hardener = Fraction(hardener_volume) * hardener_density
    thinner = Fraction(thinner_volume) * thinner_density
    total = base + hardener + thinner
    density = total / (base_volume + hardener_volume + thinner_volume)
    return MixMasses(
        base, hardener, thinner, total, density, HUNDRED * hardener / base, HUNDRED * thinner / base
    )


@relation(
    equation="hardener_mass = base_mass × hardener_part ÷ base_part"
    " × hardener_density ÷ base_density",
    source="common_practice",
    place="mass is volume times density",
    status="definition",
)
def hardener_mass(
    base_mass: Gram,
    parts: Parts,
    base_density: GramPerMillilitre,
    hardener_density: GramPerMillilitre,
) -> Gram:
    """Return the grams of hardener for a weighed base when the ratio is by volume.

    Valid: mass, densities and parts above zero.
    Deviates: a sheet that gives a ratio by weight needs no density; use its ratio as it stands.
    Checked: 540 g at 4:1 with 1.35 and 1.05 g/mL gives 105 g; arithmetic.
    """
    require_above_zero(
        mass_of_base=base_mass, density_of_base=base_density, density_of_hardener=hardener_density
    )
    base_part, hardener_part, _ = three_parts(parts)
    volume = Fraction(base_mass) / base_density
    return volume * hardener_part / base_part * hardener_density


@relation(
    equation="mixed_density = (base_part × base_density + hardener_part × hardener_density"
    " + thinner_part × thinner_density) ÷ all_parts",
    source="density_exercises",
    place="worked mixes 6:1 and 1:1",
    status="restated",
)
def mixed_density(
    parts: Parts,
    base_density: GramPerMillilitre,
    hardener_density: GramPerMillilitre,
    thinner_density: GramPerMillilitre = Fraction(0),
) -> GramPerMillilitre:
    """Return the density of a mix by volume; a mix of another density is off its ratio.

    Valid: parts and their densities above zero; a thinner density only for a thinner part.
    Deviates: volumes are taken to add up.
    Checked: 6:1 of 1.3 and 0.9 g/mL gives 1.24; the exercise sheet prints the same.
    """
    require_above_zero(density_of_base=base_density, density_of_hardener=hardener_density)
    base, hardener, thinner = three_parts(parts)
    if (thinner > 0) != (thinner_density > 0):
        raise OutsideValidity("Give a thinner density when, and only when, the ratio has thinner.")
    mass = base * base_density + hardener * hardener_density + thinner * thinner_density
    return mass / (base + hardener + thinner)


@relation(
    equation="mass_of_volume = volume × density",
    source="density_exercises",
    place="mass of 16.5 L",
    status="restated",
)
def mass_of_volume(volume: Millilitre, density: GramPerMillilitre) -> Gram:
    """Return the mass of a volume of paint.

    Valid: volume and density above zero; specific severity is taken against water at 1.00 g/mL.
    Deviates: none.
    Checked: 16.5 L at 1.45 gives 23.9 kg; the exercise sheet prints the same.
    """
    require_above_zero(volume=volume, density=density)
    return Fraction(volume) * density


@relation(
    equation="density_of = mass ÷ volume",
    source="density_exercises",
    place="9.75 kg in 7.5 L",
    status="restated",
)
def density_of(mass: Gram, volume: Millilitre) -> GramPerMillilitre:
    """Return the density of a weighed volume.

    Valid: mass and volume above zero.
    Deviates: none.
    Checked: 9.75 kg in 7.5 L is 1.30 kg/L; the exercise sheet prints the same.
    """
    require_above_zero(mass=mass, volume=volume)
    return Fraction(mass) / volume
