"""Working a checked formula out in exact fractions."""

from collections.abc import Mapping
from fractions import Fraction
from typing import TypeAlias

from generator.formulas.binding import Bound, bind, pick_result
from generator.formulas.catalogue_protocol import ArgumentValue, Catalogue
from generator.formulas.ratio_functions import RATIO_FUNCTIONS, ratio_call_problem, ratio_value
from generator.formulas.syntax import (
    CallNode,
    Formula,
    FormulaProblem,
    MinusNode,
    NameNode,
    Node,
    NumberNode,
    OperationNode,
    PowerNode,
)
from generator.formulas.unit_rules import UnitOrProblem, joined, raised, turned
from generator.quantities import BARE, Quantity, Ratio, Unit, UnitsDisagree, base_unit

MOST_BITS = 4096

Value: TypeAlias = Quantity | Ratio


class FormulaRefused(ValueError):
    """A formula that cannot be worked out with these numbers.

    column  where, counted in characters from 1
    """

    def __init__(self, message: str, column: int) -> None:
        self.column = column
        super().__init__(message)


def evaluate(formula: Formula, values: Mapping[str, Value], catalogue: Catalogue) -> Quantity:
    """Work a formula out; the answer is exact, in the base unit of what it measures.

    Raises FormulaRefused for a division by zero, a number past 4096 bits, a part that a ratio
    does not have, or a formula that its unit check refuses. OutsideValidity from a relation
    passes through.
    """
    return _Worker(values, catalogue).number(formula.root)


class _Worker:
    """Works a formula out from its leaves; every number inside is in base units."""

    def __init__(self, values: Mapping[str, Value], catalogue: Catalogue) -> None:
        self._values = values
        self._catalogue = catalogue

    def number(self, node: Node) -> Quantity:
        """Return a part that is a single number."""
        value = self._value(node)
        if isinstance(value, Ratio):
            raise FormulaRefused("a mixing ratio is not a single number", node.column)
        return value

    def _value(self, node: Node) -> Value:
        if isinstance(node, NumberNode):
            return Quantity(node.value, base_unit(BARE))
        if isinstance(node, NameNode):
            return self._named(node)
        if isinstance(node, MinusNode):
            operand = self.number(node.operand)
            unit = _unit(turned(node.column, operand.unit))
            return Quantity(-operand.number, unit)
        if isinstance(node, PowerNode):
            return self._power(node)
        if isinstance(node, OperationNode):
            return self._operation(node)
        if node.relation in RATIO_FUNCTIONS:
            return self._ratio_call(node)
        return self._call(node)

    def _named(self, node: NameNode) -> Value:
        value = self._values.get(node.name)
        if value is None:
            raise FormulaRefused(f"there is no given value named '{node.name}'", node.column)
        return value if isinstance(value, Ratio) else _in_base(value)

    def _power(self, node: PowerNode) -> Quantity:
        base = self.number(node.base)
        unit = _unit(raised(node, base.unit))
        if base.number == 0 and node.exponent < 0:
            raise FormulaRefused("this divides by zero", node.column)
        return Quantity(_capped(base.number**node.exponent, node.column), unit)

    def _operation(self, node: OperationNode) -> Quantity:
        left = self.number(node.left)
        right = self.number(node.right)
        unit = _unit(joined(node, left.unit, right.unit))
        a, b = left.number, right.number
        if node.operator == "/" and b == 0:
            raise FormulaRefused("this divides by zero", node.column)
        if node.operator == "+":
            number = a + b
        elif node.operator == "-":
            number = a - b
        else:
            number = a * b if node.operator == "*" else a / b
        return Quantity(_capped(number, node.column), base_unit(unit.dimension, unit.point))

    def _ratio_call(self, node: CallNode) -> Quantity:
        problem = ratio_call_problem(node)
        if problem is not None:
            raise FormulaRefused(problem.message, problem.column)
        ratio = self._value(node.arguments[0].value)
        if not isinstance(ratio, Ratio):
            raise FormulaRefused(f"{node.relation} takes a ratio", node.arguments[0].column)
        number = ratio_value(node, ratio)
        if number is None:
            message = f"the ratio has {len(ratio.parts)} parts and not the one asked for"
            raise FormulaRefused(message, node.arguments[1].column)
        return Quantity(number, base_unit(BARE))

    def _call(self, node: CallNode) -> Quantity:
        entry = self._catalogue.get(node.relation)
        if entry is None:
            raise FormulaRefused(f"there is no relation named '{node.relation}'", node.column)
        bound, problems = bind(node, entry)
        result = pick_result(node, entry)
        for problem in (*problems, result):
            if isinstance(problem, FormulaProblem):
                raise FormulaRefused(problem.message, problem.column)
        arguments = {one.parameter.name: self._argument(one) for one in bound}
        numbers = entry.call(arguments)
        picked = str(result)
        answer = _in_base(Quantity(numbers[picked], entry.results[picked]))
        return Quantity(_capped(answer.number, node.column), answer.unit)

    def _argument(self, bound: Bound) -> ArgumentValue:
        parameter = bound.parameter
        if not bound.arguments:
            if parameter.default is None:
                raise TypeError(f"'{parameter.name}' has neither an input nor a default")
            return parameter.default
        values = [self._converted(one.value, parameter.unit) for one in bound.arguments]
        if parameter.kind == "quantities":
            return tuple(value for value in values if isinstance(value, Fraction))
        return values[0]

    def _converted(self, node: Node, unit: Unit | None) -> ArgumentValue:
        value = self._value(node)
        if isinstance(value, Ratio):
            if unit is not None:
                raise FormulaRefused("a mixing ratio is not a single number", node.column)
            return value.parts
        if unit is None:
            raise FormulaRefused("this must be a mixing ratio", node.column)
        try:
            return value.to(unit).number
        except UnitsDisagree as error:
            raise FormulaRefused(str(error), node.column) from error


def _in_base(value: Quantity) -> Quantity:
    return Quantity(value.base, base_unit(value.unit.dimension, value.unit.point))


def _unit(outcome: UnitOrProblem) -> Unit:
    if isinstance(outcome, FormulaProblem):
        raise FormulaRefused(outcome.message, outcome.column)
    return outcome


def _capped(number: Fraction, column: int) -> Fraction:
    if max(number.numerator.bit_length(), number.denominator.bit_length()) > MOST_BITS:
        raise FormulaRefused(f"a number here grows past {MOST_BITS} binary digits", column)
    return number
