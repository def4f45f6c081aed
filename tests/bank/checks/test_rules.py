"""Rules: every rule has a page, and every message carries a rule that has one."""

import ast
import re
from collections.abc import Iterator
from pathlib import Path

import pytest

from generator.bank.checks import RULES, check_bank
from generator.bank.numbers.numeric_solution import Refusal
from tests.bank.small_bank import REPOSITORY, SMALL_PROJECT, everything_found

KEBAB = re.compile(r"[a-z]+(-[a-z]+)+")
# kebab-case words of the sources that are no rules
NO_RULES = {"not-required", "utf-8"}


def kebab_words(folder: Path) -> Iterator[str]:
    """Return every constant text in kebab-case of the Python files in a folder."""
    for path in folder.rglob("*.py"):
        for node in ast.walk(ast.parse(path.read_text("utf-8"))):
            said = node.value if isinstance(node, ast.Constant) else None
            if isinstance(said, str) and KEBAB.fullmatch(said):
                yield said


def test_every_rule_that_a_message_can_carry_has_a_page() -> None:
    folders = [REPOSITORY / "generator" / name for name in ("bank", "formulas", "assembly")]
    named = {word for folder in folders for word in kebab_words(folder)} - NO_RULES
    assert named == set(RULES)


def test_a_refusal_that_is_no_fault_is_the_only_rule_without_a_page() -> None:
    assert "not-required" in (Refusal.__doc__ or "")
    assert "not-required" not in RULES


@pytest.mark.parametrize("name", RULES)
def test_a_page_names_its_rule_says_why_and_shows_wrong_and_right(name: str) -> None:
    rule = RULES[name]
    page = rule.page()
    assert page.startswith(f"{name} ({rule.severity})\n\n{rule.why}\n\nwrong:\n    ")
    assert "\n\nright:\n    " in page
    assert page.endswith("\n")
    assert rule.why.endswith(".")
    assert KEBAB.fullmatch(name)


@pytest.mark.parametrize("name", [name for name in RULES if name != "file-unreadable"])
def test_the_right_example_differs_from_the_wrong_one(name: str) -> None:
    assert RULES[name].wrong.strip() != RULES[name].right.strip()


def test_a_rule_looks_at_the_bank_without_changing_it() -> None:
    bank, problems = everything_found(SMALL_PROJECT)
    assert bank is not None
    assert problems == ()
    before = repr(bank)
    assert check_bank(bank) == check_bank(bank) == ()
    assert repr(bank) == before
