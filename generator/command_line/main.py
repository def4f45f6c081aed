"""The console command `guidecoat`."""

import errno
import gc
import io
import sys
from pathlib import Path
from typing import Any

import click

from generator.command_line.lazy_commands import LazyGroup


class _FriendlyErrors(LazyGroup):
    """Says in one sentence what the machine or the bank would not do."""

    def main(self, *args: Any, **kwargs: Any) -> Any:
        # a command makes a few million records and ends; to look for rings among them so often
        # would take as long as reading the bank
        gc.set_threshold(200_000, 10, 10)
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
        except (click.ClickException, click.Abort, click.exceptions.Exit):
            raise
        except Exception as error:
            said = _in_one_sentence(error)
            if said is None:
                raise
            raise click.ClickException(said) from error


def _in_one_sentence(error: Exception) -> str | None:
    """Return what the machine or the bank would not do; None where nobody expected the error."""
    if "jinja2" in sys.modules:
        from jinja2 import TemplateError

        if isinstance(error, TemplateError):
            return f"a template of the theme: {error.message}"
    if isinstance(error, OSError):
        if error.errno == errno.EPIPE:
            return None
        said = error.strerror or str(error)
        return f"{error.filename}: {said}" if error.filename else said
    from generator.printing import PrintingRefused
    from generator.questions import NothingToDraw

    return str(error) if isinstance(error, NothingToDraw | PrintingRefused) else None


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


_HERE = "generator.command_line"
main.offer(
    {
        "build": (
            f"{_HERE}.build",
            "Check the bank, build the course into site/ and a specimen quiz with key into "
            "printed/.",
        ),
        "check": (
            f"{_HERE}.check",
            "Find every problem of bank and course, and count what they hold.",
        ),
        "serve": (
            f"{_HERE}.serve",
            "Show the course live; edits to lessons, bank and theme reload the page.",
        ),
        "calculate": (
            f"{_HERE}.calculate",
            "Work one relation of the trade out, with its working and source.",
        ),
        "draw": (f"{_HERE}.draw", "Draw one question and show it with its key and working."),
        "issue": (
            f"{_HERE}.issue",
            "Keep new papers in the records and write them with their keys into printed/.",
        ),
        "mark": (f"{_HERE}.mark", "Mark answers and keep them with their marks."),
        "correct": (
            f"{_HERE}.correct",
            "Correct the key of one question of an issue after an appeal, and mark everybody "
            "again.",
        ),
        "explain": (
            f"{_HERE}.explain",
            "Say what a check means, with a wrong and a right example.",
        ),
        "report": (
            f"{_HERE}.report",
            "Write reports on an issue that was marked, each as PDF and as a page.",
        ),
        "analyse": (
            f"{_HERE}.analyse",
            "Analyse a class's answers: how hard, how sharp and how consistent a paper was.",
        ),
        "records": (
            f"{_HERE}.records",
            "Keep the training records: people, practice, dates, certificates.",
        ),
    }
)
