"""Answers in a few characters, for the lists that are marked from."""

from collections.abc import Callable, Mapping
from typing import Any


def short_answer(question: Mapping[str, Any]) -> str:
    """Write the answer of a question in a few characters for the list at the top of the key."""
    return _SHORT[question["kind"]](question["key"])


def with_unit(number: str, unit: str) -> str:
    """Write a number and its unit so that no line ends between them."""
    return f"{number}\u00a0{unit}" if unit else str(number)


def _right_letters(key: Mapping[str, Any]) -> str:
    return " ".join(option["letter"] for option in key["options"] if option["right"])


def _short_match(key: Mapping[str, Any]) -> str:
    return "  ".join(f"{number}{letter}" for number, letter in key["answers"].items())


_Short = Callable[[Mapping[str, Any]], str]
_SHORT: dict[str, _Short] = {
    "numeric": lambda key: with_unit(key["shown"], key["unit_symbol"]),
    "choice": _right_letters,
    "multiple_response": _right_letters,
    "order": lambda key: " ".join(key["one_order"]) + (" *" if int(key["orders"]) > 1 else ""),
    "match": _short_match,
    "written": lambda key: "see below",
}
