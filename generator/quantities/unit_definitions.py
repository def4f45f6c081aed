"""The exact size of every unit, built from the definitions in NIST SP 811, Appendix B.

Factors lead to metre, kilogram, second, kelvin and one unit of money.
"""

from fractions import Fraction

from generator.quantities.dimension import BARE, TEMPERATURE, Dimension

_LENGTH = Dimension(length=1)
_AREA = Dimension(length=2)
_VOLUME = Dimension(length=3)
_MASS = Dimension(mass=1)
_TIME = Dimension(time=1)
_DENSITY = Dimension(length=-3, mass=1)
_SPREAD = Dimension(length=-1)
_SPEED = Dimension(length=1, time=-1)
_RATE = Dimension(time=-1)
_FLOW = Dimension(length=3, time=-1)
_PRESSURE = Dimension(length=-1, mass=1, time=-2)
_POWER = Dimension(length=2, mass=1, time=-3)
_VISCOSITY = Dimension(length=-1, mass=1, time=-1)
_KINEMATIC_VISCOSITY = Dimension(length=2, time=-1)
# a mole only counts, so an energy per mole measures as an energy
_ENERGY = Dimension(length=2, mass=1, time=-2)

_INCH = Fraction("0.0254")
_FOOT = 12 * _INCH
_LITRE = Fraction(1, 1000)
_US_GALLON = 231 * _INCH**3
_IMPERIAL_GALLON = Fraction("4.54609") * _LITRE
_POUND = Fraction("0.45359237")
_STANDARD_GRAVITY = Fraction("9.80665")
_PSI = _POUND * _STANDARD_GRAVITY / _INCH**2
_INCH_OF_WATER = 1000 * _STANDARD_GRAVITY * _INCH
_HORSEPOWER = 550 * _FOOT * _POUND * _STANDARD_GRAVITY
_FAHRENHEIT_STEP = Fraction(5, 9)

# name, symbol, factor, dimension
SCALED: tuple[tuple[str, str, Fraction, Dimension], ...] = (
    ("um", "µm", Fraction(1, 10**6), _LENGTH),
    ("mm", "mm", Fraction(1, 1000), _LENGTH),
    ("cm", "cm", Fraction(1, 100), _LENGTH),
    ("m", "m", Fraction(1), _LENGTH),
    ("in", "in", _INCH, _LENGTH),
    ("ft", "ft", _FOOT, _LENGTH),
    ("mil", "mil", _INCH / 1000, _LENGTH),
    ("cm2", "cm²", Fraction(1, 10**4), _AREA),
    ("m2", "m²", Fraction(1), _AREA),
    ("in2", "in²", _INCH**2, _AREA),
    ("ft2", "ft²", _FOOT**2, _AREA),
    ("mL", "mL", _LITRE / 1000, _VOLUME),
    ("L", "L", _LITRE, _VOLUME),
    ("cm3", "cm³", Fraction(1, 10**6), _VOLUME),
    ("m3", "m³", Fraction(1), _VOLUME),
    ("us_gal", "US gal", _US_GALLON, _VOLUME),
    ("us_qt", "US qt", _US_GALLON / 4, _VOLUME),
    ("us_pt", "US pt", _US_GALLON / 8, _VOLUME),
    ("us_fl_oz", "US fl oz", _US_GALLON / 128, _VOLUME),
    ("imp_gal", "imp gal", _IMPERIAL_GALLON, _VOLUME),
    ("imp_fl_oz", "imp fl oz", _IMPERIAL_GALLON / 160, _VOLUME),
    ("in3", "in³", _INCH**3, _VOLUME),
    ("ft3", "ft³", _FOOT**3, _VOLUME),
    ("g", "g", Fraction(1, 1000), _MASS),
    ("kg", "kg", Fraction(1), _MASS),
    ("oz", "oz", _POUND / 16, _MASS),
    ("lb", "lb", _POUND, _MASS),
    ("us_ton", "US short tons", 2000 * _POUND, _MASS),
    ("g/mL", "g/mL", Fraction(1000), _DENSITY),
    ("kg/L", "kg/L", Fraction(1000), _DENSITY),
    ("g/L", "g/L", Fraction(1), _DENSITY),
    ("lb/us_gal", "lb/US gal", _POUND / _US_GALLON, _DENSITY),
    ("m2/L", "m²/L", 1 / _LITRE, _SPREAD),
    ("ft2/us_gal", "ft²/US gal", _FOOT**2 / _US_GALLON, _SPREAD),
    ("L/m2", "L/m²", _LITRE, _LENGTH),
    ("g/m2", "g/m²", Fraction(1, 1000), Dimension(length=-2, mass=1)),
    ("percent", "%", Fraction(1, 100), BARE),
    ("one", "", Fraction(1), BARE),
    ("coats", "coats", Fraction(1), BARE),
    ("passes", "passes", Fraction(1), BARE),
    ("fills", "fills", Fraction(1), BARE),
    ("layers", "layers", Fraction(1), BARE),
    ("grades", "grades", Fraction(1), BARE),
    ("rpm", "rpm", Fraction(1, 60), _RATE),
    ("opm", "opm", Fraction(1, 60), _RATE),
    ("ach", "air changes/h", Fraction(1, 3600), _RATE),
    ("mm/s", "mm/s", Fraction(1, 1000), _SPEED),
    ("cm/s", "cm/s", Fraction(1, 100), _SPEED),
    ("in/s", "in/s", _INCH, _SPEED),
    ("m/s", "m/s", Fraction(1), _SPEED),
    ("ft/min", "ft/min", _FOOT / 60, _SPEED),
    ("s", "s", Fraction(1), _TIME),
    ("min", "min", Fraction(60), _TIME),
    ("h", "h", Fraction(3600), _TIME),
    ("d", "d", Fraction(86400), _TIME),
    ("K", "K", Fraction(1), TEMPERATURE),
    ("degF_diff", "°F", _FAHRENHEIT_STEP, TEMPERATURE),
    ("hPa", "hPa", Fraction(100), _PRESSURE),
    ("kPa", "kPa", Fraction(1000), _PRESSURE),
    ("bar", "bar", Fraction(10**5), _PRESSURE),
    ("psi", "psi", _PSI, _PRESSURE),
    ("Pa", "Pa", Fraction(1), _PRESSURE),
    ("in_wg", "inWG", _INCH_OF_WATER, _PRESSURE),
    ("cfm", "cfm", _FOOT**3 / 60, _FLOW),
    ("L/min", "L/min", _LITRE / 60, _FLOW),
    ("m3/h", "m³/h", Fraction(1, 3600), _FLOW),
    ("mL/min", "mL/min", _LITRE / 60_000, _FLOW),
    ("us_fl_oz/min", "US fl oz/min", _US_GALLON / 128 / 60, _FLOW),
    ("mm2/s", "mm²/s", Fraction(1, 10**6), _KINEMATIC_VISCOSITY),
    ("mPa_s", "mPa·s", Fraction(1, 1000), _VISCOSITY),
    ("hp", "hp", _HORSEPOWER, _POWER),
    ("kW", "kW", Fraction(1000), _POWER),
    ("kJ/mol", "kJ/mol", Fraction(1000), _ENERGY),
    ("ppm", "ppm", Fraction(1, 10**6), BARE),
    ("mg/m3", "mg/m³", Fraction(1, 10**6), _DENSITY),
    ("ug/m3", "µg/m³", Fraction(1, 10**9), _DENSITY),
    ("ft3/us_gal", "ft³/US gal", _FOOT**3 / _US_GALLON, BARE),
    # a sound level and a gloss reading are numbers on a scale of their own
    ("dBA", "dBA", Fraction(1), BARE),
    ("GU", "GU", Fraction(1), BARE),
    ("N_m", "N·m", Fraction(1), _ENERGY),
    ("ft_lbf", "ft·lbf", _FOOT * _POUND * _STANDARD_GRAVITY, _ENERGY),
    ("money", "", Fraction(1), Dimension(money=1)),
    ("money/L", "per L", 1 / _LITRE, Dimension(length=-3, money=1)),
    ("money/us_gal", "per US gal", 1 / _US_GALLON, Dimension(length=-3, money=1)),
    ("money/h", "per h", Fraction(1, 3600), Dimension(time=-1, money=1)),
    ("money/m2", "per m²", Fraction(1), Dimension(length=-2, money=1)),
)

# name, symbol, factor, offset: kelvins = number x factor + offset
POINTS: tuple[tuple[str, str, Fraction, Fraction], ...] = (
    ("degC", "°C", Fraction(1), Fraction("273.15")),
    ("degF", "°F", _FAHRENHEIT_STEP, Fraction("459.67") * _FAHRENHEIT_STEP),
)

# symbols that are words of the trade, and how one of them is said
SINGULARS = {
    "coats": "coat",
    "passes": "pass",
    "fills": "fill",
    "layers": "layer",
    "grades": "grade",
    "US short tons": "US short ton",
}
