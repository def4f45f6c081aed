"""The only place that asks what day and time it is."""

from datetime import date, datetime
from typing import Any

import click

from generator.records import RecordsRefused
from generator.records.store import read_date


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
        try:
            return value if isinstance(value, date) else read_date(str(value))
        except RecordsRefused as refused:
            return self.fail(str(refused), param, ctx)
