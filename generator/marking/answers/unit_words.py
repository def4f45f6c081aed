"""Units as learners write them."""

import re

from generator.quantities import TEMPERATURE, UNITS, Unit

# further spellings; the name, the symbol and the singular of every unit are known anyway
_SPELLINGS = {
    "um": "micron microns micrometre micrometres micrometer micrometers",
    "mm": "millimetre millimetres millimeter millimeters",
    "cm": "centimetre centimetres centimeter centimeters",
    "m": "metre metres meter meters",
    "in": 'inch inches " \u2033',
    "ft": "foot feet",
    "mil": "mils thou",
    "m2": "sqm squaremetres squaremeters",
    "ft2": "sqft squarefeet",
    "mL": "millilitre millilitres milliliter milliliters cc ccm",
    "L": "litre litres liter liters",
    "g": "gram grams",
    "kg": "kilo kilos kilogram kilograms",
    "lb": "lbs pound pounds",
    "oz": "ounce ounces",
    "percent": "pct",
    "s": "sec secs second seconds",
    "min": "mins minute minutes",
    "h": "hr hrs hour hours",
    "d": "day days",
    "degC": "c degc celsius degreescelsius",
    "degF": "f degf fahrenheit degreesfahrenheit",
    "K": "kelvin kelvins",
    "degF_diff": "°Fdifference",
    "imp_gal": "imperialgallon",
    "rpm": "r/min rev/min",
    "cfm": "ft3/min",
}
# counts and scales of their own: three coats are not three fills
APART = frozenset({"coats", "passes", "fills", "layers", "grades", "dBA", "GU", "rpm", "opm"})
# a gallon said without its country is the one that the question asks in
_COUNTRIES = ("us_", "imp_")


def unit_of_text(text: str, asked: Unit) -> Unit | None:
    """Return the unit that a text names, or nothing; the asked unit wins where both could be meant.

    A temperature in answer to a difference is read as a difference, and kelvins in answer to a
    temperature as one.
    """
    wanted = plain_spelling(text)
    if wanted in spellings(asked):
        return asked
    for unit in UNITS.values():
        if wanted in spellings(unit):
            return _as_difference(unit) if _is_difference(asked) else unit
    stateless = {plain_spelling(asked.name.replace(country, "")) for country in _COUNTRIES}
    return asked if wanted in stateless else None


def plain_spelling(text: str) -> str:
    """Return a unit's spelling without case, spaces, points and raised figures."""
    low = text.casefold().replace("\u03bc", "u").replace("\u00b5", "u")
    low = low.replace("²", "2").replace("³", "3").replace("·", "").replace("°", "deg")
    return re.sub(r"gallons?", "gal", re.sub(r"[\s._^*]", "", low))


def measures_alike(given: Unit, asked: Unit) -> bool:
    """Say whether a number in one unit can be turned into the other."""
    if given != asked and (given.name in APART or asked.name in APART):
        return False
    if asked.point and given.name == "K":
        return True
    return given.agrees_with(asked)


def spellings(unit: Unit) -> set[str]:
    """Return every plain spelling of a unit."""
    # a step of a scale is shown as its scale is; '°F' is read as the scale and then as a step
    symbol = "" if unit.name == "degF_diff" else unit.symbol
    own = (unit.name, symbol, unit.singular, *_SPELLINGS.get(unit.name, "").split())
    return {plain_spelling(name) for name in own} - {""}


def _is_difference(unit: Unit) -> bool:
    return unit.dimension == TEMPERATURE and not unit.point


def _as_difference(unit: Unit) -> Unit:
    if not unit.point:
        return unit
    return UNITS["K"] if unit.name == "degC" else UNITS["degF_diff"]
