"""A workflow never shows, asks, ends or looks at the clock: a page could run it as well."""

import ast
from collections.abc import Iterator
from pathlib import Path

import pytest

WORKFLOWS = Path(__file__).parents[2] / "generator" / "workflows"
MODULES = sorted(WORKFLOWS.rglob("*.py"))
TERMINAL = {"click", "sys", "getpass", "argparse", "logging"}
CLOCK = {"time", "random", "secrets", "uuid", "locale", "platform", "socket"}
CALLS = {"echo", "print", "input", "exit", "_exit", "abort", "confirm", "prompt"}
SURROUNDINGS = {"now", "today", "utcnow", "environ", "getenv", "cwd", "getcwd", "home"}
STOPS = {"SystemExit", "KeyboardInterrupt", "ClickException", "UsageError", "Abort"}


def imported(node: ast.AST) -> Iterator[str]:
    if isinstance(node, ast.Import):
        yield from (alias.name.split(".")[0] for alias in node.names)
    elif isinstance(node, ast.ImportFrom) and node.module:
        yield node.module.split(".")[0]
        yield from (alias.name for alias in node.names)


def named(node: ast.AST) -> str:
    if isinstance(node, ast.Attribute):
        return node.attr
    return node.id if isinstance(node, ast.Name) else ""


def of_a_terminal(tree: ast.AST) -> Iterator[str]:
    """Return what a file takes from a terminal, from the clock or from where it was started."""
    for node in ast.walk(tree):
        yield from (TERMINAL | CLOCK).intersection(imported(node))
        if isinstance(node, ast.Attribute) and node.attr in SURROUNDINGS:
            yield node.attr
        if isinstance(node, ast.Call) and named(node.func) in CALLS:
            yield named(node.func)
        if named(node) in STOPS:
            yield named(node)


def test_there_are_workflows_to_look_at() -> None:
    assert len(MODULES) > 30


@pytest.mark.parametrize(
    "path", MODULES, ids=lambda path: path.relative_to(WORKFLOWS).with_suffix("").as_posix()
)
def test_a_workflow_takes_nothing_from_terminal_or_clock(path: Path) -> None:
    assert list(of_a_terminal(ast.parse(path.read_text("utf-8")))) == []


@pytest.mark.parametrize(
    "line",
    [
        "import click",
        "from click import echo",
        "import sys; sys.exit(1)",
        "raise SystemExit(2)",
        "print('done')",
        "answer = input()",
        "from time import time",
        "from datetime import date; day = date.today()",
        "from datetime import datetime as moment; at = moment.now()",
        "import os; home = os.environ['HOME']",
        "from pathlib import Path; here = Path.cwd()",
    ],
)
def test_what_a_workflow_must_not_do_would_be_found(line: str) -> None:
    assert list(of_a_terminal(ast.parse(line)))
