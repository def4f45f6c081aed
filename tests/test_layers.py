"""The house is built in layers: who may import whom, and what no module may hold."""

import ast
import shutil
import subprocess
import sys
from importlib.util import find_spec
from pathlib import Path

import pytest

ROOT = Path(__file__).parents[1]
GENERATOR = ROOT / "generator"
MODULES = sorted(GENERATOR.rglob("*.py"))
MOST_LINES = 300
VAGUE = ("util", "helper", "manager", "misc", "common", "stuff", "tools")
OWNERS = {
    "yaml": ("bank/reading/yaml_source.py",),
    "pydantic": ("bank/",),
    "mkdocs": ("website/plugin.py", "website/engine.py"),
    "typst": ("printing/",),
    "segno": ("printing/",),
    "click": ("command_line/",),
    "sqlite3": ("records/",),
    "markdown_it": (
        "wording/markup.py",
        "website/context/prose.py",
        "website/context/page_parts.py",
    ),
    "openpyxl": ("marking/tables/spreadsheet.py",),
}
CHANCE_AND_CLOCK = {"random", "secrets", "uuid", "time", "socket", "platform", "locale"}
SURROUNDINGS = {"environ", "getenv", "urandom", "now", "utcnow", "today", "getpid"}

needs_linter = pytest.mark.skipif(
    find_spec("importlinter") is None, reason="import-linter is not installed (extra 'develop')"
)


def named(path):
    return path.relative_to(GENERATOR).as_posix()


def trees():
    for path in MODULES:
        yield named(path), ast.parse(path.read_text("utf-8"))


def imported(tree):
    """Return the first part of every module that a file imports, wherever in it."""
    for node in ast.walk(tree):
        if isinstance(node, ast.Import):
            yield from (alias.name.split(".")[0] for alias in node.names)
        elif isinstance(node, ast.ImportFrom) and node.level == 0 and node.module:
            yield node.module.split(".")[0]


def lint_imports(folder):
    """Run the import contracts of pyproject.toml over the package in a folder."""
    run = "from importlinter.cli import lint_imports; exit(lint_imports(no_cache=True))"
    return subprocess.run(
        [sys.executable, "-c", run], cwd=folder, capture_output=True, text=True, timeout=120
    )


@needs_linter
def test_packages_import_downward_only():
    done = lint_imports(ROOT)
    assert done.returncode == 0, done.stdout
    assert ", 0 broken" in done.stdout


@needs_linter
@pytest.mark.parametrize(
    ("module", "line"),
    [
        ("bank/bank.py", "import generator.questions"),
        ("quantities/units.py", "import generator.refinishing"),
        ("workflows/refusals.py", "import generator.command_line.main"),
        ("reports/course_names.py", "import generator.workflows.project"),
        ("formulas/parse.py", "import generator.refinishing.catalogue"),
    ],
)
def test_an_import_upward_is_caught(tmp_path, module, line):
    shutil.copytree(GENERATOR, tmp_path / "generator", ignore=shutil.ignore_patterns("*.pyc"))
    shutil.copy(ROOT / "pyproject.toml", tmp_path)
    with (tmp_path / "generator" / module).open("a", encoding="utf-8") as file:
        file.write(f"\n{line}\n")
    done = lint_imports(tmp_path)
    assert done.returncode == 1, done.stdout
    assert "broken" in done.stdout


def test_each_outside_library_stays_in_its_own_corner():
    strangers = [
        (module, name)
        for module, tree in trees()
        for name in imported(tree)
        if name in OWNERS and not module.startswith(OWNERS[name])
    ]
    assert strangers == []


def test_every_outside_library_is_used_where_it_belongs():
    used = {name for _, tree in trees() for name in imported(tree)}
    assert set(OWNERS) <= used


def asked_of_the_machine(tree):
    """Return what a file takes from clock, dice or surroundings."""
    yield from CHANCE_AND_CLOCK.intersection(imported(tree))
    for node in ast.walk(tree):
        if isinstance(node, ast.Attribute) and node.attr in SURROUNDINGS:
            yield node.attr


def test_nothing_below_the_command_line_asks_a_clock_or_throws_dice():
    askers = [
        (module, name)
        for module, tree in trees()
        if not module.startswith("command_line/")
        for name in asked_of_the_machine(tree)
    ]
    assert askers == []


@pytest.mark.parametrize(
    "line",
    ["import random", "from time import time", "x = os.environ['A']", "x = datetime.now()"],
)
def test_asking_the_machine_is_noticed(line):
    assert list(asked_of_the_machine(ast.parse(line)))


@pytest.mark.parametrize("path", MODULES, ids=named)
def test_a_module_says_what_it_is_for_and_stays_short(path):
    text = path.read_text("utf-8")
    docstring = ast.get_docstring(ast.parse(text))
    assert docstring
    assert len(text.splitlines()) <= MOST_LINES


def public(tree):
    """Return the public classes and functions of a module, with the methods of its classes."""
    for node in tree.body:
        if isinstance(node, ast.ClassDef | ast.FunctionDef) and not node.name.startswith("_"):
            yield node
            if isinstance(node, ast.ClassDef):
                yield from (
                    inner
                    for inner in node.body
                    if isinstance(inner, ast.FunctionDef) and not inner.name.startswith("_")
                )


def test_everything_public_says_what_it_does():
    silent = [
        f"{module}: {node.name}"
        for module, tree in trees()
        for node in public(tree)
        if not ast.get_docstring(node)
    ]
    assert silent == []


def test_no_module_has_a_vague_name():
    vague = [
        named(path)
        for path in (*MODULES, *(p for p in GENERATOR.rglob("*") if p.is_dir()))
        if any(word in path.stem.split("_") or word + "s" in path.stem.split("_") for word in VAGUE)
    ]
    assert vague == []
