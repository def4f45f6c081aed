"""The first word of a command comes before anything heavy is read."""

import subprocess
import sys

import pytest

from generator.command_line.lazy_commands import LazyGroup
from generator.command_line.main import main
from generator.command_line.records.group import records
from tests.bank.small_bank import SMALL_PROJECT
from tests.command_line.running import run

# what takes long to import
HEAVY = ("pydantic", "yaml", "mkdocs", "markdown_it", "typst", "jinja2", "openpyxl", "sqlite3")


@pytest.mark.parametrize(
    ("group", "name"), [(group, name) for group in (main, records) for name in group.commands]
)
def test_the_list_says_the_first_sentence_of_each_command(group: LazyGroup, name: str) -> None:
    assert group.commands[name].name == name
    help_text = group.commands[name].help or ""
    assert group.sentences[name] == " ".join(help_text.split("\n\n")[0].split())


def test_the_list_has_every_command_with_its_whole_sentence() -> None:
    shown = " ".join(run(SMALL_PROJECT, "--help").stdout.split())
    for name, sentence in main.sentences.items():
        assert f"{name} {sentence}" in shown


@pytest.mark.parametrize(
    "arguments",
    [
        ("--help",),
        ("--version",),
        ("drow",),
        ("draw", "--help"),
        ("check", "--help"),
        ("issue", "--help"),
        ("calculate", "--help"),
        ("build", "--help"),
        ("mark", "--help"),
        ("correct", "--help"),
        ("report", "--help"),
        ("analyse", "--help"),
        ("records", "--help"),
        ("records", "sheets"),
        ("check", "--wrong"),
        ("issue", "no_such_plan", "--seed", "1"),
    ],
    ids=" ".join,
)
def test_a_first_word_reads_nothing_heavy(arguments: tuple[str, ...]) -> None:
    program = (
        "import sys\n"
        "from generator.command_line.main import main\n"
        "try:\n"
        f"    main({list(arguments)!r})\n"
        "except SystemExit:\n"
        "    pass\n"
        f"print(sorted({HEAVY!r} & sys.modules.keys()), file=sys.stderr)\n"
    ).replace(f"{HEAVY!r} &", f"{set(HEAVY)!r} &")
    done = subprocess.run(
        [sys.executable, "-c", program], cwd=SMALL_PROJECT, capture_output=True, text=True
    )
    assert done.stderr.splitlines()[-1] == "[]", done.stderr
