"""A numeric item made ready: formulas read, units checked, grids turned into numbers."""

import re
from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from fractions import Fraction

from generator.bank.bank import Entry
from generator.bank.models import NumericItem, decimal
from generator.diagnostics import Problem, did_you_mean
from generator.formulas import (
    RATIO,
    Catalogue,
    Comparison,
    Formula,
    FormulaProblem,
    Kind,
    check_comparison,
    check_units,
    parse_comparison,
    parse_formula,
)
from generator.quantities import (
    BARE,
    Direction,
    Limit,
    Quantity,
    Ratio,
    Unit,
    UnknownUnit,
    number_text,
    unit_named,
)

Value = Quantity | Ratio
_PLACEHOLDER = re.compile(r"\{([^{}\s]*)\}")
COUNTS = frozenset({"coats", "passes", "fills", "layers", "grades"})


@dataclass(frozen=True, slots=True)
class Tolerance:
    """How far from right still passes: an amount in the answer's unit, or a share of the answer."""

    amount: Fraction
    share: Fraction

    def around(self, exact: Fraction) -> Fraction:
        """Return the tolerance for one answer, in the answer's unit."""
        return self.amount + self.share * abs(exact)


@dataclass(frozen=True, slots=True)
class PreparedItem:
    """Everything needed to draw and solve a numeric item, with nothing left as text.

    bare_slips  numbers of the slips that lead to a bare number, which is taken in the answer's unit
    """

    name: str
    grids: Mapping[str, tuple[Value, ...]]
    require: tuple[Comparison, ...]
    answer: Formula
    unit: Unit
    step: Fraction
    direction: Direction
    limit: Limit
    tolerance: Tolerance
    slips: tuple[tuple[Formula, str], ...]
    bare_slips: frozenset[int] = frozenset()

    @property
    def is_count(self) -> bool:
        """Return whether the answer counts whole things, such as coats."""
        return self.unit.name in COUNTS


def prepare(
    entry: Entry[NumericItem], catalogue: Catalogue
) -> tuple[PreparedItem | None, tuple[Problem, ...]]:
    """Return the item ready to draw, and every problem of its grids, units and formulas."""
    kept = entry.kept.get("prepared")
    if kept is None or kept[0] is not catalogue:
        preparing = _Preparing(entry, catalogue)
        prepared = preparing.item()
        kept = (catalogue, None if preparing.problems else prepared, tuple(preparing.problems))
        entry.kept["prepared"] = kept
    return kept[1], kept[2]


class _Preparing:
    """Reads the parts of one item and gathers what is wrong with them."""

    def __init__(self, entry: Entry[NumericItem], catalogue: Catalogue) -> None:
        self.entry = entry
        self.item_record = entry.record
        self.catalogue = catalogue
        self.problems: list[Problem] = []
        self.kinds: dict[str, Kind] = {}
        self.bare_slips: set[int] = set()

    def item(self) -> PreparedItem | None:
        grids = dict(self._grids())
        answer = self.item_record.answer
        unit = self._unit(answer.unit, "answer", "unit")
        if self.problems or unit is None:
            return None
        formula = self._formula(answer.formula, unit, "answer", "formula")
        slips = [
            (self._formula(slip.formula, unit, "slips", place, "formula", bare=True), slip.feedback)
            for place, slip in enumerate(self.item_record.slips)
        ]
        require = [self._comparison(text, i) for i, text in enumerate(self.item_record.require)]
        step = answer.round_to
        tolerance = self._tolerance(unit, step)
        self._direction_of_limit()
        self._unused_names()
        self._unknown_placeholders()
        if self.problems or formula is None or tolerance is None:
            return None
        return PreparedItem(
            name=self.entry.name,
            grids=grids,
            require=tuple(r for r in require if r),
            answer=formula,
            unit=unit,
            step=step,
            direction=answer.rounding,
            limit=answer.limit,
            tolerance=tolerance,
            slips=tuple((f, says) for f, says in slips if f),
            bare_slips=frozenset(self.bare_slips),
        )

    def _unit(self, name: str, *path: str | int) -> Unit | None:
        try:
            return unit_named(name)
        except UnknownUnit as error:
            hint = f"did you mean '{error.suggestion}'?" if error.suggestion else ""
            self._report("unknown-unit", f"there is no unit named '{name}'", *path, hint=hint)
            return None

    def _grids(self) -> Iterator[tuple[str, tuple[Value, ...]]]:
        for name, given in self.item_record.given.items():
            if given.unit == "ratio":
                self.kinds[name] = RATIO
                values = [self._ratio(t, name, i) for i, t in enumerate(given.values)]
            else:
                unit = self._unit(given.unit, "given", name, "unit")
                if unit is None:
                    continue
                self.kinds[name] = unit
                values = [self._number(t, unit, name, i) for i, t in enumerate(given.values)]
            yield name, tuple(value for value in values if value is not None)

    def _number(self, text: str, unit: Unit, name: str, place: int) -> Value | None:
        try:
            return Quantity(decimal(text), unit)
        except ValueError as error:
            self._report("wrong-value", str(error), "given", name, "values", place)
            return None

    def _ratio(self, text: str, name: str, place: int) -> Value | None:
        try:
            parts = tuple(decimal(part) for part in text.split(":"))
            if len(parts) > 1:
                return Ratio(parts)
        except ValueError:
            pass
        message = f"ratio '{text}' cannot be read; write parts separated by ':' such as 4:1:1"
        self._report("ratio-form", message, "given", name, "values", place)
        return None

    def _formula(
        self, text: str, unit: Unit, *path: str | int, bare: bool = False
    ) -> Formula | None:
        formula, problems = parse_formula(text)
        if formula is not None:
            result, problems = check_units(formula, self.kinds, self.catalogue)
            if result is not None and not _fits(result.unit, unit, bare):
                message = f"this works out to {result.unit.words}, but the answer is in {unit.name}"
                self._report("formula-units", message, *path)
            elif result is not None and not result.agrees_with(unit):
                self.bare_slips.add(int(path[1]))
        self._formula_problems(problems, *path)
        return None if problems else formula

    def _comparison(self, text: str, place: int) -> Comparison | None:
        comparison, problems = parse_comparison(text)
        if comparison is not None:
            problems = check_comparison(comparison, self.kinds, self.catalogue)
        self._formula_problems(problems, "require", place)
        return None if problems else comparison

    def _formula_problems(self, problems: tuple[FormulaProblem, ...], *path: str | int) -> None:
        self.problems += [
            self.entry.problem_inside(p.rule, p.message, p.column, *path, hint=p.hint)
            for p in problems
        ]

    def _tolerance(self, unit: Unit, step: Fraction) -> Tolerance | None:
        if step <= 0:
            self._report(
                "wrong-value", "the rounding step must be above zero", "answer", "round_to"
            )
            return None
        text = self.item_record.answer.tolerance
        if text is None:
            return Tolerance(step / 2, Fraction(0))
        number, _, name = text.partition(" ")
        try:
            amount = decimal(number)
        except ValueError as error:
            self._report("wrong-value", str(error), "answer", "tolerance")
            return None
        if amount < 0:
            self._report("wrong-value", "a tolerance is never negative", "answer", "tolerance")
            return None
        tolerance = self._tolerance_in(amount, name.strip(), unit)
        if tolerance and tolerance.share == 0 and tolerance.amount < step / 2:
            message = (
                f"the tolerance is smaller than half of the last figure asked for "
                f"({number_text(step / 2)} {unit.name})"
            )
            self._report("tolerance-too-small", message, "answer", "tolerance")
        return tolerance

    def _tolerance_in(self, amount: Fraction, name: str, unit: Unit) -> Tolerance | None:
        if name == "percent" and unit.name != "percent":
            return Tolerance(Fraction(0), amount / 100)
        given = self._unit(name, "answer", "tolerance")
        if given is None:
            return None
        if given.dimension != unit.dimension:
            message = f"a tolerance in {name} does not fit an answer in {unit.name}"
            self._report("formula-units", message, "answer", "tolerance")
            return None
        return Tolerance(amount * given.factor / unit.factor, Fraction(0))

    def _direction_of_limit(self) -> None:
        answer = self.item_record.answer
        safe = {"maximum": "down", "minimum": "up"}.get(answer.limit, answer.rounding)
        if answer.rounding != safe:
            message = f"a {answer.limit} rounds {safe}, so that the key stays on the safe side"
            self._report("rounding-direction", message, "answer", "rounding")

    def _unused_names(self) -> None:
        shown = " ".join(text for _, text in _shown_parts(self.item_record))
        for name in self.item_record.given:
            if "{" + name + "}" not in shown and not self.problems:
                message = f"'{name}' is drawn but never shown to the learner"
                self._report("given-not-shown", message, "given", name)

    def _unknown_placeholders(self) -> None:
        for path, text in _shown_parts(self.item_record):
            for match in _PLACEHOLDER.finditer(text):
                name = match[1]
                if name not in self.item_record.given:
                    message = f"the learner would read '{match[0]}', since nothing is drawn for it"
                    hint = did_you_mean(name, self.item_record.given)
                    self.problems.append(
                        self.entry.problem_inside(
                            "placeholder-unknown", message, match.start() + 1, *path, hint=hint
                        )
                    )

    def _report(self, rule: str, message: str, *path: str | int, hint: str = "") -> None:
        self.problems.append(self.entry.problem("error", rule, message, *path, hint=hint))


def _shown_parts(item: NumericItem) -> Iterator[tuple[tuple[str | int, ...], str]]:
    yield ("stem",), item.stem
    for number, row in enumerate(item.sheet.rows if item.sheet else ()):
        for place, cell in enumerate(row):
            yield ("sheet", "rows", number, place), cell


def _fits(result: Unit, answer: Unit, bare: bool) -> bool:
    if result.agrees_with(answer):
        return True
    return bare and result.dimension == BARE and not result.point
