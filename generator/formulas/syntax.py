"""The parts of a formula after reading, and what can be wrong with one."""

from collections.abc import Iterator
from dataclasses import dataclass
from fractions import Fraction
from typing import Literal, TypeAlias

Operator = Literal["+", "-", "*", "/"]


@dataclass(frozen=True, slots=True)
class FormulaProblem:
    """One thing wrong with a formula.

    message  one sentence in plain words
    column   counted in characters from 1 within the text
    rule     formula-syntax, -name, -power, -size, -units or -call
    hint     what to write instead, or empty
    """

    message: str
    column: int
    rule: str
    hint: str = ""


@dataclass(frozen=True, slots=True)
class NumberNode:
    """A number as written, exact."""

    value: Fraction
    column: int


@dataclass(frozen=True, slots=True)
class NameNode:
    """The name of a given value."""

    name: str
    column: int


@dataclass(frozen=True, slots=True)
class MinusNode:
    """A part with its sign turned."""

    operand: "Node"
    column: int


@dataclass(frozen=True, slots=True)
class OperationNode:
    """A sum, difference, product or quotient; the column is the operator's."""

    operator: Operator
    left: "Node"
    right: "Node"
    column: int


@dataclass(frozen=True, slots=True)
class PowerNode:
    """A whole power from -6 to 6."""

    base: "Node"
    exponent: int
    column: int


@dataclass(frozen=True, slots=True)
class Argument:
    """One input of a call; the name is empty when given by position."""

    name: str
    value: "Node"
    column: int


@dataclass(frozen=True, slots=True)
class CallNode:
    """A relation with its inputs; result names the one picked, or is empty."""

    relation: str
    arguments: tuple[Argument, ...]
    result: str
    result_column: int
    column: int


Node: TypeAlias = NumberNode | NameNode | MinusNode | OperationNode | PowerNode | CallNode


@dataclass(frozen=True, slots=True)
class Formula:
    """A formula that has been read.

    text  as the author wrote it
    root  the outermost part
    """

    text: str
    root: Node

    @property
    def names(self) -> tuple[str, ...]:
        """Return the names of the given values it uses, each once, in order of the text."""
        return tuple(dict.fromkeys(n.name for n in walk(self.root) if isinstance(n, NameNode)))

    @property
    def relations(self) -> tuple[str, ...]:
        """Return the names of the relations it calls, each once, outermost first."""
        return tuple(dict.fromkeys(n.relation for n in walk(self.root) if isinstance(n, CallNode)))


def walk(node: Node) -> Iterator[Node]:
    """Return a part and all parts inside it, from left to right."""
    yield node
    for inner in _inner(node):
        yield from walk(inner)


def _inner(node: Node) -> tuple[Node, ...]:
    if isinstance(node, MinusNode):
        return (node.operand,)
    if isinstance(node, OperationNode):
        return (node.left, node.right)
    if isinstance(node, PowerNode):
        return (node.base,)
    if isinstance(node, CallNode):
        return tuple(argument.value for argument in node.arguments)
    return ()
