"""Sizes of one system in another, with the factor that the question states where it does."""

from fractions import Fraction

from tests.questions.worked_apart.sums import (
    LITRES_IN_A_GALLON,
    MICROMETRES_IN_A_MIL,
    Working,
    percent,
)

METRES_IN_A_FOOT = Fraction("0.3048")
LITRES_IN_A_US_GALLON = Fraction("3.785")
LITRES_IN_AN_IMPERIAL_GALLON = Fraction("4.546")
MILLILITRES_IN_A_FLUID_OUNCE = Fraction("29.57")
NEWTON_METRES_IN_A_FOOT_POUND = Fraction("1.3558")

SIZE = "film_build/convert_units"

WORKED: dict[str, Working] = {
    "film_build/convert_units/mil_to_micrometre": lambda v: v["film"] * MICROMETRES_IN_A_MIL,
    "film_build/convert_units/micrometre_to_mil": lambda v: v["film"] / MICROMETRES_IN_A_MIL,
    "film_build/convert_units/us_gallon_in_litres": lambda v: v["volume"] * LITRES_IN_A_GALLON,
    "film_build/convert_units/temperature_margin_in_kelvin": lambda v: v["difference"] * 5 / 9,
    "film_build/convert_units/dew_margin": lambda v: v["panel"] - v["dew"],
    f"{SIZE}/fluid_ounces_in_the_cup": lambda v: v["volume"] * MILLILITRES_IN_A_FLUID_OUNCE,
    f"{SIZE}/wrong_gallon": lambda v: (
        v["volume"] * (LITRES_IN_AN_IMPERIAL_GALLON - LITRES_IN_A_US_GALLON)
    ),
    f"{SIZE}/square_feet_to_metres": lambda v: v["area"] * METRES_IN_A_FOOT**2,
    f"{SIZE}/gallons_left_in_litres": lambda v: v["volume"] * LITRES_IN_A_US_GALLON - v["used"],
    f"{SIZE}/torque_for_a_metric_wrench": lambda v: v["torque"] * NEWTON_METRES_IN_A_FOOT_POUND,
    f"{SIZE}/mils_over_the_most": lambda v: v["film"] / MICROMETRES_IN_A_MIL - v["most"],
    f"{SIZE}/compressor_in_litres": lambda v: v["flow"] * v["foot"] ** 3 / 1000,
    f"{SIZE}/air_speed_in_metres": lambda v: v["speed"] * percent(v["foot"]) / 60,
    f"{SIZE}/gauge_in_kilopascals": lambda v: v["pressure"] * v["psi"],
    f"{SIZE}/regulator_in_bar": lambda v: v["pressure"] / v["bar"],
    f"{SIZE}/wheel_nuts_in_newton_metres": lambda v: v["torque"] * v["one"],
}
