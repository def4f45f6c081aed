"""The console command `guidecoat`."""

import errno
import io
import sys
from pathlib import Path
from typing import Any

import click
from jinja2 import TemplateError

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


class _FriendlyErrors(click.Group):
    """Says in one sentence what the machine or the bank would not do."""

    def main(self, *args: Any, **kwargs: Any) -> Any:
        for stream in (sys.stdout, sys.stderr):
            # a redirected output may be unable to write a sign such as ≈
            if isinstance(stream, io.TextIOWrapper):
                stream.reconfigure(errors="backslashreplace")
        return super().main(*args, **kwargs)

    def parse_args(self, ctx: click.Context, args: list[str]) -> list[str]:
        for argument in args:
            if not _is_text(argument) and not Path(argument).exists():
                shown = argument.encode("utf-8", "replace").decode("utf-8")
                raise click.UsageError(f"'{shown}' is not UTF-8 text", ctx)
        return super().parse_args(ctx, args)

    def invoke(self, ctx: click.Context) -> Any:
        if sys.flags.optimize > 1:
            raise click.ClickException(
                "Python runs with -OO, which takes away what each relation says of its limits; "
                "run it without"
            )
        try:
            return super().invoke(ctx)
        except (NothingToDraw, PrintingRefused) as error:
            raise click.ClickException(str(error)) from error
        except TemplateError as error:
            raise click.ClickException(f"a template of the theme: {error.message}") from error
        except OSError as error:
            if error.errno == errno.EPIPE:
                raise
            said = error.strerror or str(error)
            raise click.ClickException(
                f"{error.filename}: {said}" if error.filename else said
            ) from error


def _is_text(argument: str) -> bool:
    try:
        argument.encode("utf-8")
    except UnicodeEncodeError:
        return False
    return True


@click.group(cls=_FriendlyErrors, context_settings={"help_option_names": ["-h", "--help"]})
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
