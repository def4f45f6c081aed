"""Named units with exact sizes, and the one way to find them."""

from collections.abc import Mapping
from dataclasses import dataclass
from fractions import Fraction
from types import MappingProxyType

from generator.diagnostics import nearest_name
from generator.quantities.dimension import TEMPERATURE, Dimension, dimension_words
from generator.quantities.unit_definitions import POINTS, SCALED, SINGULARS


@dataclass(frozen=True, slots=True)
class Unit:
    """A unit of measure.

    name       as authors write it, such as um or us_gal; empty for a worked-out unit
    symbol     as readers see it, such as µm
    factor     base units in one of it, exact
    offset     base units at its zero; only temperatures on a scale have one
    dimension  powers of length, mass, time, temperature and money
    point      true for a temperature on a scale, false for a difference
    singular   symbol for exactly one of it, when that differs
    """

    name: str
    symbol: str
    factor: Fraction
    offset: Fraction
    dimension: Dimension
    point: bool
    singular: str = ""

    def agrees_with(self, other: "Unit") -> bool:
        """Say whether numbers in both units measure the same kind of thing."""
        return self.dimension == other.dimension and self.point == other.point

    @property
    def kind_words(self) -> str:
        """Say what the unit measures, such as 'a length'."""
        return dimension_words(self.dimension, self.point)

    @property
    def words(self) -> str:
        """Say what the unit measures with its name, such as 'a length (um)'."""
        if not self.name or self.name == "one":
            return self.kind_words
        return f"{self.kind_words} ({self.name})"


class UnknownUnit(ValueError):
    """A unit name that is not in the list.

    name        the name that was asked for
    suggestion  the nearest known name, or nothing
    """

    def __init__(self, name: str) -> None:
        self.name = name
        self.suggestion = nearest_name(name, UNITS)
        ask = f"; did you mean '{self.suggestion}'?" if self.suggestion else ""
        super().__init__(f"there is no unit named '{name}'{ask}")


class UnitsDisagree(ValueError):
    """Two units that do not measure the same kind of thing."""

    def __init__(self, given: Unit, wanted: Unit) -> None:
        self.given = given
        self.wanted = wanted
        super().__init__(f"cannot turn {given.words} into {wanted.words}")


def base_unit(dimension: Dimension, point: bool = False) -> Unit:
    """Return the nameless unit of size one for a dimension."""
    return Unit("", "", Fraction(1), Fraction(0), dimension, point)


def unit_named(name: str) -> Unit:
    """Find a unit by its name; raise UnknownUnit when there is none."""
    unit = UNITS.get(name)
    if unit is None:
        raise UnknownUnit(name)
    return unit


def _all_units() -> Mapping[str, Unit]:
    units = {
        name: Unit(name, symbol, factor, Fraction(0), dimension, False, SINGULARS.get(name, ""))
        for name, symbol, factor, dimension in SCALED
    }
    for name, symbol, factor, offset in POINTS:
        units[name] = Unit(name, symbol, factor, offset, TEMPERATURE, True)
    return MappingProxyType(units)


UNITS: Mapping[str, Unit] = _all_units()
