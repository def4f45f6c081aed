"""The two functions that take a mixing ratio apart: part(parts, 1) and parts_total(parts)."""

from fractions import Fraction

from generator.formulas.syntax import CallNode, FormulaProblem, NameNode, NumberNode
from generator.quantities import Ratio

RATIO_FUNCTIONS = ("part", "parts_total")


def ratio_call_problem(call: CallNode) -> FormulaProblem | None:
    """Return the first thing wrong with the form of such a call, or nothing."""
    wanted = 2 if call.relation == "part" else 1
    hint = "write part(parts, 1)" if wanted == 2 else "write parts_total(parts)"
    inputs = call.arguments
    if call.result:
        message = f"{call.relation} has one result, so none is picked"
        return FormulaProblem(message, call.result_column, "formula-call", hint)
    if len(inputs) != wanted or any(argument.name for argument in inputs):
        message = f"{call.relation} takes " + (
            "a ratio and the number of the part" if wanted == 2 else "one ratio"
        )
        return FormulaProblem(message, call.column, "formula-call", hint)
    if not isinstance(inputs[0].value, NameNode):
        message = f"{call.relation} takes the name of a ratio"
        return FormulaProblem(message, inputs[0].column, "formula-call", hint)
    if wanted == 2 and part_number(call) is None:
        message = "the number of a part is written as 1, 2 or 3"
        return FormulaProblem(message, inputs[1].column, "formula-call", hint)
    return None


def part_number(call: CallNode) -> int | None:
    """Return the number of the part that a call of part asks for, counted from 1."""
    node = call.arguments[1].value
    if isinstance(node, NumberNode) and node.value.denominator == 1 and node.value >= 1:
        return int(node.value)
    return None


def ratio_value(call: CallNode, ratio: Ratio) -> Fraction | None:
    """Work out such a call; gives nothing when the ratio has no such part."""
    if call.relation == "parts_total":
        return ratio.total
    number = part_number(call)
    if number is None or number > len(ratio.parts):
        return None
    return ratio.parts[number - 1]
