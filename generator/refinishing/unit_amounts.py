"""Films, volumes and areas from one unit into another."""

from fractions import Fraction

from generator.refinishing.annotations import (
    ImperialGallon,
    Litre,
    Micrometre,
    Mil,
    Millilitre,
    SquareFoot,
    SquareMetre,
    UsFluidOunce,
    UsGallon,
)
from generator.refinishing.bounds import require_not_below_zero
from generator.refinishing.relation import relation

UM_PER_MIL = Fraction("25.4")
US_GALLON = Fraction("3.785411784")  # litres
IMPERIAL_GALLON = Fraction("4.54609")  # litres
US_FLUID_OUNCE = Fraction("29.5735295625")  # millilitres
FOOT = Fraction("0.3048")  # metres


@relation(
    equation="um_to_mil = film ÷ 25.4",
    source="common_practice",
    place="one mil is a thousandth of an inch",
    status="definition",
)
def um_to_mil(film: Micrometre) -> Mil:
    """Turn a film in micrometres into mils, thousandths of an inch.

    Valid: film from zero up.
    Deviates: exact; in some workshops "mil" means millimetre, so write thousandth or µm.
    Checked: 120 µm is 4.72 mil; a general units library gives the same.
    """
    require_not_below_zero(film=film)
    return film / UM_PER_MIL


@relation(
    equation="us_gallon_to_litre = volume × 3.785411784",
    source="common_practice",
    place="a US gallon is 231 cubic inches",
    status="definition",
)
def us_gallon_to_litre(volume: UsGallon) -> Litre:
    """Turn US gallons into litres.

    Valid: volume from zero up.
    Deviates: exact; the Imperial gallon is a fifth larger.
    Checked: 1 US gal is 3.785 L and 0.25 US gal 946 mL; a general units library gives the same.
    """
    require_not_below_zero(volume=volume)
    return volume * US_GALLON


@relation(
    equation="imperial_gallon_to_litre = volume × 4.54609",
    source="common_practice",
    place="definition of the Imperial gallon",
    status="definition",
)
def imperial_gallon_to_litre(volume: ImperialGallon) -> Litre:
    """Turn Imperial gallons into litres.

    Valid: volume from zero up.
    Deviates: exact; never mix with US gallons.
    Checked: 1 imp gal is 4.546 L; a general units library gives the same.
    """
    require_not_below_zero(volume=volume)
    return volume * IMPERIAL_GALLON


@relation(
    equation="us_fluid_ounce_to_millilitre = volume × 29.5735295625",
    source="common_practice",
    place="128 US fluid ounces are a US gallon",
    status="definition",
)
def us_fluid_ounce_to_millilitre(volume: UsFluidOunce) -> Millilitre:
    """Turn US fluid ounces into millilitres.

    Valid: volume from zero up.
    Deviates: exact; the Imperial fluid ounce is 28.41 mL.
    Checked: 1 US fl oz is 29.57 mL; a general units library gives the same.
    """
    require_not_below_zero(volume=volume)
    return volume * US_FLUID_OUNCE


@relation(
    equation="square_foot_to_square_metre = area × 0.3048²",
    source="common_practice",
    place="a foot is 0.3048 m",
    status="definition",
)
def square_foot_to_square_metre(area: SquareFoot) -> SquareMetre:
    """Turn square feet into square metres.

    Valid: area from zero up.
    Deviates: exact.
    Checked: 400 ft² is 37.16 m²; a general units library gives the same.
    """
    require_not_below_zero(area=area)
    return area * FOOT**2
