"""Lines of working: the equation, the numbers put in, the result."""

import re
from collections.abc import Collection, Mapping
from fractions import Fraction

from generator.quantities import Unit, is_short, short_number, short_quantity

_NAME = re.compile(r"[a-z][a-z0-9]*(?:_[a-z0-9]+)*")
_ADDED_TERM = re.compile(rf" [+-] ({_NAME.pattern}(?: [×÷] {_NAME.pattern})*)(?= [+-]|\)|$)")
_SPOKEN = {"p_grade": "P grade", "cami_grade": "CAMI grade"}
_PART_NAMES = ("base_part", "hardener_part", "thinner_part")
_RAISED = "²³"


def working_lines(
    equation: str,
    numbers: Mapping[str, Fraction | tuple[Fraction, ...]],
    units: Mapping[str, Unit | None],
    wanted: Collection[str],
) -> tuple[str, ...]:
    """Work one or more equations through with the numbers at hand.

    equation  equations split by "; ", each "result = expression" in the names of the numbers
    numbers   arguments and results in their units; a ratio also answers to base_part,
              hardener_part, thinner_part and all_parts
    wanted    results to show; those they are worked out from come along
    A result of nothing (a thinner that is not in the ratio) is left out beside others.
    """
    plain = _with_parts(numbers)
    shown = {name: _shown(value, units.get(name)) for name, value in plain.items()}
    expressions = dict(one.split(" = ", 1) for one in equation.split("; "))
    lines: list[str] = []
    for name in _needed(wanted, expressions):
        if plain[name] == 0 and len(expressions) > 1:
            continue
        # a number that ends in few decimals is exact; the others are only shown short
        sign = "=" if is_short(plain[name]) else "≈"
        put_in = _put_in(_without_nothing(expressions[name], plain), shown)
        lines.append(_readable(f"{name} = {expressions[name]}"))
        lines.append(f"{_readable(name)} = {put_in}")
        lines.append(f"{_readable(name)} {sign} {shown[name]}")
    return tuple(lines)


def _needed(wanted: Collection[str], expressions: Mapping[str, str]) -> tuple[str, ...]:
    needed = set(wanted)
    # later equations lean on earlier ones only, so one walk backwards finds all
    for name in reversed(tuple(expressions)):
        if name in needed:
            needed.update(set(_NAME.findall(expressions[name])) & expressions.keys())
    return tuple(name for name in expressions if name in needed)


def _with_parts(numbers: Mapping[str, Fraction | tuple[Fraction, ...]]) -> dict[str, Fraction]:
    plain: dict[str, Fraction] = {}
    for name, value in numbers.items():
        if isinstance(value, tuple):
            plain.update(zip(_PART_NAMES, [*value, Fraction(0)], strict=False))
            plain["all_parts"] = sum(value, Fraction(0))
        else:
            plain[name] = value
    return plain


def _without_nothing(expression: str, plain: Mapping[str, Fraction]) -> str:
    def kept(match: re.Match[str]) -> str:
        factors = _NAME.findall(match[1])
        return "" if any(plain.get(factor) == 0 for factor in factors) else match[0]

    return _ADDED_TERM.sub(kept, expression).replace("(100 %)", "100 %")


def _put_in(expression: str, shown: Mapping[str, str]) -> str:
    def number(match: re.Match[str]) -> str:
        text = shown.get(match[0], match[0])
        raised = expression[match.end() : match.end() + 1] in tuple(_RAISED)
        return f"({text})" if raised and " " in text.replace("\u00a0", " ") else text

    return _NAME.sub(number, expression)


def _shown(value: Fraction, unit: Unit | None) -> str:
    return short_number(value) if unit is None else short_quantity(value, unit)


def _readable(text: str) -> str:
    spoken = _NAME.sub(lambda match: _SPOKEN.get(match[0], match[0]), text)
    return spoken.replace("_", " ")
