"""The recipes of DEVELOPERS.md, followed to the letter in a copy of the project."""

import os
import re
import shutil
import subprocess
import sys
from pathlib import Path
from textwrap import dedent

import pytest

ROOT = Path(__file__).parents[1]
DEVELOPERS = (ROOT / "DEVELOPERS.md").read_text("utf-8")
PARTS = ("generator", "question_bank", "course", "site_theme", "mkdocs.yml", "pyproject.toml")


def code_of(recipe: str) -> str:
    """Return the first code block of a recipe, without its indent."""
    section = DEVELOPERS.split(f"### {recipe}\n")[1].split("\n### ")[0]
    block = re.search(r"^ *```(?:yaml|python)\n(.*?)^ *```", section, re.MULTILINE | re.DOTALL)
    assert block, recipe
    return dedent(block[1])


@pytest.fixture
def copy(tmp_path: Path) -> Path:
    for part in PARTS:
        source = ROOT / part
        copier = shutil.copytree if source.is_dir() else shutil.copy
        copier(source, tmp_path / part)
    return tmp_path


def run(copy: Path, *words: str) -> subprocess.CompletedProcess[str]:
    return subprocess.run(
        [sys.executable, "-m", "generator", *words],
        cwd=copy,
        capture_output=True,
        text=True,
        check=False,
        env={**os.environ, "PYTHONPATH": str(copy)},
    )


def append(path: Path, text: str) -> None:
    path.write_text(path.read_text("utf-8") + text, "utf-8")


def test_adding_an_item(copy: Path) -> None:
    append(copy / "question_bank/items/primers/spray_surfacer.yml", "\n" + code_of("Add an item"))
    checked = run(copy, "check")
    assert checked.returncode == 0, checked.stdout
    drawn = run(copy, "draw", "primers/spray_surfacer/tack_last")
    assert "As the last touch before spraying" in drawn.stdout


def test_adding_a_made_up_document(copy: Path) -> None:
    path = copy / "question_bank/data_sheets/chip_guard.yml"
    path.write_text(code_of("Add a made-up document"), "utf-8")
    item = code_of("Add an item").replace("kind: choice", "kind: choice\n  sheet: chip_guard")
    append(copy / "question_bank/items/primers/spray_surfacer.yml", "\n" + item)
    checked = run(copy, "check")
    assert checked.returncode == 0, checked.stdout
    drawn = run(copy, "draw", "primers/spray_surfacer/tack_last")
    assert "15 min at 20 °C" in drawn.stdout


def test_adding_a_procedure(copy: Path) -> None:
    path = copy / "question_bank/procedures/hang_up_respirator.yml"
    path.write_text(code_of("Add a procedure"), "utf-8")
    checked = run(copy, "check")
    assert checked.returncode == 0, checked.stdout
    drawn = run(copy, "draw", "procedures/hang_up_respirator/order")
    assert "1 orders are right" in drawn.stdout or "order is right" in drawn.stdout


def test_adding_a_relation(copy: Path) -> None:
    module = copy / "generator/refinishing/film_material.py"
    text = module.read_text("utf-8")
    for name, home in (("Millilitre", "annotations"), ("Bare", "annotations")):
        if not re.search(rf"\b{name}\b", text):
            text = text.replace(
                "from generator.refinishing.relation import relation",
                f"from generator.refinishing.{home} import {name}\n"
                "from generator.refinishing.relation import relation",
            )
    if "require_whole_count" not in text:
        text = text.replace(
            "from generator.refinishing.relation import relation",
            "from generator.refinishing.bounds import require_whole_count\n"
            "from generator.refinishing.relation import relation",
        )
    module.write_text(text + "\n\n" + code_of("Add a relation"), "utf-8")
    worked = run(copy, "calculate", "paint_per_panel", "paint=600 mL", "panels=4")
    assert "150" in worked.stdout, worked.stderr


def test_adding_a_check(copy: Path) -> None:
    path = copy / "generator/bank/checks/one_record/options.py"
    rule = (
        '    Rule("shouting-stem", "warning", "Capitals are hard to read.", "stem: WHY?",\n'
        '         "stem: Why?", shouting_stem),\n'
    )
    text = path.read_text("utf-8")
    text = text.replace("RULES = (\n", code_of("Add a check") + "\n\nRULES = (\n" + rule)
    path.write_text(text, "utf-8")
    assert "Capitals are hard to read." in run(copy, "explain", "shouting-stem").stdout
    item = code_of("Add an item").replace(
        "When is the tack cloth used on a panel that is ready for surfacer?", "WHEN IS IT USED?"
    )
    append(copy / "question_bank/items/primers/spray_surfacer.yml", "\n" + item)
    assert "[shouting-stem]" in run(copy, "check").stdout
