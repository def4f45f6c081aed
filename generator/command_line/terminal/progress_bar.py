"""How far a long command is, for somebody who waits at a terminal."""

import sys
from collections.abc import Callable, Iterator, Sequence
from typing import TypeVar

import click

T = TypeVar("T")


def progress(label: str, fewest: int = 1) -> Callable[[Sequence[T]], Iterator[T]]:
    """Return a walk through things one by one that shows how far it is.

    fewest  with fewer things than this nobody has to wait, so nothing is shown
    """

    def watched(things: Sequence[T]) -> Iterator[T]:
        quiet = len(things) < fewest or not sys.stderr.isatty()
        with click.progressbar(things, label=label, file=sys.stderr, hidden=quiet) as bar:
            yield from bar

    return watched
