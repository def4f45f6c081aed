"""Keeps a claim about every one of some things from passing because there is none of them."""

from collections.abc import Iterable
from typing import TypeVar

Found = TypeVar("Found")


def some(found: Iterable[Found]) -> tuple[Found, ...]:
    """Return what was found; fail where nothing was."""
    things = tuple(found)
    assert things, "there is nothing here to be tested"
    return things
