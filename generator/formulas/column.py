"""Exact numbers of many sets of values, as whole numbers over whole numbers."""

from collections.abc import Sequence
from dataclasses import dataclass
from fractions import Fraction
from math import lcm

from generator.quantities import Unit


@dataclass(frozen=True, slots=True)
class Column:
    """Exact numbers in base units, one for each set of values: above / below.

    below  above zero everywhere; one number where all sets share it
    bits   most binary digits that any of the numbers can have
    """

    above: Sequence[int]
    below: int | Sequence[int]
    bits: int

    def belows(self) -> Sequence[int]:
        """Return the lower number of each set."""
        return [self.below] * len(self.above) if isinstance(self.below, int) else self.below

    def fractions(self) -> list[Fraction]:
        """Return the number of each set."""
        return [Fraction(a, b) for a, b in zip(self.above, self.belows(), strict=True)]

    def turned_into(self, unit: Unit) -> "Column":
        """Return the numbers in another unit than the base unit of what they measure."""
        over, under = unit.factor.denominator, unit.factor.numerator
        above = self.above
        if unit.offset:
            # (a / b - offset) / factor
            zero = unit.offset
            pairs = zip(above, self.belows(), strict=True)
            above = [a * zero.denominator - b * zero.numerator for a, b in pairs]
            under *= zero.denominator
        bits = (
            self.bits
            + max(over.bit_length(), under.bit_length())
            + unit.offset.numerator.bit_length()
            + 1
        )
        return Column([a * over for a in above], times(self.below, under), bits)


def summed(left: Column, right: Column, sign: int) -> Column:
    """Return the sum of two columns, or their difference where the sign is -1."""
    pairs = zip(left.above, right.above, strict=True)
    if isinstance(left.below, int) and isinstance(right.below, int):
        below = lcm(left.below, right.below)
        one, other = below // left.below, sign * (below // right.below)
        bits = max(left.bits + one.bit_length(), right.bits + abs(other).bit_length()) + 1
        return Column([a * one + b * other for a, b in pairs], below, max(bits, below.bit_length()))
    belows = zip(left.belows(), right.belows(), strict=True)
    above = [a * d + sign * b * c for (a, b), (c, d) in zip(pairs, belows, strict=True)]
    return Column(above, times(left.below, right.below), left.bits + right.bits + 1)


def times(one: int | Sequence[int], other: int | Sequence[int]) -> int | Sequence[int]:
    """Return the products of two rows of whole numbers, or one where each is one number."""
    if isinstance(one, int):
        if isinstance(other, int):
            return one * other
        return [one * b for b in other]
    if isinstance(other, int):
        return [a * other for a in one]
    return [a * b for a, b in zip(one, other, strict=True)]
