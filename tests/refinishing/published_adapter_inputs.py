"""The named inputs of a published check, found by what they mean and turned into wanted units."""

from collections.abc import Iterable, Mapping
from fractions import Fraction
from typing import Any

from generator.quantities import Quantity, Unit, unit_named
from generator.quantities.dimension import BARE, TEMPERATURE
from tests.refinishing.published_adapter_units import Reading, pair_units, readings, unit_spelled

Raw = Any  # a text, a list or a mapping of texts, as the file holds it
ABBREVIATIONS = {
    "dft": "dry_film",
    "wft": "wet_film",
    "rh": "humidity",
    "te": "transfer_efficiency",
    "vs": "volume_solids",
    "temp": "temperature",
    "litres": "volume",
}
# words that say which of several conventions holds, where the calculation has one only
SILENT = ("rts",)
NOTHING_GIVEN = ("", "null", "~")
DIFFERENCES = {"degC": unit_named("K"), "degF": unit_named("degF_diff")}


class CannotAdapt(ValueError):
    """A check that no relation can be asked for; the text is one sentence."""


def full_words(stem: str) -> str:
    """Return a stem with abbreviations written out and silent words left out."""
    kept = [word for word in stem.split("_") if word not in SILENT]
    return "_".join(ABBREVIATIONS.get(word, word) for word in kept)


def means(reading: Reading, names: str) -> bool:
    """Say whether a reading's words are among the names, parted by spaces; - is a bare unit."""
    return full_words(reading.stem) in {
        full_words(name) for name in names.split() if name != "-"
    } or (reading.stem in ("", *SILENT) and reading.unit is not None and "-" in names.split())


def can_be(unit: Unit | None, wanted: Unit) -> bool:
    """Say whether a number in a unit can be meant as one in the wanted unit."""
    return unit is None or unit.agrees_with(wanted) or _as_difference(unit, wanted) is not None


def turned(number: Fraction, unit: Unit | None, wanted: Unit) -> Fraction:
    """Return a number in the wanted unit; without a unit it is taken to be in that already."""
    if unit is None:
        return number
    return Quantity(number, _as_difference(unit, wanted) or unit).to(wanted).number


def kind(unit: Unit) -> tuple[object, ...]:
    """Return what a unit measures; bare numbers are told apart by their unit."""
    return (unit.dimension, unit.point, unit.name if unit.dimension == BARE else "")


def _as_difference(unit: Unit, wanted: Unit) -> Unit | None:
    # required_margin_F and delta_C are differences, whatever the letter
    if wanted.dimension == TEMPERATURE and not wanted.point:
        return DIFFERENCES.get(unit.name)
    return None


def exact_number(text: object) -> Fraction:
    """Read a number exactly; raise CannotAdapt when it is none."""
    try:
        return Fraction(str(text))
    except ValueError as error:
        raise CannotAdapt(f"'{text}' is not a number") from error


class Given:
    """The inputs of one check.

    wanted  names of the results that the check expects
    unused  names of inputs that nothing has asked for yet
    """

    def __init__(self, inputs: Mapping[str, Raw], wanted: Iterable[str] = ()) -> None:
        self.wanted = tuple(wanted)
        self._inputs = {k: v for k, v in inputs.items() if v not in NOTHING_GIVEN}
        self.unused = set(self._inputs)

    def number(self, names: str, unit: str, default: Fraction | int | None = None) -> Fraction:
        """Return the input of that meaning in a unit; raise CannotAdapt when it is missing."""
        wanted = unit_named(unit)
        found = self.find(names, wanted)
        if found is not None:
            return self.take(found, wanted)
        if default is None:
            raise CannotAdapt(f"no input means {names.split()[0]}")
        return Fraction(default)

    def numbers(self, names: str, unit: str) -> tuple[Fraction, ...]:
        """Return the list of that meaning, each number in a unit; empty when it is missing."""
        wanted = unit_named(unit)
        found = self.find(names, wanted)
        if found is None:
            return ()
        self.unused.discard(found[0])
        raw = self._inputs[found[0]]
        items = raw.values() if isinstance(raw, dict) else raw if isinstance(raw, list) else [raw]
        return tuple(turned(exact_number(item), found[1], wanted) for item in items)

    def pairs(self, names: str, units: tuple[str, str]) -> tuple[tuple[Fraction, Fraction], ...]:
        """Return the list of pairs of that meaning, such as levels with times; empty if missing."""
        wanted = [unit_named(unit) for unit in units]
        for name, raw in self._inputs.items():
            stem, given = pair_units(name) or (name, (None, None))
            fits = all(can_be(unit, to) for unit, to in zip(given, wanted, strict=True))
            if isinstance(raw, list) and fits and stem in ("", *names.split()):
                self.unused.discard(name)
                return tuple(
                    (
                        turned(exact_number(first), given[0], wanted[0]),
                        turned(exact_number(second), given[1], wanted[1]),
                    )
                    for first, second in raw
                )
        return ()

    def ratio(self, names: str = "parts parts_by_volume ratio mix_parts") -> tuple[Fraction, ...]:
        """Return a mixing ratio without empty parts, from a list or a text such as 4:1:1."""
        for name in names.split():
            if name in self._inputs:
                self.unused.discard(name)
                raw = self._inputs[name]
                parts = raw.split(":") if isinstance(raw, str) else list(raw)
                return tuple(part for part in map(exact_number, parts) if part)
        raise CannotAdapt("no input means the mixing ratio")

    def text(self, names: str, default: str = "") -> str:
        """Return a word of that name as written; also marks context as read."""
        for name in names.split():
            if name in self._inputs:
                self.unused.discard(name)
                return str(self._inputs[name])
        return default

    def unit(self, names: str) -> Unit | None:
        """Return the unit in which the input of that meaning is written."""
        for name in self._inputs:
            for reading in readings(name):
                if reading.unit and means(reading, names):
                    return reading.unit
        written = self.text("unit units")
        return unit_spelled(written) if written else None

    def rows(self, names: str) -> tuple[tuple[str, ...], ...]:
        """Return a list of lists of that name as written; empty when it is missing."""
        for name in names.split():
            raw = self._inputs.get(name)
            if isinstance(raw, list):
                self.unused.discard(name)
                return tuple(tuple(row) for row in raw)
        return ()

    def has(self, names: str, unit: str) -> bool:
        """Say whether an input of that meaning is given."""
        return self.find(names, unit_named(unit)) is not None

    def find(self, names: str, wanted: Unit) -> tuple[str, Unit | None] | None:
        """Return name and unit of the input of that meaning; None when there is none."""
        for name in self._inputs:
            for reading in readings(name):
                if means(reading, names) and can_be(reading.unit, wanted):
                    return name, reading.unit
        return None

    def only_left(self, wanted: Unit) -> tuple[str, Unit | None] | None:
        """Return the one unused input of the kind of a unit; nothing unless there is just one."""
        of_kind = [
            (name, reading.unit)
            for name in sorted(self.unused)
            for reading in readings(name)
            if reading.unit and kind(reading.unit) == kind(wanted) and not self._is_list(name)
        ]
        return of_kind[0] if len({name for name, _ in of_kind}) == 1 else None

    def take(self, found: tuple[str, Unit | None], wanted: Unit) -> Fraction:
        """Return a found input in a unit and mark it as used."""
        name, unit = found
        self.unused.discard(name)
        raw = self._inputs[name]
        if raw in ("true", "false"):
            return Fraction(raw == "true")
        if isinstance(raw, (list, dict)):
            raise CannotAdapt(f"'{name}' should be one number")
        return turned(exact_number(raw), unit, wanted)

    def _is_list(self, name: str) -> bool:
        return isinstance(self._inputs[name], (list, dict))
