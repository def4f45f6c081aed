"""The folder that a command works in, and loading its bank or stopping with every problem shown."""

import sys
from collections.abc import Sequence
from dataclasses import dataclass
from hashlib import sha256
from pathlib import Path

import click

from generator.bank import Bank, load_bank
from generator.bank.checks import check_bank
from generator.diagnostics import Problem, as_text, has_errors, sorted_problems


@dataclass(frozen=True, slots=True)
class Project:
    """Paths of one course project."""

    root: Path

    @property
    def bank(self) -> Path:
        """Return the question bank's folder."""
        return self.root / "question_bank"

    @property
    def course(self) -> Path:
        """Return the lessons' folder."""
        return self.root / "course"

    @property
    def site(self) -> Path:
        """Return the built course's folder."""
        return self.root / "site"

    @property
    def printed(self) -> Path:
        """Return the folder for papers and keys."""
        return self.root / "printed"

    def issue_folder(self, number: int) -> Path:
        """Return the folder for the papers of an issue."""
        return self.printed / f"issue-{number}"

    @property
    def theme(self) -> Path:
        """Return the folder of the site's theme."""
        return self.root / "site_theme"

    @property
    def fonts(self) -> Path:
        """Return the folder of the print fonts."""
        return self.theme / "fonts_print"

    def read_line(self, path: str, line: int) -> str:
        """Return a line of a file as problems name it, or nothing."""
        try:
            lines = (self.root / path).read_text("utf-8-sig", errors="replace").splitlines()
        except OSError:
            return ""
        return lines[line - 1] if 0 < line <= len(lines) else ""


def bank_hash(project: Project) -> str:
    """Return the SHA-256 of every file of the question bank with its name."""
    total = sha256()
    for path in sorted(project.bank.rglob("*.yml")):
        total.update(f"{path.relative_to(project.bank).as_posix()}\n".encode())
        total.update(sha256(path.read_bytes()).digest())
    return total.hexdigest()


def find_project() -> Project:
    """Return the project at or above the working folder; stop with exit 2 where there is none."""
    here = Path.cwd()
    for folder in (here, *here.parents):
        if (folder / "question_bank").is_dir() and (folder / "mkdocs.yml").is_file():
            return Project(folder)
    raise click.UsageError(
        "no course project here: go to the folder that holds question_bank/ and mkdocs.yml"
    )


def read_and_check(project: Project) -> tuple[Bank | None, tuple[Problem, ...]]:
    """Return the bank with every problem of reading and of the rules.

    Rules look only at what could be read, so a broken record is reported once.
    """
    bank, problems = load_bank(project.bank, project.course)
    found = check_bank(bank) if bank else ()
    return bank, sorted_problems((*problems, *found))


def sound_bank(project: Project) -> Bank:
    """Return the bank, or show every error and stop with exit 1."""
    return sound(project, *read_and_check(project))


def sound(project: Project, bank: Bank | None, problems: Sequence[Problem]) -> Bank:
    """Return the bank where no problem is an error, or show every error and stop with exit 1."""
    errors = [problem for problem in problems if problem.severity == "error"]
    if bank is None or has_errors(problems):
        stop_with(project, errors)
    assert bank is not None
    return bank


def stop_with(project: Project, problems: Sequence[Problem]) -> None:
    """Show problems on the error stream and stop with exit 1."""
    click.echo(as_text(problems, project.read_line), err=True)
    click.echo(f"{counted(len(problems), 'error')}; nothing was written", err=True)
    sys.exit(1)


def counted(number: object, word: str) -> str:
    """Return a number with its word, such as '1 error' or '2 errors'."""
    return f"{number} {word}" if number == 1 else f"{number} {word}s"
