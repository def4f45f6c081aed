"""`guidecoat records issues`, `print-again` and `void`."""

import click

from generator.command_line.asking import ask_first
from generator.command_line.clock import now
from generator.command_line.issue_papers import finish_pending, print_again
from generator.command_line.project import counted
from generator.command_line.records_desk import records_here
from generator.records.issues import all_issues, take_back_void
from generator.records.issues import void as take_out
from generator.records.leaving import stake_of_issue
from generator.records.store import amendments_of_issue

# SQLite holds no larger row number; nobody issues so many
MOST = 2**31


@click.command()
def issues() -> None:
    """List what was issued, newest last.

    Example: guidecoat records issues
    """
    with records_here() as (connection, project):
        finish_pending(project, connection)
        for line in all_issues(connection):
            forms = counted(line.forms, "form")
            said = f"issue {line.number}: {line.blueprint}, {line.issued[:10]}, {forms}, "
            said += f"{line.sittings} answered"
            click.echo(said + (f"; voided: {line.void_reason}" if line.voided else ""))
            for change in amendments_of_issue(connection, line.number):
                click.echo(f"    {change.at[:10]}: {change.before}; taken back: {change.reason}")


@click.command("print-again")
@click.argument("number", type=click.IntRange(1, MOST), metavar="ISSUE")
def again(number: int) -> None:
    """Write the papers of an issue again, byte by byte as they were.

    Example: guidecoat records print-again 3
    """
    with records_here() as (connection, project):
        written = print_again(project, connection, number)
    for path in written:
        click.echo(path.relative_to(project.root))


@click.command()
@click.argument("number", type=click.IntRange(1, MOST), metavar="ISSUE")
@click.option("--reason", required=True, help="Why; it stays in the records.")
@click.option("--take-back", is_flag=True, help="Put a voided issue into use again.")
@click.option("--yes", is_flag=True, help="Do not ask first.")
def void(number: int, reason: str, take_back: bool, yes: bool) -> None:
    """Take an issue out of use: it takes no more answers, and its results no longer count.

    Example: guidecoat records void 3 --reason "the papers were left in the canteen"

    It says first how many marked papers go with it. Papers and answers stay in the records, and
    --take-back puts them into use again. Shred the printed ones.
    """
    with records_here() as (connection, _):
        stakes = stake_of_issue(connection, number)
        if take_back:
            take_back_void(connection, number, reason, now())
            click.echo(f"in use again: {stakes}")
            return
        question = "None of it counts until the void is taken back. Void it?"
        ask_first(f"you are about to void {stakes}", question, yes)
        take_out(connection, number, reason, now())
    click.echo(f"voided: {stakes}")
    click.echo(
        f"to take it back: guidecoat records void {number} --take-back --reason ...", err=True
    )
