"""Checking a formula's names, calls and units before any number exists."""

from collections.abc import Iterable, Mapping
from dataclasses import dataclass

from generator.diagnostics import did_you_mean
from generator.formulas.binding import bind, pick_result
from generator.formulas.catalogue_protocol import (
    RATIO,
    Catalogue,
    CatalogueEntry,
    CatalogueParameter,
    Kind,
)
from generator.formulas.ratio_functions import RATIO_FUNCTIONS, ratio_call_problem
from generator.formulas.syntax import (
    Argument,
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
from generator.quantities import BARE, Unit, base_unit


@dataclass(frozen=True, slots=True)
class UnitResult:
    """What a formula's answer measures.

    unit  a named unit where one is known, else the nameless base unit of its dimension
    """

    unit: Unit

    def agrees_with(self, unit: Unit) -> bool:
        """Say whether the answer can be shown in a unit."""
        return self.unit.agrees_with(unit)


def check_units(
    formula: Formula, names: Mapping[str, Kind], catalogue: Catalogue
) -> tuple[UnitResult | None, tuple[FormulaProblem, ...]]:
    """Check a formula; give what it measures, or every problem it has."""
    checker = _Checker(names, catalogue)
    unit = checker.number(formula.root)
    problems = tuple(sorted(checker.problems, key=lambda problem: problem.column))
    if problems or unit is None:
        return None, problems
    return UnitResult(unit), ()


class _Checker:
    """Walks a formula; a part whose unit is unknown passes silently through what holds it."""

    def __init__(self, names: Mapping[str, Kind], catalogue: Catalogue) -> None:
        self.problems: list[FormulaProblem] = []
        self._names = names
        self._catalogue = catalogue

    def number(self, node: Node) -> Unit | None:
        """Return the unit of a part that must be a single number."""
        kind = self._kind(node)
        if kind is RATIO:
            message = "a mixing ratio is not a single number"
            hint = "take one part with part(parts, 1) or their sum with parts_total(parts)"
            self._note(FormulaProblem(message, node.column, "formula-units", hint))
            return None
        return kind

    def _kind(self, node: Node) -> Kind | None:
        if isinstance(node, NumberNode):
            return base_unit(BARE)
        if isinstance(node, NameNode):
            return self._named(node)
        if isinstance(node, MinusNode):
            operand = self.number(node.operand)
            return operand and self._kept(turned(node.column, operand))
        if isinstance(node, PowerNode):
            base = self.number(node.base)
            return base and self._kept(raised(node, base))
        if isinstance(node, OperationNode):
            return self._operation(node)
        if node.relation in RATIO_FUNCTIONS:
            return self._ratio_call(node)
        return self._call(node)

    def _note(self, problem: FormulaProblem) -> None:
        self.problems.append(problem)

    def _kept(self, outcome: UnitOrProblem) -> Unit | None:
        if isinstance(outcome, FormulaProblem):
            self._note(outcome)
            return None
        return outcome

    def _named(self, node: NameNode) -> Kind | None:
        kind = self._names.get(node.name)
        if kind is not None:
            return kind
        if node.name in self._catalogue or node.name in RATIO_FUNCTIONS:
            message = f"'{node.name}' is a relation, and its inputs are missing"
            hint = f"write {node.name}(...) with its inputs"
            self._note(FormulaProblem(message, node.column, "formula-name", hint))
            return None
        message = f"there is no given value named '{node.name}'"
        hint = _name_hint(node.name, self._names)
        self._note(FormulaProblem(message, node.column, "formula-name", hint))
        return None

    def _operation(self, node: OperationNode) -> Unit | None:
        left = self.number(node.left)
        right = self.number(node.right)
        if left is None or right is None:
            return None
        return self._kept(joined(node, left, right))

    def _ratio_call(self, node: CallNode) -> Unit | None:
        problem = ratio_call_problem(node)
        if problem is not None:
            self._note(problem)
            return None
        ratio = node.arguments[0]
        kind = self._kind(ratio.value)
        if kind is not None and kind is not RATIO:
            message = f"{node.relation} takes a ratio, but {_said(ratio)} is {_words(kind)}"
            self._note(FormulaProblem(message, ratio.column, "formula-units"))
        return base_unit(BARE)

    def _call(self, node: CallNode) -> Unit | None:
        entry = self._catalogue.get(node.relation)
        if entry is None:
            self._unknown_relation(node)
            return None
        bound, problems = bind(node, entry)
        self.problems.extend(problems)
        placed = [(a, b.parameter) for b in bound for a in b.arguments]
        for argument, parameter in placed:
            self._argument(entry, parameter, argument)
        for argument in node.arguments:
            if all(argument is not known for known, _ in placed):
                self._kind(argument.value)
        result = pick_result(node, entry)
        if isinstance(result, FormulaProblem):
            self._note(result)
            return None
        return entry.results[result]

    def _unknown_relation(self, node: CallNode) -> None:
        if node.relation in self._names:
            message = f"'{node.relation}' is a given value and takes no inputs"
            hint = "write * to multiply"
        else:
            message = f"there is no relation named '{node.relation}'"
            hint = did_you_mean(node.relation, (*self._catalogue, *RATIO_FUNCTIONS))
        self._note(FormulaProblem(message, node.column, "formula-name", hint))
        for argument in node.arguments:
            self._kind(argument.value)

    def _argument(
        self, entry: CatalogueEntry, parameter: CatalogueParameter, argument: Argument
    ) -> None:
        kind = self._kind(argument.value)
        if kind is None:
            return
        wanted: Kind = RATIO if parameter.unit is None else parameter.unit
        if kind is RATIO or wanted is RATIO:
            if kind is wanted:
                return
        elif kind.agrees_with(wanted):
            return
        message = (
            f"'{parameter.name}' of {entry.name} takes {_words(wanted)}, "
            f"but {_said(argument)} is {_words(kind)}"
        )
        self._note(FormulaProblem(message, argument.column, "formula-units"))


def _name_hint(name: str, known: Iterable[str]) -> str:
    names = sorted(known)
    listed = f"the names are {', '.join(names)}" if 0 < len(names) <= 8 else ""
    return did_you_mean(name, names) or listed


def _said(argument: Argument) -> str:
    node = argument.value
    if isinstance(node, NameNode):
        return node.name
    if isinstance(node, CallNode):
        return f"the result of {node.relation}"
    return "this"


def _words(kind: Kind) -> str:
    return "a mixing ratio" if kind is RATIO else kind.words
