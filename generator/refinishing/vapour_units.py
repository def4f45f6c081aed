"""Parts per million and milligrams in a cubic metre: two ways to say how much vapour is there."""

from fractions import Fraction

from generator.refinishing.annotations import Bare, MilligramPerCubicMetre, PartPerMillion
from generator.refinishing.bounds import require_above_zero, require_not_below_zero
from generator.refinishing.relation import relation

MOLAR_VOLUME = Fraction("24.45")  # litres per mole at 25 °C and one atmosphere


@relation(
    equation="ppm_to_mass = concentration × molecular_mass ÷ 24.45",
    source="ccohs_conversion",
    place="conversion at 25 °C and 760 mm of mercury",
    status="read",
)
def ppm_to_mass(concentration: PartPerMillion, molecular_mass: Bare) -> MilligramPerCubicMetre:
    """Turn parts per million of a vapour into milligrams in a cubic metre.

    Valid: concentration from zero up, molecular mass above zero; 25 °C and one atmosphere.
    Deviates: tables round; 5000 ppm at molecular mass 44 is 8998, printed as 9000.
    Checked: 150 ppm at 116.16 is 713 mg/m³; a NIOSH file prints the same.
    """
    require_not_below_zero(concentration=concentration)
    require_above_zero(molecular_mass=molecular_mass)
    return concentration * molecular_mass / MOLAR_VOLUME


@relation(
    equation="mass_to_ppm = concentration × 24.45 ÷ molecular_mass",
    source="ccohs_conversion",
    place="conversion at 25 °C and 760 mm of mercury",
    status="read",
)
def mass_to_ppm(concentration: MilligramPerCubicMetre, molecular_mass: Bare) -> PartPerMillion:
    """Turn milligrams of a vapour in a cubic metre into parts per million.

    Valid: concentration from zero up, molecular mass above zero; 25 °C and one atmosphere.
    Deviates: vapours and gases only, never dust or mist.
    Checked: 30 mg/m³ at 78 is 9.4 ppm; a conversion note prints the same.
    """
    require_not_below_zero(concentration=concentration)
    require_above_zero(molecular_mass=molecular_mass)
    return concentration * MOLAR_VOLUME / Fraction(molecular_mass)
