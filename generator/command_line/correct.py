"""`guidecoat correct`."""

from collections.abc import Mapping, Sequence
from typing import Any

import click

from generator.command_line.asking import confirmed
from generator.command_line.clock import now
from generator.command_line.correct_words import appeal_text
from generator.command_line.records_desk import issued_records
from generator.marking.answers import (
    CannotMark,
    accept_number,
    accept_option,
    in_words,
    key_options,
    leave_out,
)
from generator.records import Records, RecordsRefused
from generator.records.sittings import (
    Correction,
    correct_and_mark_again,
    corrected_forms,
    preview_correction,
)

Plain = Mapping[str, Any]


@click.command()
@click.argument("issue", type=click.IntRange(min=1))
@click.option("--form", "label", help="Label of a form that asks the question, such as B.")
@click.option("--question", type=click.IntRange(min=1), help="Its number there.")
@click.option("--accept", help="Accept this option of that form as well, for a choice.")
@click.option("--key", help="The right option, or options, of that form; no other is right.")
@click.option("--accept-number", help="Accept 65 as well, or '95 to 105 µm'.")
@click.option("--leave-out", "out", is_flag=True, help="Take the question out of the marks.")
@click.option("--reason", required=True, help="Why; it is kept with the marks.")
@click.option("--by", default="", help="Code of who decided.")
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
            "say which question: --form with the letter of a form that asks it, as it stands at "
            "the foot of the paper, and --question with its number there"
        )
    ways = (accept, key, accept_number, out or None)
    if sum(way is not None for way in ways) != 1:
        raise click.UsageError("say one of --accept, --key, --accept-number, --leave-out")
    with issued_records() as connection:
        asked = _question(connection, issue, label, question)
        change = _change(asked, ways)
        appeal = preview_correction(connection, issue, asked["id"], change)
        click.echo(f"question {question} of form {label}: {in_words(change)}")
        click.echo(appeal_text(appeal))
        if dry_run:
            click.echo("nothing was kept")
            return
        if not yes and not confirmed("Keep this correction?"):
            raise click.ClickException("nothing was kept; to keep it, answer y or add --yes")
        correction = Correction(asked["id"], change, reason, by)
        number, done = correct_and_mark_again(connection, issue, correction, now())
        if done != appeal:
            click.echo(f"answers came in meanwhile:\n{appeal_text(done)}")
    click.echo(f"correction {number} of issue {issue} is kept")


def _question(connection: Records, issue: int, label: str, number: int) -> Plain:
    forms = corrected_forms(connection, issue)
    if not forms:
        raise RecordsRefused(f"there is no issue {issue} in the records")
    form = forms.get(label.upper())
    if form is None:
        raise RecordsRefused(f"issue {issue} has no form '{label}', only {', '.join(forms)}")
    entries = form["questions"]
    if number > len(entries):
        raise RecordsRefused(f"form {label} ends with question {len(entries)}")
    asked: Plain = entries[number - 1]["question"]
    return asked


def _change(question: Plain, ways: Sequence[Any]) -> Plain:
    accept, key, number, _ = ways
    try:
        if accept is not None:
            return accept_option(question, accept)
        if key is not None:
            return key_options(question, key)
        return leave_out() if number is None else accept_number(question, number)
    except CannotMark as refused:
        raise RecordsRefused(str(refused)) from refused
