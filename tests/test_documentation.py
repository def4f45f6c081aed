"""What README and DEVELOPERS say is true: commands run, names exist, pictures are there."""

import re
import shlex
from pathlib import Path

import pytest
from click.testing import CliRunner

from generator.bank.checks import RULES
from generator.command_line.main import main
from tests.readme_parts import README, part, tables

ROOT = Path(__file__).parents[1]
DEVELOPERS = (ROOT / "DEVELOPERS.md").read_text("utf-8")
# the walk from roster to certificate is followed as a whole by test_walk_through
WALK = part("A class, from roster to certificate")
SHOWN = re.findall(r"^ *(guidecoat [a-z].*)$", README.replace(WALK, ""), re.MULTILINE)


def test_readme_has_exactly_two_set_up_commands() -> None:
    marked = re.findall(r"<!-- command: (\w+) -->\n```sh\n(.+)\n```", README)
    assert [name for name, _ in marked] == ["build", "test"]
    assert all(command.startswith("python3 -m venv .venv && ") for _, command in marked)


def test_ci_runs_the_readme_test_command() -> None:
    assert "readme_command test" in (ROOT / ".ci" / "run").read_text("utf-8")


@pytest.fixture
def beside(tmp_path: Path) -> Path:
    """Return a project that reads the real bank and course but writes nowhere near them."""
    for name in ("question_bank", "course", "site_theme", "mkdocs.yml"):
        (tmp_path / name).symlink_to(ROOT / name)
    for name, text in tables(WALK).items():
        (tmp_path / name).write_text(text, "utf-8")
    return tmp_path


@pytest.mark.parametrize("line", SHOWN)
def test_commands_shown_in_the_readme_run(
    line: str, beside: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    words = shlex.split(line)[1:]
    monkeypatch.chdir(beside)
    outcome = CliRunner().invoke(main, words)
    assert outcome.exit_code == 0, outcome.output


def test_every_command_is_told_in_the_readme() -> None:
    told = set(re.findall(r"`?guidecoat ([a-z]+)", README)) | {"build"}
    assert {name for name in main.commands if name not in told} == set()


def test_pictures_of_the_readme_are_there() -> None:
    for path in re.findall(r"!\[[^\]]+\]\(([^)]+)\)", README):
        assert (ROOT / path).is_file(), path


def test_every_rule_has_a_page_with_a_wrong_and_a_right_example() -> None:
    for rule in RULES.values():
        page = rule.page()
        assert "wrong:" in page and "right:" in page and len(rule.why) > 20, rule.name


def test_packages_of_the_map_exist() -> None:
    named = re.findall(r"^\| `([a-z_]+)`(?:, `([a-z_]+)`)? \|", DEVELOPERS, re.MULTILINE)
    packages = {name for pair in named for name in pair if name}
    found = {p.name for p in (ROOT / "generator").iterdir() if (p / "__init__.py").is_file()}
    assert packages == found
