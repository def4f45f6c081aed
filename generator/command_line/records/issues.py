"""`guidecoat records issues`, `print-again` and `void`."""

import click

from generator.command_line.terminal import accepted, ask_first, now, records_here, say_finished
from generator.records.issues import all_issues
from generator.records.store import amendments_of_issue
from generator.wording import counted
from generator.workflows.papers import finish_pending, plan_void, print_again, use_again, void_issue

# SQLite holds no larger row number; nobody issues so many
MOST = 2**31


@click.command()
def issues() -> None:
    """List what was issued, newest last.

    Example: guidecoat records issues
    """
    with records_here() as (connection, project):
        say_finished(finish_pending(project, connection))
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
        written = accepted(print_again(project, connection, number))
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
        if take_back:
            stakes = accepted(use_again(connection, number, reason, now()))
            click.echo(f"in use again: {stakes}")
            return
        ask_first(accepted(plan_void(connection, number)), yes)
        stakes = accepted(void_issue(connection, number, reason, now()))
    click.echo(f"voided: {stakes}")
    click.echo(
        f"to take it back: guidecoat records void {number} --take-back --reason ...", err=True
    )
