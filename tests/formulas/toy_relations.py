"""A catalogue of toy relations for the formula tests, with every kind of input."""

from collections.abc import Callable, Mapping
from dataclasses import dataclass
from fractions import Fraction

from generator.diagnostics import OutsideValidity
from generator.formulas import RATIO, Kind
from generator.quantities import Quantity, Ratio, Unit, unit_named

Numbers = Fraction | tuple[Fraction, ...]


@dataclass(frozen=True, slots=True)
class ToyInput:
    """One input of a toy relation."""

    name: str
    unit: Unit | None
    kind: str = "quantity"
    default: Fraction | None = None


@dataclass(frozen=True, slots=True)
class Toy:
    """A toy relation; it satisfies the catalogue protocol."""

    name: str
    parameters: tuple[ToyInput, ...]
    results: Mapping[str, Unit]
    work: Callable[[Mapping[str, Numbers]], Mapping[str, Fraction]]

    def call(self, arguments: Mapping[str, Numbers], /) -> Mapping[str, Fraction]:
        """Work it out in the declared units."""
        return self.work(arguments)


def number(value: Numbers) -> Fraction:
    """Return a single number, and fail on anything else."""
    assert isinstance(value, Fraction)
    return value


def several(value: Numbers) -> tuple[Fraction, ...]:
    """Return several numbers, and fail on a single one."""
    assert isinstance(value, tuple)
    return value


def _wet(given: Mapping[str, Numbers]) -> Mapping[str, Fraction]:
    solids = number(given["solids"])
    if not 0 < solids <= 100:
        raise OutsideValidity("volume solids lie above 0 % and up to 100 %")
    thicker = 1 + number(given["thinner"]) / 100
    return {"wet": number(given["film"]) * 100 / solids * thicker}


def _shares(given: Mapping[str, Numbers]) -> Mapping[str, Fraction]:
    total, parts = number(given["total"]), several(given["parts"])
    return {
        "base": total * parts[0] / sum(parts),
        "hardener": total * parts[1] / sum(parts),
    }


def _spread(given: Mapping[str, Numbers]) -> Mapping[str, Fraction]:
    return {"margin": number(given["panel"]) - number(given["dew"])}


def _mean(given: Mapping[str, Numbers]) -> Mapping[str, Fraction]:
    films = several(given["films"])
    return {"mean": sum(films, Fraction(0)) / len(films)}


def _toys() -> dict[str, Toy]:
    um, percent, ml = unit_named("um"), unit_named("percent"), unit_named("mL")
    celsius = unit_named("degC")
    wet_inputs = (
        ToyInput("film", um),
        ToyInput("solids", percent),
        ToyInput("thinner", percent, default=Fraction(0)),
    )
    toys = (
        Toy("wet", wet_inputs, {"wet": um}, _wet),
        Toy(
            "shares",
            (ToyInput("total", ml), ToyInput("parts", None, "ratio")),
            {"base": ml, "hardener": ml},
            _shares,
        ),
        Toy(
            "margin",
            (ToyInput("panel", celsius), ToyInput("dew", celsius)),
            {"margin": unit_named("K")},
            _spread,
        ),
        Toy("mean_film", (ToyInput("films", um, "quantities"),), {"mean": um}, _mean),
    )
    return {toy.name: toy for toy in toys}


CATALOGUE = _toys()

KINDS: Mapping[str, Kind] = {
    "dry": unit_named("um"),
    "film_us": unit_named("mil"),
    "solids": unit_named("percent"),
    "batch": unit_named("L"),
    "area": unit_named("m2"),
    "parts": RATIO,
    "panel": unit_named("degC"),
    "air": unit_named("degF"),
    "rise": unit_named("K"),
    "coats": unit_named("coats"),
}

VALUES: Mapping[str, Quantity | Ratio] = {
    "dry": Quantity(Fraction(60), unit_named("um")),
    "film_us": Quantity(Fraction(2), unit_named("mil")),
    "solids": Quantity(Fraction(40), unit_named("percent")),
    "batch": Quantity(Fraction("0.6"), unit_named("L")),
    "area": Quantity(Fraction("1.5"), unit_named("m2")),
    "parts": Ratio((Fraction(4), Fraction(1), Fraction(1))),
    "panel": Quantity(Fraction(20), unit_named("degC")),
    "air": Quantity(Fraction(77), unit_named("degF")),
    "rise": Quantity(Fraction(3), unit_named("K")),
    "coats": Quantity(Fraction(2), unit_named("coats")),
}
