"""What formulas need to know of a relation; the trade's relations satisfy it without knowing us."""

from collections.abc import Mapping
from enum import Enum
from fractions import Fraction
from typing import Final, Protocol, TypeAlias

from generator.quantities import Unit

ArgumentValue: TypeAlias = Fraction | tuple[Fraction, ...]


class RatioKind(Enum):
    """The kind of a given value that is a mixing ratio and not a single number."""

    RATIO = "ratio"


RATIO: Final = RatioKind.RATIO
Kind: TypeAlias = Unit | RatioKind


class CatalogueParameter(Protocol):
    """One input of a relation."""

    @property
    def name(self) -> str:
        """Return the input's name."""

    @property
    def unit(self) -> Unit | None:
        """Return the unit of its numbers; None for a ratio."""

    @property
    def kind(self) -> str:
        """Return quantity, ratio, or quantities (all inputs from here on)."""

    @property
    def default(self) -> ArgumentValue | None:
        """Return the value that is used when none is given; None when one must be given."""


class CatalogueEntry(Protocol):
    """One relation."""

    @property
    def name(self) -> str:
        """Return the relation's name."""

    @property
    def parameters(self) -> tuple[CatalogueParameter, ...]:
        """Return its inputs in order."""

    @property
    def results(self) -> Mapping[str, Unit]:
        """Return the unit of each result by its name."""

    def call(self, arguments: Mapping[str, ArgumentValue], /) -> Mapping[str, Fraction]:
        """Work the relation out; numbers are in the declared units on both sides."""


Catalogue: TypeAlias = Mapping[str, CatalogueEntry]
