"""Numbers in a formula, exact from their text."""

import ast
import re
from fractions import Fraction

from generator.formulas.syntax import FormulaProblem

HIGHEST_POWER = 6
HIGHEST_EXPONENT = 99

_NUMBER = re.compile(r"(?:[0-9]+(?:\.[0-9]*)?|\.[0-9]+)(?:[eE]([+-]?[0-9]+))?")


def exact_number(text: str, column: int) -> Fraction | FormulaProblem:
    """Return the exact value of a number as written: 0.1 is one tenth."""
    match = _NUMBER.fullmatch(text)
    if match is None:
        message = f"'{_shortened(text)}' is not a plain decimal number"
        return FormulaProblem(message, column, "formula-syntax", "write it like 1250 or 0.35")
    exponent = match[1]
    if exponent is not None and (len(exponent) > 4 or abs(int(exponent)) > HIGHEST_EXPONENT):
        message = f"the number '{_shortened(text)}' is too large or too small"
        return FormulaProblem(message, column, "formula-size")
    mantissa = text[: match.start(1) - 1] if exponent is not None else text
    scale = Fraction(10) ** int(exponent or 0)
    return Fraction(mantissa.rstrip(".")) * scale


def whole_power(node: ast.expr, text: str, column: int) -> int | FormulaProblem:
    """Return the whole number that stands as a power."""
    sign = 1
    if isinstance(node, ast.UnaryOp) and isinstance(node.op, ast.USub):
        sign, node = -1, node.operand
    written = text[node.col_offset : node.end_col_offset]
    if isinstance(node, ast.Constant) and re.fullmatch("[0-9]{1,2}", written):
        power = int(written)
        if power <= HIGHEST_POWER:
            return sign * power
    message = f"a power must be a whole number from -{HIGHEST_POWER} to {HIGHEST_POWER}"
    return FormulaProblem(message, column, "formula-power", "write it as a number, such as **2")


def _shortened(text: str) -> str:
    return text if len(text) <= 20 else text[:17] + "..."
