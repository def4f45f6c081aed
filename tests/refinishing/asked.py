"""Asking a relation as a reader does, by name, with inputs and an answer in any unit."""

from fractions import Fraction

from generator.quantities import Quantity, unit_named
from generator.refinishing import CATALOGUE
from generator.refinishing.request import work_out


def asked(name: str, unit: str, result: str = "", **inputs: str) -> Fraction:
    """Return one result of a relation, exact, in the unit asked for."""
    results = work_out(name, inputs).results
    picked = result or name
    own = CATALOGUE[name].results[picked]
    return Quantity(results[picked], own).to(unit_named(unit)).number


def exact(*numbers: object) -> tuple[Fraction, ...]:
    """Return exact fractions for numbers written as text or whole numbers."""
    return tuple(Fraction(str(number)) for number in numbers)
