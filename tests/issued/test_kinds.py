"""Six kinds of question, and every table of kinds has all of them."""

import ast
from dataclasses import fields
from typing import get_args, get_type_hints

import pytest

from generator.bank.models import ITEM_KINDS
from generator.issued import FACTS, KINDS, ByKind, ForKey, IssuedQuestion
from tests.bank.small_bank import REPOSITORY

# what an author may write is listed where it is read
LISTED_BELOW = {"generator/bank/models/items.py"}
MOST_NAMED = 3


def test_the_kinds_are_those_that_an_author_may_write():
    assert set(KINDS) == set(ITEM_KINDS)
    assert len(set(KINDS)) == len(KINDS) == 6


def test_each_kind_has_its_own_issued_question():
    told = [get_args(get_type_hints(kind)["kind"]) for kind in get_args(IssuedQuestion)]
    assert [kind for kinds in told for kind in kinds] == list(KINDS)


@pytest.mark.parametrize("table", [ByKind, ForKey])
def test_a_table_of_kinds_has_a_place_for_each(table):
    assert [field.name for field in fields(table)] == list(KINDS)
    for left_out in KINDS:
        with pytest.raises(TypeError):
            table(**{kind: None for kind in KINDS if kind != left_out})


@pytest.mark.parametrize("kind", KINDS)
def test_each_kind_finds_what_is_its_own(kind):
    assert ByKind(**{name: name for name in KINDS}).of(kind) == kind
    tables = {name: lambda key, name=name: (name, key) for name in KINDS}
    assert ForKey(**tables).of({"kind": kind, "key": 7}) == (kind, 7)


def test_a_kind_that_nobody_knows_is_never_passed_over():
    with pytest.raises(AssertionError):
        ByKind(**dict.fromkeys(KINDS, 1)).of("riddle")
    with pytest.raises(AssertionError):
        ForKey(**dict.fromkeys(KINDS, print)).of({"kind": "riddle", "key": {}})


def test_each_kind_says_what_it_asks_and_how_long_it_takes():
    facts = [FACTS.of(kind) for kind in KINDS]
    assert all(fact.minutes > 0 for fact in facts)
    for words in ("on_paper", "on_screen", "at_terminal"):
        assert len({getattr(fact, words) for fact in facts}) == len(KINDS)
        assert all(getattr(fact, words) for fact in facts)


def named(node: ast.Dict) -> set[str]:
    return {key.value for key in node.keys if isinstance(key, ast.Constant)} & set(KINDS)


def dictionaries() -> dict[str, list[ast.Dict]]:
    found = {}
    for path in sorted((REPOSITORY / "generator").rglob("*.py")):
        tree = ast.parse(path.read_text("utf-8"))
        nodes = [node for node in ast.walk(tree) if isinstance(node, ast.Dict)]
        found[path.relative_to(REPOSITORY).as_posix()] = nodes
    return found


def test_no_other_table_of_kinds_could_leave_one_out_unseen():
    found = dictionaries()
    assert len(found) > 300
    loose = {path for path, nodes in found.items() for n in nodes if len(named(n)) > MOST_NAMED}
    assert loose == LISTED_BELOW


@pytest.mark.parametrize(
    "file",
    ["generator/printing/templates/answer_key.typ", "site_theme/assets/js/marking.js"],
)
def test_the_key_on_paper_and_the_marking_on_a_page_know_every_kind(file):
    text = (REPOSITORY / file).read_text("utf-8")
    assert [kind for kind in KINDS if f'"{kind}"' not in text and f"{kind}:" not in text] == []
