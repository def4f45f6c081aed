"""What the page's script needs to mark a question, in few bytes."""

import re
from collections.abc import Mapping
from fractions import Fraction
from math import floor
from typing import Any, Final

from generator.issued import ForKey, NumericAnswerKey, OptionsAnswerKey, OrderAnswerKey
from generator.quantities import number_text
from generator.website.context import Question, Variants

# the author's words that make the unit part of the answer
_WITH_UNIT = re.compile(r"\b(?:with|and) (?:its|the) unit\b")


def asks_unit(question: Question) -> bool:
    """Return whether a number is wanted with its unit, as the words of the question say."""
    return question["kind"] == "numeric" and bool(_WITH_UNIT.search(question["stem"]))


def marking_data(variants: Variants) -> dict[str, Any]:
    """Return what the page's script needs to mark: no words that the page holds already.

    The first variant has it all, and each other one what differs from the first.
    """
    first, *others = ({"kind": one["kind"], **_marking(one)} for one in variants)
    changed = [
        {name: value for name, value in other.items() if value != first[name]} for other in others
    ]
    return {"variants": [first, *changed]}


def _marking(question: Question) -> dict[str, Any]:
    unit = {"asks_unit": asks_unit(question)} if question["kind"] == "numeric" else {}
    return {**_MARKING.of(question), **unit}


def _right(key: OptionsAnswerKey) -> dict[str, Any]:
    return {"right": [option["letter"] for option in key["options"] if option["right"]]}


def _order(key: OrderAnswerKey) -> dict[str, Any]:
    return {
        "steps": "".join(step["letter"] for step in key["steps"]),
        "pairs": [
            {"first": pair["first"], "then": pair["then"], "danger": pair["class"] == "danger"}
            for pair in key["pairs"]
        ],
    }


def _numeric(key: NumericAnswerKey) -> dict[str, Any]:
    return {
        "band": band_text(key["low"], key["high"]),
        "unit": key["unit"],
        "symbol": key["unit_symbol"],
        "step": key["step"],
        "slips": [slip_text(slip, Fraction(key["step"])) for slip in key["slips"]],
    }


def band_text(low: str | None, high: str | None) -> str:
    """Write a band for the script: its middle and half its width, or its two ends if shorter.

    low, high  exact decimals or fractions; None is an open end
    """
    ends = f"{low or ''}..{high or ''}"
    if low is None or high is None:
        return ends
    middle, half = (Fraction(low) + Fraction(high)) / 2, (Fraction(high) - Fraction(low)) / 2
    return min(f"{number_text(middle)}~{number_text(half)}", ends, key=len)


def slip_text(slip: Mapping[str, Any], step: Fraction) -> str:
    """Write the band of a known wrong way as the exact number it leads to, where that tells it.

    The band then is half a step around that number and the one it rounds to.
    """
    if slip["low"] is not None and slip["high"] is not None:
        low, high = Fraction(slip["low"]), Fraction(slip["high"])
        for exact in (low + step / 2, high - step / 2):
            rounded = floor(exact / step + Fraction(1, 2)) * step
            if exact >= 0 and (low, high) == (
                min(exact, rounded) - step / 2,
                max(exact, rounded) + step / 2,
            ):
                return f"@{number_text(exact)}"
    return band_text(slip["low"], slip["high"])


_MARKING: Final = ForKey(
    numeric=_numeric,
    choice=_right,
    multiple_response=_right,
    order=_order,
    match=lambda key: {"answers": key["answers"]},
    written=lambda key: {"marks": [point["marks"] for point in key["points"]]},
)
