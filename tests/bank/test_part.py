"""A part of a bank asks the same questions as the whole one."""

from collections.abc import Iterator
from functools import cache
from pathlib import Path

import pytest

from generator.bank import Bank, load_bank
from generator.bank.part import part_for_plan, part_for_question
from generator.issued import issued_question
from generator.questions import Askable, askable_named, askables
from tests.bank.small_bank import REPOSITORY, SMALL_PROJECT

BANK = SMALL_PROJECT / "question_bank"
REAL = REPOSITORY / "question_bank"


@cache
def whole(folder: Path) -> tuple[Bank, tuple[Askable, ...]]:
    bank, _ = load_bank(folder)
    assert bank is not None
    return bank, askables(bank)


def alike(folder: Path, asked: Askable) -> bool:
    """Say whether a question is the same from its own part of the bank."""
    part = part_for_question(folder, asked.name)
    assert part.bank is not None and part.errors == () and part.elsewhere == 0
    alone = askable_named(part.bank, asked.name)
    assert alone is not None
    ours, theirs = alone.make("7", ()), asked.make("7", ())
    return (
        ours is not None and theirs is not None and issued_question(ours) == issued_question(theirs)
    )


@pytest.mark.parametrize("asked", whole(BANK)[1], ids=lambda asked: asked.name)
def test_a_question_of_the_small_bank_is_the_same_from_its_own_part(asked: Askable) -> None:
    assert alike(BANK, asked)


def one_of_each() -> Iterator[Askable]:
    """Return a question of each kind of record and of each kind of item of the real bank."""
    seen = set()
    for asked in whole(REAL)[1]:
        sort = (asked.kind, asked.is_derived and asked.record.partition("/")[0], asked.name[-4:])
        if asked.is_derived and sort not in seen:
            seen.add(sort)
            yield asked


@pytest.mark.parametrize("asked", [*one_of_each()], ids=lambda asked: asked.name)
def test_what_a_record_of_the_real_bank_asks_is_the_same_from_its_own_part(asked: Askable) -> None:
    assert alike(REAL, asked)


def test_other_files_of_items_are_not_read() -> None:
    part = part_for_question(BANK, "filler/mix/streaks")
    assert part.bank is not None
    assert {name.rpartition("/")[0] for name in part.bank.items} == {"filler/mix"}
    assert not part.bank.procedures and not part.bank.faults
    assert part.bank.is_partly_read


def test_every_plan_of_the_real_bank_stands_on_a_sound_part() -> None:
    bank, _ = whole(REAL)
    for plan in bank.blueprints:
        part = part_for_plan(REAL, plan)
        assert part.bank is not None and part.errors == () and part.elsewhere == 0, plan
