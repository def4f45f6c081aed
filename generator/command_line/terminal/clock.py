"""The only place that asks what day and time it is."""

from collections.abc import Callable
from datetime import date, datetime
from typing import Any, TypeVar

import click

from generator.command_line.terminal.renamed_options import renamed

F = TypeVar("F", bound=Callable[..., Any])


def now() -> str:
    """Return the local time as text, to the second."""
    return datetime.now().isoformat(timespec="seconds")


def today() -> date:
    """Return the local day."""
    return date.fromisoformat(now()[:10])


class Day(click.ParamType[date]):
    """A day on the command line, such as 2026-03-01."""

    name = "day"

    def convert(self, value: Any, param: click.Parameter | None, ctx: click.Context | None) -> date:
        """Read the day; anything else is misuse."""
        from generator.records import RecordsRefused
        from generator.records.store import read_date

        try:
            return value if isinstance(value, date) else read_date(str(value))
        except RecordsRefused as refused:
            return self.fail(str(refused), param, ctx)


def as_of(command: F) -> F:
    """Add the option that counts from another day than today."""
    option = click.option("--as-of", "on", type=Day(), help="Count from this day, not from today.")
    return option(renamed("--on", "--as-of")(command))
