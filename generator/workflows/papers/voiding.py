"""An issue taken out of use, and put into use again."""

from generator.records import Records, RecordsRefused
from generator.records.issues import take_back_void, void
from generator.records.leaving import stake_of_issue
from generator.workflows.refusals import NeedsConfirmation, refusing


@refusing(RecordsRefused)
def plan_void(connection: Records, number: int) -> NeedsConfirmation:
    """Return what goes with an issue, to be confirmed before `void_issue`."""
    return NeedsConfirmation(
        f"you are about to void {stake_of_issue(connection, number)}",
        "None of it counts until the void is taken back. Void it?",
    )


@refusing(RecordsRefused)
def void_issue(connection: Records, number: int, reason: str, at: str) -> str:
    """Take an issue out of use, and return what went with it.

    at  the time, as text
    """
    stakes = stake_of_issue(connection, number)
    void(connection, number, reason, at)
    return stakes


@refusing(RecordsRefused)
def use_again(connection: Records, number: int, reason: str, at: str) -> str:
    """Put a voided issue into use again, and return what counts again."""
    stakes = stake_of_issue(connection, number)
    take_back_void(connection, number, reason, at)
    return stakes
