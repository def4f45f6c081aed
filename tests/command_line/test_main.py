"""The command as a whole: help with an example that works, exit codes, folders that do not fit."""

import shlex
import subprocess
import sys
from pathlib import Path

import click
import pytest
from jinja2 import TemplateNotFound, UndefinedError

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
    """Return the words of the example in a command's help."""
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


def finished(folder: Path, *arguments: str | bytes, **settings: str) -> tuple[int, str, str]:
    """Run the program by itself; give exit code, output and errors."""
    done = subprocess.run(
        [sys.executable, "-m", "generator", *arguments],
        cwd=folder,
        capture_output=True,
        timeout=120,
        env={"PYTHONPATH": str(REPOSITORY), "PATH": "/usr/bin:/bin", **settings},
    )
    return done.returncode, done.stdout.decode("utf-8", "replace"), done.stderr.decode("utf-8")


@pytest.mark.parametrize("encoding", ["cp1252", "cp437", "ascii"])
def test_an_output_that_lacks_a_sign_is_written_all_the_same(encoding: str) -> None:
    arguments = ("calculate", "wet_film", "dry_film=60 um", "volume_solids=48 percent")
    code, out, errors = finished(SMALL_PROJECT, *arguments, PYTHONIOENCODING=encoding)
    assert (code, errors) == (0, "")
    assert "125" in out


def test_an_argument_that_is_no_text_is_a_sentence(tmp_path: Path) -> None:
    root = small_project(tmp_path)
    code, out, errors = finished(root, "draw", "filler/mix/streaks", "--seed", b"a\xff")
    assert (code, out) == (2, "")
    assert "is not UTF-8 text" in errors and "Traceback" not in errors


@pytest.mark.parametrize("seed", ["", "  ", "a\nb", "a\u0007"])
def test_a_seed_is_a_word_that_can_be_typed_again(tmp_path: Path, seed: str) -> None:
    root = small_project(tmp_path)
    for command in (("draw", "filler/mix/streaks"), ("issue", "quick_check")):
        assert "such as spring" in misuse(root, *command, "--seed", seed)


def test_python_without_docstrings_is_refused(tmp_path: Path) -> None:
    code, out, errors = finished(small_project(tmp_path), "check", PYTHONOPTIMIZE="2")
    assert (code, out) == (1, "")
    assert errors.startswith("Error: Python runs with -OO")


@pytest.mark.parametrize(
    ("error", "said"),
    [
        (OSError(28, "No space left on device"), "Error: No space left on device\n"),
        (OSError(13, "Permission denied", "a.pdf"), "Error: a.pdf: Permission denied\n"),
        (TemplateNotFound("gone.html"), "Error: a template of the theme: gone.html\n"),
        (UndefinedError("'one' is undefined"), "Error: a template of the theme: 'one' is undef"),
    ],
)
def test_what_the_machine_or_the_theme_refuses_is_one_sentence(
    error: Exception, said: str, monkeypatch: pytest.MonkeyPatch
) -> None:
    def refuse(*_: object, **__: object) -> None:
        raise error

    monkeypatch.setattr(main.commands["check"], "callback", refuse)
    result = run(SMALL_PROJECT, "check")
    assert result.exit_code == 1
    assert result.stderr.startswith(said)


def test_a_number_of_a_certificate_that_is_far_too_large_is_misuse(tmp_path: Path) -> None:
    root = small_project(tmp_path)
    misuse(root, "records", "certificate", "A1", "--again", "999999999999999999999")
