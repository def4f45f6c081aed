"""The console command `guidecoat`."""

import errno
from typing import Any

import click

from generator.command_line.analyse import analyse
from generator.command_line.build import build
from generator.command_line.calculate import calculate
from generator.command_line.check import check
from generator.command_line.correct import correct
from generator.command_line.draw import draw
from generator.command_line.explain import explain
from generator.command_line.issue import issue
from generator.command_line.mark import mark
from generator.command_line.records import records
from generator.command_line.report import report
from generator.command_line.serve import serve
from generator.printing import PrintingRefused
from generator.questions import NothingToDraw


class _PlainSpeaking(click.Group):
    """Says in one sentence what the machine or the bank would not do."""

    def invoke(self, ctx: click.Context) -> Any:
        try:
            return super().invoke(ctx)
        except (NothingToDraw, PrintingRefused) as error:
            raise click.ClickException(str(error)) from error
        except OSError as error:
            if error.errno == errno.EPIPE:
                raise
            raise click.ClickException(f"{error.filename}: {error.strerror}") from error


@click.group(cls=_PlainSpeaking, context_settings={"help_option_names": ["-h", "--help"]})
@click.version_option(package_name="guidecoat", prog_name="guidecoat")
def main() -> None:
    """Build a refinishing course and its quizzes from one checked question bank.

    Exit codes: 0 clean, 1 problems found, 2 misuse.
    """


for command in (
    build,
    check,
    serve,
    calculate,
    draw,
    issue,
    mark,
    correct,
    explain,
    report,
    analyse,
    records,
):
    main.add_command(command)
