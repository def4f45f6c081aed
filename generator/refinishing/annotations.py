"""Numbers that say their unit: each name here is an exact number in one unit of the catalogue."""

from fractions import Fraction
from typing import Annotated

Parts = Annotated[tuple[Fraction, ...], "ratio"]
"""Parts by volume in the order base, hardener, thinner; two or three of them."""

Bare = Annotated[Fraction, "one"]
Percent = Annotated[Fraction, "percent"]
Coats = Annotated[Fraction, "coats"]
Fills = Annotated[Fraction, "fills"]
Grades = Annotated[Fraction, "grades"]

Micrometre = Annotated[Fraction, "um"]
Millimetre = Annotated[Fraction, "mm"]
Inch = Annotated[Fraction, "in"]
Mil = Annotated[Fraction, "mil"]

SquareCentimetre = Annotated[Fraction, "cm2"]
SquareMetre = Annotated[Fraction, "m2"]
SquareFoot = Annotated[Fraction, "ft2"]

Millilitre = Annotated[Fraction, "mL"]
Litre = Annotated[Fraction, "L"]
UsGallon = Annotated[Fraction, "us_gal"]

Gram = Annotated[Fraction, "g"]
GramPerMillilitre = Annotated[Fraction, "g/mL"]
GramPerSquareMetre = Annotated[Fraction, "g/m2"]

SquareMetrePerLitre = Annotated[Fraction, "m2/L"]
SquareFootPerUsGallon = Annotated[Fraction, "ft2/us_gal"]

TurnsPerMinute = Annotated[Fraction, "rpm"]
OrbitsPerMinute = Annotated[Fraction, "opm"]
MetrePerSecond = Annotated[Fraction, "m/s"]

Celsius = Annotated[Fraction, "degC"]
Kelvin = Annotated[Fraction, "K"]
FahrenheitDifference = Annotated[Fraction, "degF_diff"]
Hectopascal = Annotated[Fraction, "hPa"]

Kilogram = Annotated[Fraction, "kg"]
UsShortTon = Annotated[Fraction, "us_ton"]
GramPerLitre = Annotated[Fraction, "g/L"]
PoundPerUsGallon = Annotated[Fraction, "lb/us_gal"]
CubicMetre = Annotated[Fraction, "m3"]
PartPerMillion = Annotated[Fraction, "ppm"]
MilligramPerCubicMetre = Annotated[Fraction, "mg/m3"]
CubicFootPerUsGallon = Annotated[Fraction, "ft3/us_gal"]
CubicFootPerMinute = Annotated[Fraction, "cfm"]
LitrePerMinute = Annotated[Fraction, "L/min"]
Minute = Annotated[Fraction, "min"]
Hour = Annotated[Fraction, "h"]
Decibel = Annotated[Fraction, "dBA"]
GlossUnit = Annotated[Fraction, "GU"]
Money = Annotated[Fraction, "money"]
MoneyPerLitre = Annotated[Fraction, "money/L"]
MoneyPerHour = Annotated[Fraction, "money/h"]
MoneyPerSquareMetre = Annotated[Fraction, "money/m2"]
Bar = Annotated[Fraction, "bar"]
Psi = Annotated[Fraction, "psi"]
Kilopascal = Annotated[Fraction, "kPa"]
Pascal = Annotated[Fraction, "Pa"]
InchOfWater = Annotated[Fraction, "in_wg"]
FootPerMinute = Annotated[Fraction, "ft/min"]
NewtonMetre = Annotated[Fraction, "N_m"]
FootPound = Annotated[Fraction, "ft_lbf"]
ImperialGallon = Annotated[Fraction, "imp_gal"]
UsFluidOunce = Annotated[Fraction, "us_fl_oz"]
