"""The working of a numeric question, line by line, as a key prints it."""

from collections.abc import Iterator, Mapping
from fractions import Fraction

from generator.bank import PreparedItem, Value
from generator.formulas import (
    CallNode,
    Formula,
    MinusNode,
    NameNode,
    Node,
    NumberNode,
    OperationNode,
    PowerNode,
    bind,
    evaluate,
    pick_result,
    walk,
)
from generator.quantities import (
    Quantity,
    Ratio,
    Unit,
    is_short,
    number_text,
    quantity_text,
    round_to_step,
    short_number,
    short_quantity,
)
from generator.refinishing import CATALOGUE, Relation

_SIGNS = {"+": "+", "-": "−", "*": "×", "/": "÷"}
_WAYS = {"half": "Rounded (half up)", "up": "Rounded up", "down": "Rounded down"}


def working_lines(
    item: PreparedItem, values: Mapping[str, Value], exact: Fraction
) -> tuple[str, ...]:
    """Return the equations used, the numbers put in, the result and its rounding."""
    writer = _Writer(values)
    # a relation called twice gives its equation once
    calls = _calls(item.answer.root)
    lines = list(dict.fromkeys(line for node in calls for line in writer.call_lines(node)))
    answer = short_quantity(exact, item.unit)
    lines += _converted(item, values, answer)
    if not isinstance(item.answer.root, CallNode) or item.answer.root.relation not in CATALOGUE:
        lines.append(f"{writer.text(item.answer.root)} {_sign(exact)} {answer}")
    return (*lines, rounding_line(item, exact))


def _converted(item: PreparedItem, values: Mapping[str, Value], answer: str) -> list[str]:
    """Return the line that turns a relation's own unit into the unit asked for."""
    root = item.answer.root
    if not isinstance(root, CallNode) or root.relation not in CATALOGUE:
        return []
    relation = CATALOGUE[root.relation]
    unit = relation.results[str(pick_result(root, relation))]
    if unit.factor == item.unit.factor and unit.offset == item.unit.offset:
        return []
    result = evaluate(item.answer, values, CATALOGUE).to(unit).number
    return [f"{short_quantity(result, unit)} = {answer}"]


def rounding_line(item: PreparedItem, exact: Fraction) -> str:
    """Say how the result becomes the printed key."""
    key = round_to_step(exact, item.step, item.direction)
    shown = quantity_text(key, item.unit, item.step)
    if key == exact:
        return f"Answer: {shown}"
    step = quantity_text(item.step, item.unit)
    return f"{_WAYS[item.direction]} to {step}: {shown}"


def _sign(exact: Fraction) -> str:
    return "=" if is_short(exact) else "≈"


def _calls(root: Node) -> Iterator[CallNode]:
    """Return the relation calls from the innermost out, each once."""
    inner = [n for n in walk(root) if isinstance(n, CallNode) and n.relation in CATALOGUE]
    yield from reversed(inner)


class _Writer:
    """Writes parts of a formula with the drawn values put in."""

    def __init__(self, values: Mapping[str, Value]) -> None:
        self._values = values

    def call_lines(self, node: CallNode) -> tuple[str, ...]:
        relation = CATALOGUE[node.relation]
        arguments = self._arguments(node, relation)
        results = relation.call(arguments)
        picked = str(pick_result(node, relation))
        return relation.working(arguments, {picked: results[picked]})

    def _arguments(
        self, node: CallNode, relation: Relation
    ) -> dict[str, Fraction | tuple[Fraction, ...]]:
        bound, _ = bind(node, relation)
        return {
            one.parameter.name: self._converted(one.arguments[0].value, one.parameter.unit)
            for one in bound
            if one.arguments
        }

    def _converted(self, node: Node, unit: Unit | None) -> Fraction | tuple[Fraction, ...]:
        if isinstance(node, NameNode):
            value = self._values[node.name]
            if isinstance(value, Ratio):
                return value.parts
        result = evaluate(Formula("", node), self._values, CATALOGUE)
        return result.to(unit).number if unit else result.number

    def text(self, node: Node, tight: bool = False) -> str:
        """Return a part as a reader would write it; `tight` puts sums in brackets."""
        if isinstance(node, NumberNode):
            return short_number(node.value)
        if isinstance(node, NameNode):
            return value_text(self._values[node.name])
        if isinstance(node, MinusNode):
            return f"−{self.text(node.operand, tight=True)}"
        if isinstance(node, PowerNode):
            return f"({self.text(node.base)})^{node.exponent}"
        if isinstance(node, OperationNode):
            return self._operation(node, tight)
        return self._result(node)

    def _operation(self, node: OperationNode, tight: bool) -> str:
        times = node.operator in "*/"
        left = self.text(node.left, tight=times)
        right_tight = times or node.operator == "-"
        right = self.text(node.right, tight=right_tight)
        if node.operator == "/" and _is_product(node.right):
            right = f"({right})"
        line = f"{left} {_SIGNS[node.operator]} {right}"
        return f"({line})" if tight and node.operator in "+-" else line

    def _result(self, node: CallNode) -> str:
        value = evaluate(Formula("", node), self._values, CATALOGUE)
        if node.relation not in CATALOGUE:
            return short_number(value.number)
        relation = CATALOGUE[node.relation]
        unit = relation.results[str(pick_result(node, relation))]
        return short_quantity(value.to(unit).number, unit)


def _is_product(node: Node) -> bool:
    return isinstance(node, OperationNode) and node.operator in "*/"


def value_text(value: Value) -> str:
    """Return a drawn value as a learner reads it: '60 µm' or '4:1:1'."""
    if isinstance(value, Quantity):
        return quantity_text(value.number, value.unit)
    return ":".join(number_text(part) for part in value.parts)
