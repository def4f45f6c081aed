"""Numbers that say their unit: those of air, spraying, cure and flow cups."""

from fractions import Fraction
from typing import Annotated

Passes = Annotated[Fraction, "passes"]
Layers = Annotated[Fraction, "layers"]

Second = Annotated[Fraction, "s"]

Fahrenheit = Annotated[Fraction, "degF"]
KilojoulePerMole = Annotated[Fraction, "kJ/mol"]

Centimetre = Annotated[Fraction, "cm"]
Foot = Annotated[Fraction, "ft"]
CubicFoot = Annotated[Fraction, "ft3"]

CentimetrePerSecond = Annotated[Fraction, "cm/s"]

CubicMetrePerHour = Annotated[Fraction, "m3/h"]
MillilitrePerMinute = Annotated[Fraction, "mL/min"]
AirChangesPerHour = Annotated[Fraction, "ach"]

Horsepower = Annotated[Fraction, "hp"]

SquareMillimetrePerSecond = Annotated[Fraction, "mm2/s"]
MillipascalSecond = Annotated[Fraction, "mPa_s"]
