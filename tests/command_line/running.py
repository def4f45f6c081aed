"""Runs a command in a project and holds it to its manners: no traceback, known exit codes."""

from contextlib import chdir
from pathlib import Path

from click.testing import CliRunner, Result
from pytest import MonkeyPatch

from generator.command_line.main import main
from generator.workflows.checking import loading
from tests.real import real_findings


def run(folder: Path, *arguments: str, cache: Path | None = None) -> Result:
    """Run `guidecoat` with some arguments in a folder.

    cache  the user's cache folder; without one there is no place to keep verdicts in
    """
    kept_in = str(cache or Path("/dev/null/none"))
    with chdir(folder):
        result = CliRunner().invoke(main, arguments, env={"XDG_CACHE_HOME": kept_in})
    if not (result.exception is None or isinstance(result.exception, SystemExit)):
        raise result.exception
    assert result.exit_code in (0, 1, 2)
    assert "Traceback" not in result.output
    return result


def misuse(folder: Path, *arguments: str) -> str:
    """Run a command that must be refused as misuse; give the one sentence it says."""
    result = run(folder, *arguments)
    assert result.exit_code == 2, result.output
    assert result.stdout == ""
    head, _, sentence = result.stderr.rpartition("Error: ")
    assert head.startswith("Usage: ")
    assert sentence.count("\n") == 1
    return sentence.rstrip("\n")


def read_the_real_bank_once(monkeypatch: MonkeyPatch) -> None:
    """Let commands that are run in the repository share one reading of its bank."""
    monkeypatch.setattr(loading, "read_and_check", lambda where: real_findings())
