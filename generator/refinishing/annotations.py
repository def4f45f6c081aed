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
