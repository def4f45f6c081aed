"""The console command `guidecoat`."""

import click

from generator.command_line.build import build
from generator.command_line.calculate import calculate
from generator.command_line.check import check
from generator.command_line.draw import draw
from generator.command_line.explain import explain
from generator.command_line.issue import issue
from generator.command_line.serve import serve


@click.group(context_settings={"help_option_names": ["-h", "--help"]})
@click.version_option(package_name="guidecoat", prog_name="guidecoat")
def main() -> None:
    """Build a refinishing course and its quizzes from one checked question bank.

    Exit codes: 0 clean, 1 problems found, 2 misuse.
    """


for command in (build, check, serve, calculate, draw, issue, explain):
    main.add_command(command)
