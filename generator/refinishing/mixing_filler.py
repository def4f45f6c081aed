"""Hardener paste for polyester filler, by weight and by the size of ball and bead."""

from fractions import Fraction

from generator.refinishing.annotations import Gram, GramPerMillilitre, Inch, Percent
from generator.refinishing.bounds import HUNDRED, require_above_zero, require_not_below_zero
from generator.refinishing.relation import relation

PEROXIDE = (
    "Hardener paste is an organic peroxide: goggles and gloves on, and keep it from accelerators, "
    "dust and heat."
)


@relation(
    equation="filler_hardener = filler × hardener_percent ÷ 100 %",
    source="filler_chemistry",
    place="1 to 3 % of a 50 % peroxide paste",
    status="restated",
    caution=PEROXIDE,
)
def filler_hardener(filler: Gram, hardener_percent: Percent) -> Gram:
    """Return the grams of hardener paste for a weighed filler.

    Valid: filler above zero; the percentage is of the filler, not of the mix.
    Deviates: the band of the data sheet governs; 1 to 3 % is only the common one.
    Checked: 150 g at 2 % takes 3.0 g; the rule is published, the numbers are ours.
    """
    require_above_zero(mass_of_filler=filler)
    require_not_below_zero(hardener_percentage=hardener_percent)
    return filler * hardener_percent / HUNDRED


@relation(
    equation="filler_hardener_percent = 100 % × hardener ÷ filler",
    source="filler_chemistry",
    place="1 to 3 % of a 50 % peroxide paste",
    status="restated",
    caution=PEROXIDE,
)
def filler_hardener_percent(filler: Gram, hardener: Gram) -> Percent:
    """Return what percentage of the filler the hardener paste is.

    Valid: filler above zero, hardener from zero up.
    Deviates: the band of the data sheet governs; 1 to 3 % is only the common one.
    Checked: 4 g to 160 g is 2.50 %; the rule is published, the numbers are ours.
    """
    require_above_zero(mass_of_filler=filler)
    require_not_below_zero(mass_of_hardener=hardener)
    return HUNDRED * hardener / filler


@relation(
    equation="bead_and_ball_percent = 100 % × 3 × bead_diameter² × bead_length × hardener_density"
    " ÷ (2 × ball_diameter³ × filler_density)",
    source="common_practice",
    place="volumes of a cylinder and a ball",
    status="definition",
    caution=PEROXIDE,
)
def bead_and_ball_percent(
    ball_diameter: Inch,
    bead_length: Inch,
    bead_diameter: Inch,
    filler_density: GramPerMillilitre,
    hardener_density: GramPerMillilitre,
) -> Percent:
    """Return the hardener percentage by mass of a bead of paste beside a ball of filler.

    Valid: all sizes and densities above zero; the bead is a straight round rope.
    Deviates: the bead's thickness counts twice over, so a rule by eye is only a rough guide.
    Checked: volumes worked out apart with the circle number, which falls out; geometry.
    """
    require_above_zero(
        diameter_of_the_ball=ball_diameter,
        length_of_the_bead=bead_length,
        diameter_of_the_bead=bead_diameter,
        density_of_filler=filler_density,
        density_of_hardener=hardener_density,
    )
    # a rope holds pi d² l / 4 and a ball pi D³ / 6, so pi falls out and the answer stays exact
    rope_to_ball = Fraction(3 * bead_diameter**2 * bead_length) / (2 * ball_diameter**3)
    return HUNDRED * rope_to_ball * hardener_density / filler_density
