"""Reading a file of published checks and judging the relations by it."""

from collections.abc import Mapping
from dataclasses import dataclass
from fractions import Fraction
from pathlib import Path
from typing import Any, Literal

import yaml

from generator.quantities import round_to_step
from tests.refinishing.published_adapter import Answers, answers
from tests.refinishing.published_adapter_inputs import CannotAdapt, exact_number

JUDGEMENTS = {"true": True, "false": False}
DIRECTIONS: dict[str, Literal["half", "up", "down"]] = {"up": "up", "down": "down"}
# an exact value is printed to nine figures, so a tie may fall either way
TIE = Fraction(1, 10**6)


class UnreadableChecks(ValueError):
    """A file that holds no checks; the text is one sentence."""


@dataclass(frozen=True, slots=True)
class Check:
    """One published check.

    inputs    name with unit to what it is, as written
    expected  name with unit to value, exact value, decimal places, tolerance and direction
    """

    name: str
    calculation: str
    inputs: Mapping[str, Any]
    expected: Mapping[str, Mapping[str, str]]


@dataclass(frozen=True, slots=True)
class Verdict:
    """What came out of one check.

    problems  one sentence for each result that fails; none when the check passes
    reason    why the bare formula was tried instead of the relation; empty when it was not
    unused    inputs that no relation asked for
    """

    problems: tuple[str, ...]
    reason: str = ""
    unused: tuple[str, ...] = ()


def read_checks(path: Path) -> tuple[Check, ...]:
    """Read every check of a file; every scalar stays text, so numbers stay exact.

    Raises UnreadableChecks for a file without a list of checks.
    """
    try:
        data = yaml.load(path.read_text(encoding="utf-8"), Loader=yaml.BaseLoader)
    except (OSError, UnicodeDecodeError, yaml.YAMLError) as error:
        raise UnreadableChecks(f"{path} cannot be read: {error}") from error
    rows = data.get("checks") if isinstance(data, dict) else data
    if not isinstance(rows, list) or not rows:
        raise UnreadableChecks(f"{path} holds no list of checks")
    return tuple(_check(row, place) for place, row in enumerate(rows, 1))


def _check(row: Any, place: int) -> Check:
    if not isinstance(row, dict):
        return Check(f"check {place}", "", {}, {})
    expected = row.get("expected")
    each = expected.items() if isinstance(expected, dict) else ()
    return Check(
        name=str(row.get("id", f"check {place}")),
        calculation=str(row.get("calc", "")),
        inputs=row["inputs"] if isinstance(row.get("inputs"), dict) else {},
        expected={n: e if isinstance(e, dict) else {"value": e} for n, e in each},
    )


def judge(check: Check) -> Verdict:
    """Ask the relations and compare every expected result."""
    if not check.calculation or not check.inputs or not check.expected:
        return Verdict((f"{check.name}: a check needs calc, inputs and expected.",))
    try:
        found = answers(check.calculation, check.inputs, tuple(check.expected))
        problems = [p for n in check.expected if (p := _difference(n, check, found))]
    except CannotAdapt as error:
        return Verdict((f"{check.name}: {error}.",))
    return Verdict(tuple(problems), found.reason, found.unused)


def _difference(name: str, check: Check, found: Answers) -> str:
    """Say how a result differs from what is expected; empty when it does not."""
    expected, answer = check.expected[name], found.values[name]
    value = str(expected.get("value", ""))
    if value in JUDGEMENTS or isinstance(answer, bool):
        same = answer is JUDGEMENTS.get(value)
        return "" if same else f"{check.name}: {name} is {str(answer).lower()}, expected {value}."
    exact = exact_number(expected.get("exact", value))
    tolerance = exact_number(expected.get("tol", "0"))
    if abs(answer - exact) > tolerance:
        return (
            f"{check.name}: {name} is {float(answer):.9g}, expected {float(exact):.9g}"
            f" within {float(tolerance):.9g}."
        )
    return _shown_apart(name, check, exact)


def _shown_apart(name: str, check: Check, exact: Fraction) -> str:
    """Test the shown value apart: it must be the exact one, rounded as the check says."""
    expected = check.expected[name]
    if "exact" not in expected or "value" not in expected:
        return ""
    shown = exact_number(expected["value"])
    if "dp" not in expected:
        tolerance = exact_number(expected.get("tol", "0"))
        return "" if abs(shown - exact) <= tolerance else _wrongly_shown(name, check)
    step = Fraction(1, 10 ** int(expected["dp"]))
    direction = DIRECTIONS.get(expected.get("round", ""), "half")
    near = (exact, exact * (1 - TIE), exact * (1 + TIE))
    rounded = {round_to_step(number, step, direction) for number in near}
    return "" if shown in rounded else _wrongly_shown(name, check)


def _wrongly_shown(name: str, check: Check) -> str:
    expected = check.expected[name]
    return (
        f"{check.name}: {name} is shown as {expected['value']}, which is not"
        f" {expected['exact']} rounded."
    )
