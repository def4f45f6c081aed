"""Numbers with their units, and mixing ratios."""

from dataclasses import dataclass
from fractions import Fraction

from generator.quantities.units import Unit, UnitsDisagree


@dataclass(frozen=True, slots=True)
class Quantity:
    """An exact number in a unit."""

    number: Fraction
    unit: Unit

    @property
    def base(self) -> Fraction:
        """Return the number in base units; kelvins from absolute zero for a scale temperature."""
        return self.number * self.unit.factor + self.unit.offset

    def to(self, unit: Unit) -> "Quantity":
        """Return the same quantity in another unit; raises UnitsDisagree if it cannot."""
        if not self.unit.agrees_with(unit):
            raise UnitsDisagree(self.unit, unit)
        return Quantity((self.base - unit.offset) / unit.factor, unit)


@dataclass(frozen=True, slots=True)
class Ratio:
    """Parts that are mixed with one another, in the order base, hardener, thinner.

    parts  one or more exact numbers, none below zero, not all zero
    """

    parts: tuple[Fraction, ...]

    def __post_init__(self) -> None:
        if not self.parts or min(self.parts) < 0 or sum(self.parts) == 0:
            raise ValueError("a ratio needs parts that are not below zero and not all zero")

    @property
    def total(self) -> Fraction:
        """Return the sum of the parts."""
        return sum(self.parts, Fraction(0))
