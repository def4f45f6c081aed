"""One paper entered at the terminal, question by question; nothing is kept before it is confirmed.

It reads lines, so that a file or another program can answer as well.
"""

import click

from generator.command_line.marking.mark_words import paper_lines
from generator.command_line.terminal import accepted, confirmed
from generator.marking.tables import FormAnswers
from generator.records import Records
from generator.workflows.answers import WAYS, PaperEntry, open_entry, preview_marks


def entered_by_hand(connection: Records, form_id: str, person: str) -> list[FormAnswers]:
    """Ask for the answers of one paper, show what they come to, and return them when confirmed."""
    entry = accepted(open_entry(connection, form_id, person))
    click.echo(entry.heading, err=True)
    click.echo(WAYS, err=True)
    try:
        _ask(entry)
        for line in paper_lines(accepted(preview_marks(connection, entry.answers))):
            click.echo(line, err=True)
        sure = confirmed("Keep these answers?")
    except click.Abort as end:
        raise click.ClickException("the answers ended too early; nothing was kept") from end
    if not sure:
        raise click.ClickException("nothing was kept")
    return [entry.answers]


def _ask(entry: PaperEntry) -> None:
    while (asks := entry.asks) is not None:
        typed = click.prompt(asks, "", show_default=False, err=True)
        said = entry.take(typed)
        if said:
            click.echo(f"    {said}", err=True)
