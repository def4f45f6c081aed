"""The units that the names of a published check end in or hold, such as dft_um or m2_per_L."""

from collections.abc import Iterator
from dataclasses import dataclass
from fractions import Fraction
from functools import cache

from generator.quantities import Unit, unit_named
from generator.quantities.dimension import BARE, Dimension

SPELLINGS = {
    "um": "um micron microns micrometre micrometres micrometer micrometers",
    "mm": "mm millimetre millimeter",
    "cm": "cm centimetre centimeter",
    "m": "m metre metres meter meters",
    "mil": "mil mils thou",
    "in": "in inch inches",
    "ft": "ft foot feet",
    "cm2": "cm2 cm^2",
    "m2": "m2 m^2 sqm square_metre square_meter",
    "in2": "in2 in^2 sqin square_inch",
    "ft2": "ft2 ft^2 sqft square_foot square_feet",
    "mL": "mL ml millilitre millilitres milliliter milliliters",
    "L": "L l litre litres liter liters",
    "cm3": "cm3 cm^3 cc",
    "m3": "m3 m^3 cubic_metre cubic_meter",
    "in3": "in3 in^3 cubic_inch",
    "ft3": "ft3 ft^3 cuft cubic_foot cubic_feet",
    "us_gal": "gal gals gallon gallons US_gal us_gal US_gallon US_liquid_gallon usgal",
    "us_qt": "qt quart quarts US_qt us_qt US_liquid_quart",
    "us_pt": "pt pint pints US_pt us_pt US_liquid_pint",
    "us_fl_oz": "fl_oz floz US_fl_oz us_fl_oz US_fluid_ounce fluid_ounce fluid_ounces",
    "imp_gal": "imp_gal UK_gal uk_gal imperial_gallon",
    "imp_fl_oz": "imp_fl_oz UK_fl_oz uk_fl_oz imperial_fluid_ounce",
    "g": "g gram grams gramme",
    "kg": "kg kilogram kilograms",
    "oz": "oz ounce ounces",
    "lb": "lb lbs pound pounds",
    "us_ton": "short_tons short_ton us_ton us_tons tons ton",
    "percent": "pct percent",
    "one": "times dimensionless",
    "rpm": "rpm",
    "opm": "opm",
    "ach": "ach ACH",
    "ft/min": "fpm",
    "s": "s sec second seconds",
    "min": "min mins minute minutes",
    "h": "h hr hrs hour hours",
    "d": "d day days",
    "K": "K kelvin",
    "degC": "C degC celsius",
    "degF": "F degF fahrenheit",
    "hPa": "hPa mbar",
    "kPa": "kPa kilopascal",
    "Pa": "Pa pascal",
    "bar": "bar",
    "psi": "psi psig",
    "in_wg": "inwg in_wg inwc in_wc inH2O inH2O_conventional",
    "cfm": "cfm scfm",
    "L/min": "lpm LPM",
    "mm2/s": "cSt cst",
    "mPa_s": "mPa_s mPas cP cp",
    "hp": "hp horsepower",
    "kW": "kW kilowatt",
    "kJ/mol": "kJ_per_mol",
    "ppm": "ppm",
    "dBA": "dBA dB",
    "GU": "GU",
    "N_m": "N_m Nm newton_metre newton_meter joule J",
    "ft_lbf": "ft_lbf ft_lb foot_pound foot_pounds",
}
UNIT_OF = {text: name for name, texts in SPELLINGS.items() for text in texts.split()}
MASS, AREA = Dimension(mass=1), Dimension(length=2)
# units that stand in compound ones only, such as mm2_per_s and mg_per_m3
PARTS_OF_UNITS = {
    "mg": (Fraction(1, 10**6), MASS),
    "ug": (Fraction(1, 10**9), MASS),
    "mm2": (Fraction(1, 10**6), AREA),
}
# words that only count, as in orbits_per_min
COUNTED = ("orbits", "revolutions", "turns", "changes", "strokes")
LONGEST = 3  # words in the longest spelling


@dataclass(frozen=True, slots=True)
class Reading:
    """One way to read a name.

    stem  the words without the unit, joined by _
    unit  the unit found; nothing when the whole name is taken as words
    """

    stem: str
    unit: Unit | None


@cache
def readings(name: str) -> tuple[Reading, ...]:
    """Return every way to read a name, those with the longest unit first, the plain words last."""
    words = name.split("_")
    found = sorted(_placed_units(words), key=lambda place: place[0] - place[1])
    with_unit = [Reading("_".join(words[:a] + kept + words[b:]), u) for a, b, kept, u in found]
    return (*with_unit, Reading(name, None))


def unit_spelled(text: str) -> Unit | None:
    """Return the unit of a spelling such as US_gal, m2_per_L or cubic_foot/minute."""
    above, slash, below = text.replace("_per_", "/").partition("/")
    return _over(_plain(above), _plain(below)) if slash else _plain(text)


def pair_units(name: str) -> tuple[str, tuple[Unit, Unit]] | None:
    """Read two units side by side, as in periods_dBA_h; give the words before them."""
    words = name.split("_")
    for start in range(len(words)):
        for middle in range(start + 1, len(words)):
            first = unit_spelled("_".join(words[start:middle]))
            second = unit_spelled("_".join(words[middle:]))
            if first and second:
                return "_".join(words[:start]), (first, second)
    return None


def _placed_units(words: list[str]) -> Iterator[tuple[int, int, list[str], Unit]]:
    """Return start, end, the words to keep from between, and the unit of every unit in a name."""
    for start, end, unit in _simple_units(words):
        yield start, end, [], unit
        for start_below, end_below, below in _simple_units(words):
            between = words[end : start_below - 1]
            is_over = start_below > end and words[start_below - 1] == "per" and len(between) < 3
            quotient = _over(unit, below) if is_over else None
            if quotient:
                yield start, end_below, between, quotient
    for start, end, below in _simple_units(words):
        if start and words[start - 1] == "per":
            price = _over(unit_named("money"), below)
            if price:
                yield start - 1, end, [], price


def _simple_units(words: list[str]) -> Iterator[tuple[int, int, Unit]]:
    for start in range(len(words)):
        for end in range(start + 1, min(start + LONGEST, len(words)) + 1):
            unit = _plain("_".join(words[start:end]))
            if unit:
                yield start, end, unit


@cache
def _plain(text: str) -> Unit | None:
    if text in PARTS_OF_UNITS:
        factor, dimension = PARTS_OF_UNITS[text]
        return Unit(text, text, factor, Fraction(0), dimension, False)
    if text in COUNTED:
        return Unit(text, text, Fraction(1), Fraction(0), BARE, False)
    return unit_named(UNIT_OF[text]) if text in UNIT_OF else None


def _over(above: Unit | None, below: Unit | None) -> Unit | None:
    if above is None or below is None or above.point or below.point:
        return None
    name = f"{above.name}/{below.name}"
    dimension = above.dimension.over(below.dimension)
    return Unit(name, name, above.factor / below.factor, Fraction(0), dimension, False)
