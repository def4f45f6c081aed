"""README's two commands bring all that is imported, and mend an environment that was moved."""

import ast
import re
import subprocess
import sys
import tomllib
from collections.abc import Iterator
from importlib.metadata import packages_distributions
from pathlib import Path

import pytest

from tests.readme_parts import README

ROOT = Path(__file__).parents[1]
COMMANDS = dict(re.findall(r"<!-- command: (\w+) -->\n```sh\n(.+)\n```", README))
PROJECT = tomllib.loads((ROOT / "pyproject.toml").read_text("utf-8"))["project"]
OWN = {"generator", "tests"}
# skipped where it is missing: the contract of the layers is held in the developers' environment
FOR_DEVELOPERS = {"importlinter"}


def names(requirements: list[str]) -> list[str]:
    """Return the names of distributions, as they are compared."""
    found = (re.match(r"[A-Za-z0-9._-]+", text) for text in requirements)
    return [re.sub(r"[-_.]+", "-", match[0]).lower() for match in found if match]


NEEDED = names(PROJECT["dependencies"])
FOR_TESTS = names(PROJECT["optional-dependencies"]["test"])


def imported(folder: Path) -> dict[str, Path]:
    """Return the outside packages that a folder's modules import or look for, each with one."""
    found: dict[str, Path] = {}
    for path in sorted(folder.rglob("*.py")):
        for name in _named(ast.parse(path.read_text("utf-8"))):
            found.setdefault(name.partition(".")[0], path)
    outside = set(found) - set(sys.stdlib_module_names) - OWN - FOR_DEVELOPERS
    return {name: found[name] for name in outside}


def _named(tree: ast.AST) -> Iterator[str]:
    for node in ast.walk(tree):
        if isinstance(node, ast.Import):
            yield from (alias.name for alias in node.names)
        elif isinstance(node, ast.ImportFrom) and node.level == 0 and node.module:
            yield node.module
        elif isinstance(node, ast.Call) and node.args:
            called = node.func.attr if isinstance(node.func, ast.Attribute) else ""
            called = node.func.id if isinstance(node.func, ast.Name) else called
            first = node.args[0]
            if called in ("importorskip", "find_spec") and isinstance(first, ast.Constant):
                yield str(first.value)


def not_listed(folder: Path, listed: list[str]) -> list[str]:
    """Return packages that a folder imports and no requirement brings."""
    brought = packages_distributions()
    return [
        f"{name}, imported in {path.relative_to(ROOT)}"
        for name, path in sorted(imported(folder).items())
        if not set(names(list(brought.get(name, [])))) & set(listed)
    ]


def test_all_that_the_program_imports_is_among_its_requirements() -> None:
    assert not_listed(ROOT / "generator", NEEDED) == []


def test_all_that_the_tests_import_is_in_the_test_extra() -> None:
    assert not_listed(ROOT / "tests", NEEDED + FOR_TESTS) == []


@pytest.mark.parametrize("listed", [NEEDED, FOR_TESTS])
def test_nothing_is_required_twice(listed: list[str]) -> None:
    assert sorted(set(listed)) == sorted(listed)


def test_a_package_that_no_requirement_brings_is_named() -> None:
    assert any(line.startswith("pytest, ") for line in not_listed(ROOT / "tests", NEEDED))


@pytest.mark.parametrize("name", ["build", "test"])
def test_readme_commands_mend_an_environment_that_was_moved(name: str, tmp_path: Path) -> None:
    make, install, _ = COMMANDS[name].split(" && ")
    # asked for its version instead of installing anything, so that no network is needed
    asked = f"{make} && {install.partition(' install ')[0]} --version"
    old, new = tmp_path / "old", tmp_path / "new"
    old.mkdir()
    subprocess.run(["bash", "-c", asked], cwd=old, check=True, capture_output=True, timeout=120)
    old.rename(new)
    done = subprocess.run(
        ["bash", "-c", asked], cwd=new, capture_output=True, text=True, timeout=120
    )
    assert done.returncode == 0, done.stderr
    assert done.stdout.startswith("pip ")


def test_ci_runs_both_readme_commands_in_an_environment_of_their_own() -> None:
    script = (ROOT / ".ci" / "run").read_text("utf-8")
    for name in COMMANDS:
        assert f"readme_command {name}" in script
    assert "rm -rf .venv\n" in script
    assert set(re.findall(r"\.venv/bin/(\w[\w-]*)", script)) == {"guidecoat"}
    assert "'.[develop]'" in script and "test,develop" not in script
