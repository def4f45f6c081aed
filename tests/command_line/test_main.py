"""The command as a whole: help with an example that works, exit codes, folders that do not fit."""

import shlex
import subprocess
import sys
from pathlib import Path

import click
import pytest

from generator.bank.checks import RULES
from generator.command_line import main as module
from generator.command_line.main import main
from generator.questions import NothingToDraw
from generator.refinishing.catalogue import CATALOGUE
from tests.bank.small_bank import REPOSITORY, SMALL_PROJECT, small_project
from tests.command_line.running import misuse, run

COMMANDS = tuple(main.commands)
IN_A_PROJECT = {
    "build": (),
    "check": (),
    "serve": (),
    "draw": ("filler/mix/streaks",),
    "issue": ("quick_check", "--seed", "1"),
}


def example(name: str) -> list[str]:
    """Give the words of the example in a command's help."""
    text = main.commands[name].help or ""
    (line,) = (line for line in text.splitlines() if line.strip().startswith("Example: "))
    return shlex.split(line.strip().removeprefix("Example: "))


def test_the_commands_of_an_author_and_an_instructor_are_there() -> None:
    wanted = {"build", "check", "serve", "calculate", "draw", "issue", "explain"}
    assert wanted <= set(COMMANDS)


@pytest.mark.parametrize("name", COMMANDS)
@pytest.mark.parametrize("option", ["--help", "-h"])
def test_every_command_has_help_with_an_example_of_itself(
    name: str, option: str, tmp_path: Path
) -> None:
    result = run(tmp_path, name, option)
    assert result.exit_code == 0
    assert f"Example: guidecoat {name}" in " ".join(result.stdout.split())
    assert example(name)[:2] == ["guidecoat", name]


def test_the_examples_name_what_the_real_project_has() -> None:
    blueprint = example("issue")[2]
    assert (REPOSITORY / "question_bank" / "blueprints" / f"{blueprint}.yml").is_file()
    module_name, objective, item = example("draw")[2].split("/")
    file = REPOSITORY / "question_bank" / "items" / module_name / f"{objective}.yml"
    assert f"\n{item}:\n" in "\n" + file.read_text("utf-8")
    assert example("explain")[2] in RULES
    assert example("calculate")[2] in CATALOGUE


@pytest.mark.parametrize("name", ["calculate", "explain"])
def test_an_example_that_needs_no_project_works(name: str, tmp_path: Path) -> None:
    assert run(tmp_path, *example(name)[1:]).exit_code == 0


def test_the_help_says_what_exit_codes_mean(tmp_path: Path) -> None:
    result = run(tmp_path, "--help")
    assert "0 clean, 1 problems found, 2 misuse" in result.stdout
    for name in COMMANDS:
        assert f"\n  {name} " in result.stdout


def test_the_version_is_that_of_the_project(tmp_path: Path) -> None:
    declared = (REPOSITORY / "pyproject.toml").read_text("utf-8")
    version = run(tmp_path, "--version").stdout.split()[-1]
    assert f'version = "{version}"' in declared


@pytest.mark.parametrize("name", IN_A_PROJECT)
def test_outside_a_project_a_command_says_where_to_go(name: str, tmp_path: Path) -> None:
    assert misuse(tmp_path, name, *IN_A_PROJECT[name]) == (
        "no course project here: go to the folder that holds question_bank/ and mkdocs.yml"
    )


def test_a_command_works_from_a_folder_inside_the_project() -> None:
    assert run(SMALL_PROJECT / "question_bank" / "items", "check").exit_code == 0


@pytest.mark.parametrize("name", COMMANDS)
def test_an_unknown_option_is_misuse(name: str, tmp_path: Path) -> None:
    assert "--colour" in misuse(tmp_path, name, "--colour")


def test_an_unknown_command_is_misuse(tmp_path: Path) -> None:
    assert misuse(tmp_path, "publish") == "No such command 'publish'."


@pytest.mark.parametrize("address", ["8000", "somewhere", ":8000", "host:port"])
def test_an_address_that_is_none_is_misuse(address: str) -> None:
    sentence = misuse(SMALL_PROJECT, "serve", "--address", address)
    assert sentence == f"'{address}' is not host:port, such as 127.0.0.1:8000"


@pytest.mark.parametrize(
    ("error", "said"),
    [
        (PermissionError(13, "Permission denied", "printed"), "printed: Permission denied"),
        (OSError(28, "No space left on device", "site"), "site: No space left on device"),
        (NothingToDraw("film_build/a: no accepted values"), "film_build/a: no accepted values"),
    ],
)
def test_what_the_machine_or_a_draw_refuses_is_one_sentence(
    error: Exception, said: str, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    @click.command()
    def failing() -> None:
        raise error

    monkeypatch.setitem(module.main.commands, "failing", failing)
    result = run(tmp_path, "failing")
    assert result.exit_code == 1
    assert result.output == f"Error: {said}\n"


def test_the_module_runs_as_a_program_of_its_own(tmp_path: Path) -> None:
    root = small_project(tmp_path)
    done = subprocess.run(
        [sys.executable, "-m", "generator", "check"],
        cwd=root,
        env={"PYTHONPATH": str(REPOSITORY), "PATH": ""},
        capture_output=True,
        text=True,
        check=False,
        timeout=60,
    )
    assert (done.returncode, done.stderr) == (0, "")
    assert done.stdout == (
        "7 items, 1 procedure, 3 faults, 1 table: 0 errors, 0 warnings, 0 notes\n"
    )
