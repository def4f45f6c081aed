"""No test passes on nothing: each claims something however few things it finds."""

import ast
from pathlib import Path

import pytest

from tests.claims import HERE, silent_tests


def test_every_test_claims_something_however_few_things_it_finds() -> None:
    trees = {
        path: ast.parse(path.read_text("utf-8"))
        for path in sorted(HERE.rglob("*.py"))
        if "benchmarks" not in path.parts and "node_modules" not in path.parts
    }
    assert len(trees) > 300
    # go over some(...) in the loop, or assert beside it how many there were
    assert sorted(silent_tests(trees)) == []


def silent(body: str, more: str = "") -> list[str]:
    tree = ast.parse(f"{more}\ndef test_it(found):\n    {body}\n")
    return list(silent_tests({Path("test_one.py"): tree}))


@pytest.mark.parametrize(
    "body",
    [
        "for one in found: assert one",
        "for one in found.items():\n        with opened(one): assert one",
        "if found: assert found",
        "while found: assert found.pop()",
        "claim(found)",
        "for one in [two for two in (1, 2) if two > 3]: assert one",
    ],
)
def test_a_test_that_may_pass_on_nothing_is_named(body: str) -> None:
    assert silent(body) == ["test_one.py: test_it"]


@pytest.mark.parametrize(
    "body",
    [
        "assert found",
        "for one in some(found): assert one",
        "for one in WRITTEN.items(): assert one",
        "for one in (1, 2): assert one",
        "if found: assert found\n    else: assert not found",
        "with pytest.raises(ValueError): found()",
        "claims(found)",
        "for one in found: assert one\n    assert found",
    ],
)
def test_a_test_that_is_sure_to_claim_something_is_not(body: str) -> None:
    more = "WRITTEN = {1: 2}\ndef claims(it):\n    assert it\n"
    assert silent(body, more) == []
