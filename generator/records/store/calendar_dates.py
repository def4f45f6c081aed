"""Dates as text, and the day some years later."""

from datetime import date, timedelta

from generator.records.store.database import RecordsRefused

FEBRUARY = 2


def read_date(text: str) -> date:
    """Read a date such as 2026-03-01; raises RecordsRefused for anything else."""
    try:
        found = date.fromisoformat(text)
    except ValueError:
        found = None
    if found is None or found.isoformat() != text:
        raise RecordsRefused(f"'{text}' is not a date such as 2026-03-01")
    return found


def years_after(start: date, years: int) -> date:
    """Return the same day some years later; 29 February becomes 28 February, never later.

    Raises RecordsRefused for a date beyond the calendar.
    """
    try:
        return start.replace(year=start.year + years)
    except ValueError:
        if start.month == FEBRUARY and start.year + years <= date.max.year:
            return start.replace(year=start.year + years, day=28)
        raise RecordsRefused(f"'{start.isoformat()}' is too late a date") from None


def days_after(start: date, days: int) -> date:
    """Return the day some days later; the last day of the calendar where there is none."""
    return start + min(timedelta(days=days), date.max - start)
