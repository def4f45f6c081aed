"""Asks before something is changed that somebody may regret; a script says --yes."""

import sys

import click

from generator.workflows import NeedsConfirmation


def somebody_is_there() -> bool:
    """Return whether a person sits at the keyboard."""
    return sys.stdin.isatty()


def confirmed(question: str) -> bool:
    """Ask a question and return the answer; what is said next is on a line of its own."""
    try:
        return click.confirm(question, err=True)
    finally:
        # what comes through a pipe is not echoed, not even the end of its line
        if not somebody_is_there():
            click.echo(err=True)


def ask_first(asked: NeedsConfirmation, yes: bool) -> None:
    """Go on only with a yes; stop with one sentence, exit 1 and nothing changed without one.

    asked  what would be lost or changed, shown before the question
    yes    said on the command line already
    """
    if yes:
        return
    if not somebody_is_there():
        raise click.ClickException(
            f"{asked.stakes}. Nobody is at the keyboard to say yes, so nothing was changed; "
            "add --yes if you mean it"
        )
    click.echo(f"{asked.stakes}.", err=True)
    try:
        sure = confirmed(asked.question)
    except click.Abort as end:
        raise click.ClickException("nothing was changed") from end
    if not sure:
        raise click.ClickException("nothing was changed")
