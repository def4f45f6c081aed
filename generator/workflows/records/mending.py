"""A date or an observation that was entered by mistake, taken out, or let count again."""

from generator.records import Records, RecordsRefused
from generator.records.certificates import certificates_of
from generator.records.practice import Kind, entry_of, put_back, take_out
from generator.workflows.refusals import NeedsConfirmation, refusing


@refusing(RecordsRefused)
def plan_take_out(connection: Records, person: str, kind: Kind, number: int) -> NeedsConfirmation:
    """Return which entry would no longer count, to be confirmed before `take_out_entry`."""
    entry = entry_of(connection, person, kind, number)
    stakes = f"{kind} {number}, {entry.words}{_signed(connection, person)}"
    return NeedsConfirmation(stakes, "It counts no more until it is put back. Take it out?")


@refusing(RecordsRefused)
def take_out_entry(
    connection: Records, person: str, kind: Kind, number: int, reason: str, at: str
) -> str:
    """Let an entry count no more, keep it with the reason, and return it in words.

    at  the time, as text
    """
    entry = entry_of(connection, person, kind, number)
    take_out(connection, person, kind, number, reason, at)
    return entry.words


@refusing(RecordsRefused)
def put_back_entry(
    connection: Records, person: str, kind: Kind, number: int, reason: str, at: str
) -> str:
    """Let an entry count again that was taken out, and return it in words."""
    return put_back(connection, person, kind, number, reason, at).words


def _signed(connection: Records, person: str) -> str:
    numbers = [str(certificate.number) for certificate in certificates_of(connection, person)]
    if not numbers:
        return ""
    return f"; certificates that were issued stay as they are: {', '.join(numbers)}"
