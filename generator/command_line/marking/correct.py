"""`guidecoat correct`."""

import click

from generator.command_line.terminal import accepted, confirmed, issued_records, now, renamed


@click.command()
@click.argument("issue", type=click.IntRange(min=1))
@click.option("--form", "label", help="Label of a form that asks the question, such as B.")
@click.option("--question", type=click.IntRange(min=1), help="Its number there.")
@click.option("--accept", help="Accept this option of that form as well, for a choice.")
@click.option("--key", help="The right option, or options, of that form; no other is right.")
@click.option("--accept-number", help="Accept 65 as well, or '95 to 105 µm'.")
@click.option("--leave-out", "out", is_flag=True, help="Take the question out of the marks.")
@click.option("--reason", required=True, help="Why; it is kept with the marks.")
@click.option("--decided-by", "by", default="", help="Code of who decided.")
@renamed("--by", "--decided-by")
@click.option("--dry-run", is_flag=True, help="Show what would change, and keep nothing.")
@click.option("--yes", is_flag=True, help="Do not ask before keeping.")
def correct(
    issue: int,
    label: str | None,
    question: int | None,
    accept: str | None,
    key: str | None,
    accept_number: str | None,
    out: bool,
    reason: str,
    by: str,
    dry_run: bool,
    yes: bool,
) -> None:
    """Correct the key of one question of an issue after an appeal, and mark everybody again.

    Example: guidecoat correct 3 --form B --question 7 --accept C --reason "both are sold so"

    Name the question as one printed form shows it. Options are found again by their text on every
    form of the issue, whatever letter they have there. Other numbers are another question: a form
    that asks with other numbers stays as it is, and is named. A question that is left out counts
    neither in the marks gained nor in the marks of the form, for everybody.

    Old marks and the reason stay in the records. Answers that are entered later are marked with the
    corrected key. Papers and keys that were issued stay as they were printed.
    """
    if label is None or question is None:
        raise click.UsageError(
            "name the question: --form with the letter of a form that asks it, as it is printed at "
            "the foot of the paper, and --question with its number there"
        )
    ways = (accept, key, accept_number, out or None)
    if sum(way is not None for way in ways) != 1:
        raise click.UsageError("give exactly one of --accept, --key, --accept-number, --leave-out")
    from generator.command_line.marking.correct_words import appeal_text
    from generator.workflows.answers import NewKey, carry_out_correction, plan_correction

    with issued_records() as connection:
        new_key = NewKey(accept, key, accept_number)
        plan = accepted(plan_correction(connection, issue, label, question, new_key))
        click.echo(plan.asks.stakes)
        click.echo(appeal_text(plan.appeal))
        if dry_run:
            click.echo("nothing was kept")
            return
        if not yes and not confirmed(plan.asks.question):
            raise click.ClickException("nothing was kept; to keep it, answer y or add --yes")
        done = accepted(
            carry_out_correction(connection, plan, reason=reason, decided_by=by, at=now())
        )
        if done.meanwhile:
            click.echo(f"answers came in meanwhile:\n{appeal_text(done.appeal)}")
    click.echo(f"correction {done.number} of issue {issue} is kept")
