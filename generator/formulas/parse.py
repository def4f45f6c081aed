"""Reading a formula: the text becomes our own few parts, or problems with their columns."""

import ast
import re

from generator.formulas.literals import exact_number, whole_power
from generator.formulas.refusals import ALLOWED, REFUSED, refused_at
from generator.formulas.scan import DEEPEST, expression_tree, text_problems
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
    Operator,
    PowerNode,
)

MOST_NODES = 200

_NAME = re.compile(r"[A-Za-z][A-Za-z0-9]*(?:_[A-Za-z0-9]+)*")
_OPERATORS: dict[type[ast.operator], Operator] = {
    ast.Add: "+",
    ast.Sub: "-",
    ast.Mult: "*",
    ast.Div: "/",
}


def parse_formula(text: str) -> tuple[Formula | None, tuple[FormulaProblem, ...]]:
    """Read a formula; give it, or every problem that its text has."""
    return parse_shifted(text, 0)


def parse_shifted(text: str, shift: int) -> tuple[Formula | None, tuple[FormulaProblem, ...]]:
    """Read a formula that stands some characters into a longer text; columns count from there."""
    problems = text_problems(text)
    if problems:
        return None, tuple(_moved(problem, shift) for problem in problems)
    plain = text.lstrip(" \n")
    start = shift + len(text) - len(plain)
    tree = expression_tree(plain)
    if isinstance(tree, FormulaProblem):
        return None, (_moved(tree, start),)
    reader = _Reader(plain, start)
    root = reader.read(tree, 1)
    if reader.problems or root is None:
        return None, tuple(sorted(reader.problems, key=lambda problem: problem.column))
    return Formula(text, root), ()


def _moved(problem: FormulaProblem, shift: int) -> FormulaProblem:
    return FormulaProblem(problem.message, problem.column + shift, problem.rule, problem.hint)


class _Reader:
    """Turns a syntax tree into our parts and notes every problem on the way."""

    def __init__(self, text: str, shift: int) -> None:
        self.problems: list[FormulaProblem] = []
        self._text = text
        self._shift = shift
        self._nodes = 0

    def read(self, tree: ast.expr, depth: int) -> Node | None:
        """Return one part, or nothing after noting its problem."""
        self._nodes += 1
        if depth > DEEPEST or self._nodes > MOST_NODES:
            self._too_big(tree, depth)
            return None
        if isinstance(tree, ast.Constant):
            return self._number(tree)
        if isinstance(tree, ast.Name):
            return self._name(tree)
        if isinstance(tree, ast.UnaryOp) and isinstance(tree.op, ast.USub):
            operand = self.read(tree.operand, depth + 1)
            return MinusNode(operand, self._column(tree)) if operand else None
        if isinstance(tree, ast.BinOp) and isinstance(tree.op, ast.Pow):
            return self._power(tree, depth)
        if isinstance(tree, ast.BinOp) and type(tree.op) in _OPERATORS:
            return self._operation(tree, depth)
        if isinstance(tree, ast.Call):
            return self._call(tree, "", 0, depth)
        if isinstance(tree, ast.Subscript):
            return self._picked(tree, depth)
        self._refuse(tree, REFUSED.get(type(tree), ALLOWED))
        return None

    def _column(self, tree: ast.expr | ast.keyword) -> int:
        # the text is ASCII by now, so bytes and characters count alike
        return self._shift + tree.col_offset + 1

    def _refuse(
        self, tree: ast.expr | ast.keyword, message: str, rule: str = "formula-syntax"
    ) -> None:
        hint = ALLOWED if rule == "formula-syntax" and message != ALLOWED else ""
        column = self._shift + refused_at(tree, self._text) + 1
        self.problems.append(FormulaProblem(message, column, rule, hint))

    def _too_big(self, tree: ast.expr, depth: int) -> None:
        if any(problem.rule == "formula-size" for problem in self.problems):
            return
        if depth > DEEPEST:
            self._refuse(tree, f"parts may be nested at most {DEEPEST} deep", "formula-size")
        else:
            self._refuse(tree, f"a formula has at most {MOST_NODES} parts", "formula-size")

    def _number(self, tree: ast.Constant) -> NumberNode | None:
        if isinstance(tree.value, (str, bytes)):
            self._refuse(tree, "a formula has no text in it")
            return None
        if isinstance(tree.value, bool) or not isinstance(tree.value, (int, float, complex)):
            written = self._text[tree.col_offset : tree.end_col_offset]
            self._refuse(tree, f"'{written}' is not a number")
            return None
        value = exact_number(self._text[tree.col_offset : tree.end_col_offset], self._column(tree))
        if isinstance(value, FormulaProblem):
            self.problems.append(value)
            return None
        return NumberNode(value, self._column(tree))

    def _name(self, tree: ast.Name) -> NameNode | None:
        if self._is_name(tree, tree.id):
            return NameNode(tree.id, self._column(tree))
        return None

    def _is_name(self, tree: ast.expr | ast.keyword, name: str) -> bool:
        if _NAME.fullmatch(name):
            return True
        message = "a name starts with a letter and has single underscores only between its words"
        self._refuse(tree, message, "formula-name")
        return False

    def _power(self, tree: ast.BinOp, depth: int) -> PowerNode | None:
        base = self.read(tree.left, depth + 1)
        exponent = whole_power(tree.right, self._text, self._column(tree.right))
        if isinstance(exponent, FormulaProblem):
            self.problems.append(exponent)
            return None
        return PowerNode(base, exponent, self._operator_column(tree)) if base else None

    def _operation(self, tree: ast.BinOp, depth: int) -> OperationNode | None:
        left = self.read(tree.left, depth + 1)
        right = self.read(tree.right, depth + 1)
        if left is None or right is None:
            return None
        operator = _OPERATORS[type(tree.op)]
        return OperationNode(operator, left, right, self._operator_column(tree))

    def _operator_column(self, tree: ast.BinOp) -> int:
        after_left = tree.left.end_col_offset or 0
        # between the two parts stand only brackets, blanks and the operator
        sign = re.compile(r"[-+*/]").search(self._text, after_left)
        return self._shift + (sign.start() if sign else after_left) + 1

    def _picked(self, tree: ast.Subscript, depth: int) -> CallNode | None:
        if not isinstance(tree.value, ast.Call):
            self._refuse(tree, "only the result of a relation can be picked by its name")
            return None
        picked = tree.slice
        if not (isinstance(picked, ast.Constant) and isinstance(picked.value, str)):
            self._refuse(picked, "a result is picked by its name in quotes")
            return None
        return self._call(tree.value, picked.value, self._column(picked), depth)

    def _call(self, tree: ast.Call, result: str, result_column: int, depth: int) -> CallNode | None:
        if not isinstance(tree.func, ast.Name):
            message = REFUSED.get(type(tree.func), "only a relation can be called, by its name")
            self._refuse(tree.func, message)
            return None
        if not self._is_name(tree, tree.func.id):
            return None
        arguments = [self._argument("", value, value, depth) for value in tree.args]
        for keyword in tree.keywords:
            arguments.append(self._keyword(keyword, depth))
        given = tuple(argument for argument in arguments if argument is not None)
        if len(given) < len(arguments):
            return None
        return CallNode(tree.func.id, given, result, result_column, self._column(tree))

    def _keyword(self, keyword: ast.keyword, depth: int) -> Argument | None:
        if keyword.arg is None:
            self._refuse(keyword, "a formula has no starred inputs")
            return None
        if not self._is_name(keyword, keyword.arg):
            return None
        return self._argument(keyword.arg, keyword.value, keyword, depth)

    def _argument(
        self, name: str, value: ast.expr, place: ast.expr | ast.keyword, depth: int
    ) -> Argument | None:
        node = self.read(value, depth + 1)
        return Argument(name, node, self._column(place)) if node else None
