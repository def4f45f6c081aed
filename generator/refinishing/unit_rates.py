"""Air flow, air speed and solvent content from one unit into another."""

from fractions import Fraction

from generator.refinishing.annotations import (
    CubicFootPerMinute,
    FootPerMinute,
    GramPerLitre,
    LitrePerMinute,
    MetrePerSecond,
    PoundPerUsGallon,
)
from generator.refinishing.bounds import require_not_below_zero
from generator.refinishing.relation import relation

US_GALLON = Fraction("3.785411784")  # litres
CUBIC_FOOT = Fraction("28.316846592")  # litres
FOOT = Fraction("0.3048")  # metres
POUND = Fraction("453.59237")  # grams


@relation(
    equation="cfm_to_litre_per_minute = flow × 28.316846592",
    source="common_practice",
    place="a cubic foot in litres",
    status="definition",
)
def cfm_to_litre_per_minute(flow: CubicFootPerMinute) -> LitrePerMinute:
    """Turn an air flow in cubic feet a minute into litres a minute.

    Valid: flow from zero up.
    Deviates: free air and compressed air differ; this changes the unit only.
    Checked: 12 cfm is 340 L/min; a general units library gives the same.
    """
    require_not_below_zero(flow=flow)
    return flow * CUBIC_FOOT


@relation(
    equation="foot_per_minute_to_metre_per_second = speed × 0.3048 ÷ 60",
    source="common_practice",
    place="a foot is 0.3048 m",
    status="definition",
)
def foot_per_minute_to_metre_per_second(speed: FootPerMinute) -> MetrePerSecond:
    """Turn an air speed in feet a minute into metres a second.

    Valid: speed from zero up.
    Deviates: exact.
    Checked: 100 ft/min is 0.508 m/s; a general units library gives the same.
    """
    require_not_below_zero(speed=speed)
    return speed * FOOT / 60


@relation(
    equation="pound_per_gallon_to_gram_per_litre = content × 453.59237 ÷ 3.785411784",
    source="common_practice",
    place="definitions of pound and US gallon",
    status="definition",
)
def pound_per_gallon_to_gram_per_litre(content: PoundPerUsGallon) -> GramPerLitre:
    """Turn pounds in a US gallon into grams in a litre.

    Valid: content from zero up.
    Deviates: rules print rounded pairs: 3.5 lb/gal as 420 g/L, exactly 419.4.
    Checked: 1 lb/gal is 119.8 g/L; a handbook and a general units library give the same.
    """
    require_not_below_zero(content=content)
    return content * POUND / US_GALLON


@relation(
    equation="gram_per_litre_to_pound_per_gallon = content × 3.785411784 ÷ 453.59237",
    source="common_practice",
    place="definitions of pound and US gallon",
    status="definition",
)
def gram_per_litre_to_pound_per_gallon(content: GramPerLitre) -> PoundPerUsGallon:
    """Turn grams in a litre into pounds in a US gallon.

    Valid: content from zero up.
    Deviates: rules print rounded pairs; test a value in the unit of the rule.
    Checked: 250 g/L is 2.09 lb/gal; a general units library gives the same.
    """
    require_not_below_zero(content=content)
    return content * US_GALLON / POUND
