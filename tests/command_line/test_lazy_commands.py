"""Commands are listed without being read, and listed with the words of their own help."""

import subprocess
import sys
from collections.abc import Iterator

import click
import pytest

from generator.command_line.lazy_commands import LazyGroup
from generator.command_line.main import main

# the first word of a command comes before any of these is read
HEAVY = ("generator.bank", "generator.records", "generator.marking", "typst", "pydantic", "mkdocs")


def groups() -> Iterator[tuple[str, LazyGroup]]:
    assert isinstance(main, LazyGroup)
    yield "guidecoat", main
    records = main.commands["records"]
    assert isinstance(records, LazyGroup)
    yield "records", records


@pytest.mark.parametrize(
    ("group", "name"), [(group, name) for _, group in groups() for name in group.commands]
)
def test_the_list_says_of_a_command_what_its_help_says_first(group: LazyGroup, name: str) -> None:
    command = group.commands[name]
    assert isinstance(command, click.Command) and command.name == name
    assert command.help is not None
    assert group.sentences[name] == " ".join(command.help.split("\n\n")[0].split())


@pytest.mark.parametrize("words", [(), ("records",), ("mark",), ("issue",), ("report",)])
def test_help_comes_without_reading_what_the_command_works_with(words: tuple[str, ...]) -> None:
    asks = (
        "import sys\nfrom generator.command_line.main import main\n"
        f"main([*{words!r}, '--help'], standalone_mode=False)\n"
        f"print('READ', [name for name in {HEAVY!r} if name in sys.modules])"
    )
    done = subprocess.run(
        [sys.executable, "-c", asks], capture_output=True, text=True, check=True, timeout=60
    )
    assert done.stdout.splitlines()[-1] == "READ []"
