"""Significant figures of a number as it was written."""

import re
from dataclasses import dataclass

_WRITTEN = re.compile(r"[-+\u2212]?\s*([0-9]*)(?:([.,])([0-9]*))?(?:\s*[eE][-+\u2212]?[0-9]+)?")


@dataclass(frozen=True, slots=True)
class Figures:
    """The fewest and the most significant figures that a written number can have.

    They differ only for a whole number that ends in zeros: 1200 has two, three or four.
    """

    fewest: int
    most: int

    @property
    def words(self) -> str:
        """Say how many, such as '3' or '2 to 4'."""
        return str(self.most) if self.fewest == self.most else f"{self.fewest} to {self.most}"


def significant_figures(text: str) -> Figures | None:
    """Count the significant figures of a decimal; None for zero, fractions and other texts.

    Leading zeros never count, zeros behind a decimal mark always do.
    """
    found = _WRITTEN.fullmatch(text.strip())
    if found is None:
        return None
    whole, mark, places = found[1], found[2], found[3] or ""
    digits = (whole + places).lstrip("0")
    if not digits:
        return None
    fewest = len(digits) if mark else len(digits.rstrip("0"))
    return Figures(fewest, len(digits))
