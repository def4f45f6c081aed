"""Formulas worked out for many sets of values at once, in whole numbers over exact unit factors.

`evaluate` says what is right; what is worked out here is the same number, or is left to it.
"""

from collections.abc import Callable, Mapping, Sequence
from fractions import Fraction
from math import lcm
from typing import TypeAlias

from generator.diagnostics import OutsideValidity
from generator.formulas.binding import Bound, bind, pick_result
from generator.formulas.catalogue_protocol import ArgumentValue, Catalogue, CatalogueEntry
from generator.formulas.column import Column, summed, times
from generator.formulas.evaluate import MOST_BITS, Value
from generator.formulas.ratio_functions import RATIO_FUNCTIONS, part_number
from generator.formulas.syntax import (
    CallNode,
    MinusNode,
    NameNode,
    Node,
    NumberNode,
    OperationNode,
    PowerNode,
    walk,
)
from generator.quantities import Quantity, Ratio, Unit

Picks: TypeAlias = Mapping[str, Sequence[int]]


class NotByColumns(Exception):
    """A formula that is left to the evaluator, since a number in it could grow too large."""


class Columns:
    """Works checked formulas out for some sets of values.

    grids  the values that each name can have
    picks  for each name, which of its values each set takes
    odd    places of sets that the evaluator must look at: it refuses them, or may refuse them
    """

    def __init__(
        self,
        grids: Mapping[str, Sequence[Value]],
        picks: Picks,
        catalogue: Catalogue,
        count: int,
    ) -> None:
        self.odd: set[int] = set()
        self._grids = grids
        self._picks = picks
        self._catalogue = catalogue
        self._count = count
        self._named: dict[str, Column] = {}
        self._called: dict[object, Column] = {}

    def only(self, places: Sequence[int]) -> "Columns":
        """Return the same for some of the sets."""
        picks = {name: [row[place] for place in places] for name, row in self._picks.items()}
        return Columns(self._grids, picks, self._catalogue, len(places))

    def column(self, node: Node) -> Column:
        """Return a part of a formula, worked out; it must have passed its unit check.

        Raises NotByColumns where a number could grow past what the evaluator takes.
        """
        if isinstance(node, NumberNode):
            return self._constant(node.value)
        if isinstance(node, NameNode):
            return self._of_name(node.name)
        if isinstance(node, MinusNode):
            operand = self.column(node.operand)
            return Column([-a for a in operand.above], operand.below, operand.bits)
        if isinstance(node, PowerNode):
            return self._power(node)
        if isinstance(node, OperationNode):
            return self._operation(node)
        return self._ratio_call(node) if node.relation in RATIO_FUNCTIONS else self._call(node)

    def _constant(self, value: Fraction) -> Column:
        bits = max(value.numerator.bit_length(), value.denominator.bit_length())
        return Column([value.numerator] * self._count, value.denominator, bits)

    def _of_name(self, name: str) -> Column:
        if name not in self._named:
            bases = [v.base for v in self._grids[name] if isinstance(v, Quantity)]
            self._named[name] = self._picked(bases, self._picks[name])
        return self._named[name]

    def _picked(self, numbers: Sequence[Fraction], row: Sequence[int]) -> Column:
        """Return one of some numbers for each set."""
        below = lcm(*(number.denominator for number in numbers))
        above = [number.numerator * (below // number.denominator) for number in numbers]
        bits = max([below.bit_length(), *(a.bit_length() for a in above)])
        return Column([above[pick] for pick in row], below, bits)

    def _power(self, node: PowerNode) -> Column:
        base = self.column(node.base)
        if node.exponent < 0:
            base = self._turned_over(base)
        size = abs(node.exponent)
        above = [a**size for a in base.above]
        below = base.below
        raised = below**size if isinstance(below, int) else [b**size for b in below]
        return _held(Column(above, raised, max(base.bits * size, 1)))

    def _operation(self, node: OperationNode) -> Column:
        left, right = self.column(node.left), self.column(node.right)
        if node.operator in "+-":
            return _held(summed(left, right, 1 if node.operator == "+" else -1))
        if node.operator == "/":
            right = self._turned_over(right)
        above = [a * b for a, b in zip(left.above, right.above, strict=True)]
        return _held(Column(above, times(left.below, right.below), left.bits + right.bits))

    def _turned_over(self, column: Column) -> Column:
        """Return one over each number; a set with zero there is left to the evaluator."""
        self.odd.update(place for place, a in enumerate(column.above) if a == 0)
        belows = column.belows()
        above = [b if a > 0 else -b for a, b in zip(column.above, belows, strict=True)]
        below = [abs(a) or 1 for a in column.above]
        one = below[0] if below and below.count(below[0]) == len(below) else below
        return Column(above, one, column.bits)

    def _ratio_call(self, node: CallNode) -> Column:
        (name, *_) = node.arguments
        assert isinstance(name.value, NameNode)
        row = self._picks[name.value.name]
        ratios = [v for v in self._grids[name.value.name] if isinstance(v, Ratio)]
        if node.relation == "parts_total":
            return self._picked([ratio.total for ratio in ratios], row)
        place = (part_number(node) or 0) - 1
        short = {at for at, ratio in enumerate(ratios) if place >= len(ratio.parts)}
        if short:
            self.odd.update(at for at, pick in enumerate(row) if pick in short)
        parts = [r.parts[place] if place < len(r.parts) else Fraction(1) for r in ratios]
        return self._picked(parts, row)

    def _call(self, node: CallNode) -> Column:
        shape = _shape(node)
        if shape not in self._called:
            self._called[shape] = self._relation(node, self._catalogue[node.relation])
        return self._called[shape]

    def _relation(self, node: CallNode, entry: CatalogueEntry) -> Column:
        """Call a relation once for each choice of the values that it depends on."""
        names = dict.fromkeys(part.name for part in walk(node) if isinstance(part, NameNode))
        keys = list(zip(*(self._picks[name] for name in names), strict=True))
        keys = keys or [()] * self._count
        first: dict[tuple[int, ...], int] = {}
        for place, key in enumerate(keys):
            first.setdefault(key, place)
        once = self.only(list(first.values()))
        results, refused = once.calls(node, entry)
        number_of = dict(zip(first, range(len(results)), strict=True))
        row = [number_of[key] for key in keys]
        if refused:
            self.odd.update(place for place, pick in enumerate(row) if pick in refused)
        above = [results[pick][0] for pick in row]
        below = [results[pick][1] for pick in row]
        return Column(
            above, below, max((n.bit_length() for pair in results for n in pair), default=1)
        )

    def calls(
        self, node: CallNode, entry: CatalogueEntry
    ) -> tuple[list[tuple[int, int]], set[int]]:
        """Return the result of a call in base units for each set, and the sets it refuses."""
        bound, _ = bind(node, entry)
        picked = str(pick_result(node, entry))
        unit = entry.results[picked]
        inputs = [(one.parameter.name, self._argument(one)) for one in bound]
        results, refused = [], set(self.odd)
        for place in range(self._count):
            number = (1, 1)
            if place not in refused:
                try:
                    given = {name: value(place) for name, value in inputs}
                    number = _in_base(entry.call(given)[picked], unit)
                except (OutsideValidity, ArithmeticError, ValueError, TypeError):
                    # what to say of it is the evaluator's to find out
                    refused.add(place)
            if max(number[0].bit_length(), number[1].bit_length()) > MOST_BITS:
                refused.add(place)
                number = (1, 1)
            results.append(number)
        return results, refused

    def _argument(self, bound: Bound) -> Callable[[int], ArgumentValue]:
        """Return what gives an input of a call for the set at a place."""
        parameter = bound.parameter
        if not bound.arguments:
            default = parameter.default
            assert default is not None
            return lambda place: default
        rows = [self._converted(one.value, parameter.unit) for one in bound.arguments]
        if parameter.kind == "quantities":
            return lambda place: tuple(r for row in rows if isinstance(r := row[place], Fraction))
        return rows[0].__getitem__

    def _converted(self, node: Node, unit: Unit | None) -> Sequence[ArgumentValue]:
        if isinstance(node, NameNode):
            grid = self._grids[node.name]
            turned = [_in_unit(value, unit) for value in grid]
            return [turned[pick] for pick in self._picks[node.name]]
        assert unit is not None
        return self.column(node).turned_into(unit).fractions()


def _in_base(number: Fraction, unit: Unit) -> tuple[int, int]:
    if unit.offset:
        base = number * unit.factor + unit.offset
        return base.numerator, base.denominator
    size = unit.factor
    return number.numerator * size.numerator, number.denominator * size.denominator


def _in_unit(value: Value, unit: Unit | None) -> ArgumentValue:
    if isinstance(value, Ratio):
        return value.parts
    assert unit is not None
    return value.to(unit).number


def _held(column: Column) -> Column:
    if column.bits > MOST_BITS:
        raise NotByColumns
    return column


def _shape(node: Node) -> object:
    """Return what two parts share that are the same but for where they stand in the text."""
    if isinstance(node, NumberNode):
        return node.value
    if isinstance(node, NameNode):
        return node.name
    if isinstance(node, MinusNode):
        return ("minus", _shape(node.operand))
    if isinstance(node, PowerNode):
        return ("power", _shape(node.base), node.exponent)
    if isinstance(node, OperationNode):
        return (node.operator, _shape(node.left), _shape(node.right))
    inputs = tuple((argument.name, _shape(argument.value)) for argument in node.arguments)
    return ("call", node.relation, node.result, inputs)
