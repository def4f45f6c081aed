"""Moist air: dew point and humidity."""

from fractions import Fraction
from math import exp, log

from generator.diagnostics import OutsideValidity
from generator.refinishing.annotations import Celsius, Hectopascal, Percent
from generator.refinishing.bounds import HUNDRED
from generator.refinishing.relation import relation

SATURATION_AT_ZERO = 6.112  # hPa
SLOPE = 17.62
OFFSET = 243.12  # degrees Celsius
PSYCHROMETER = 6.53e-4
PSYCHROMETER_PER_DEGREE = 0.000944
COLDEST, WARMEST = -45, 60
STANDARD_PRESSURE = Fraction("1013.25")
LOWEST_PRESSURE, HIGHEST_PRESSURE = 500, 1100


@relation(
    equation="dew_point = 243.12 × g ÷ (17.62 - g), with"
    " g = ln(humidity ÷ 100 %) + 17.62 × air_temperature ÷ (243.12 + air_temperature)",
    source="wmo_8",
    place="annex 4.B, constants over water",
    status="restated",
)
def dew_point(air_temperature: Celsius, humidity: Percent) -> Celsius:
    """Return the dew point of air.

    Valid: -45 to 60 °C; humidity above 0 % and at most 100 %.
    Deviates: other published constants differ by less than 0.05 K in a shop; printed charts
        cut off to whole degrees and lie up to 0.7 °F lower.
    Checked: 16 °C and 71 % is 10.7 °C, chart 11; 70 °F and 65 % is 57.7 °F, chart 57.
    """
    require_shop_air(air_temperature)
    if not 0 < humidity <= HUNDRED:
        raise OutsideValidity("The humidity must be above 0 % and at most 100 %.")
    air = float(air_temperature)
    strength = log(float(humidity) / 100) + SLOPE * air / (OFFSET + air)
    return exact_from(OFFSET * strength / (SLOPE - strength))


@relation(
    equation="humidity_from_wet_bulb = 100 % × (e(wet_bulb) - A × pressure × (dry_bulb - wet_bulb))"
    " ÷ e(dry_bulb), with e(t) = 6.112 hPa × exp(17.62 × t ÷ (243.12 + t))"
    " and A = 0.000653 × (1 + 0.000944 × wet_bulb)",
    source="wmo_8_psychrometer",
    place="annex 4.B, aspirated psychrometer",
    status="from_memory",
)
def humidity_from_wet_bulb(
    dry_bulb: Celsius, wet_bulb: Celsius, pressure: Hectopascal = STANDARD_PRESSURE
) -> Percent:
    """Return the relative humidity from a dry and a wet thermometer with air drawn past both.

    Valid: wet bulb from 0 °C up to the dry bulb; dry bulb at most 60 °C; 500 to 1100 hPa.
    Deviates: the older coefficient 0.00066 × (1 + 0.00115 × wet bulb) differs by less than
        1 % humidity.
    Checked: 20 and 12 °C is 37.1 %, a university sheet prints 37.5; 21 and 17 °C has its dew
        point at 14.7 °C, chart 15.
    """
    require_shop_air(dry_bulb)
    if not 0 <= wet_bulb <= dry_bulb:
        raise OutsideValidity("The wet bulb must be from 0 °C up to the dry bulb's reading.")
    if not LOWEST_PRESSURE <= pressure <= HIGHEST_PRESSURE:
        raise OutsideValidity("The air pressure must be from 500 to 1100 hPa.")
    dry, wet = float(dry_bulb), float(wet_bulb)
    coefficient = PSYCHROMETER * (1 + PSYCHROMETER_PER_DEGREE * wet)
    vapour = _saturation(wet) - coefficient * float(pressure) * (dry - wet)
    if vapour <= 0:
        raise OutsideValidity("The wet bulb is too far below the dry bulb for any air.")
    return exact_from(100 * vapour / _saturation(dry))


def require_shop_air(temperature: Fraction) -> None:
    """Refuse a temperature outside the range of the saturation formula."""
    if not COLDEST <= temperature <= WARMEST:
        raise OutsideValidity("The air temperature must be from -45 °C to 60 °C.")


def exact_from(number: float) -> Fraction:
    """Turn a computed number into an exact one that is the same on every machine."""
    # nine decimals: logarithms differ in the last bits between machines
    return Fraction(f"{number:.9f}")


def _saturation(temperature: float) -> float:
    return SATURATION_AT_ZERO * exp(SLOPE * temperature / (OFFSET + temperature))
