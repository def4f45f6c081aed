"""Which units come out when numbers with units are joined, and which joins make no sense."""

from typing import TypeAlias

from generator.formulas.syntax import FormulaProblem, OperationNode, PowerNode
from generator.quantities import BARE, TEMPERATURE, Unit, base_unit

UnitOrProblem: TypeAlias = Unit | FormulaProblem

_POINT_HINT = "take the difference of two temperatures first"


def joined(node: OperationNode, left: Unit, right: Unit) -> UnitOrProblem:
    """Return the unit of a sum, difference, product or quotient."""
    if node.operator in "+-":
        return _summed(node, left, right)
    if left.point or right.point:
        verb = "multiplied" if node.operator == "*" else "divided"
        return _refused(f"a temperature on a scale cannot be {verb}", node.column, _POINT_HINT)
    if node.operator == "*":
        return base_unit(left.dimension.times(right.dimension))
    return base_unit(left.dimension.over(right.dimension))


def raised(node: PowerNode, base: Unit) -> UnitOrProblem:
    """Return the unit of a power."""
    if base.point:
        message = "a temperature on a scale cannot be raised to a power"
        return _refused(message, node.column, _POINT_HINT)
    return base_unit(base.dimension.raised(node.exponent))


def turned(column: int, operand: Unit) -> UnitOrProblem:
    """Return the unit of a part with its sign turned."""
    if operand.point:
        message = "a temperature on a scale cannot have its sign turned"
        return _refused(message, column, _POINT_HINT)
    return operand


def _summed(node: OperationNode, left: Unit, right: Unit) -> UnitOrProblem:
    adding = node.operator == "+"
    if left.dimension != right.dimension:
        if adding:
            return _refused(f"cannot add {right.words} to {left.words}", node.column)
        return _refused(f"cannot take {right.words} from {left.words}", node.column)
    if left.point and right.point:
        if adding:
            return _refused("two temperatures cannot be added", node.column, _POINT_HINT)
        return base_unit(TEMPERATURE)
    if right.point and not adding:
        message = f"cannot take {right.words} from {left.words}"
        return _refused(message, node.column, "put the temperature first")
    if left.point or right.point:
        return base_unit(TEMPERATURE, point=True)
    # keeps a known unit for the wording of later problems; a percent and a bare number mix freely
    return left if left == right or left.dimension != BARE else base_unit(BARE)


def _refused(message: str, column: int, hint: str = "") -> FormulaProblem:
    return FormulaProblem(message, column, "formula-units", hint)
