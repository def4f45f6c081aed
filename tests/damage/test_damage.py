"""Of what can be seen without knowing the trade, `check` catches nearly all, and in its place.

A few damages of each kind are done here; `python -m tests.damage` does all of them and lists what
was missed.
"""

from collections import Counter
from collections.abc import Iterator
from fractions import Fraction
from pathlib import Path

import pytest

from tests.bank.small_bank import REPOSITORY
from tests.damage.damage import draw
from tests.damage.judging import Judged, checked_plainly, judge
from tests.damage.kinds import KINDS
from tests.damage.papers import copied_project, real_files
from tests.damage.reuse import Reused
from tests.damage.table import shares, table_text
from tests.some import some

FEW = 3


@pytest.fixture(scope="module")
def reused(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Reused]:
    with pytest.MonkeyPatch.context() as patch:
        yield Reused(copied_project(tmp_path_factory.mktemp("damage")), patch)


@pytest.fixture(scope="module")
def judged(reused: Reused) -> list[Judged]:
    return [judge(damage, reused) for damage in draw(KINDS, real_files(), FEW)]


def now_in(path: str) -> bytes | None:
    file = REPOSITORY / path
    return file.read_bytes() if file.is_file() else None


def test_there_are_the_27_kinds_and_each_draw_is_the_same_again() -> None:
    files = real_files()
    damages = draw(KINDS, files, FEW)
    assert Counter(damage.kind for damage in damages) == dict.fromkeys(KINDS, FEW)
    assert len(KINDS) == 27
    assert draw(KINDS, files, FEW) == damages
    assert draw(KINDS, files, 1) == damages[::FEW]


def test_every_damage_changes_a_file(judged: list[Judged]) -> None:
    for one in some(judged):
        assert any(now_in(path) != data for path, data in one.damage.changes.items()), one.damage


def test_nearly_all_that_can_be_seen_is_caught_and_in_its_place(judged: list[Judged]) -> None:
    caught, near = shares(judged)
    assert caught >= Fraction(98, 100), table_text(judged)
    assert near >= Fraction(90, 100), table_text(judged)


def test_only_a_byte_order_mark_or_other_line_ends_are_never_seen(judged: list[Judged]) -> None:
    harmless = {one.damage.kind for one in judged if one.outcome == "harmless"}
    assert {"BOM", "CR / CRLF"} <= harmless
    for kind in ("BOM", "CR / CRLF"):
        assert {one.outcome for one in judged if one.damage.kind == kind} == {"harmless"}


def test_a_flipped_key_is_for_somebody_who_knows_the_trade(judged: list[Judged]) -> None:
    outcomes = {one.outcome for one in judged if one.damage.kind == "key flipped"}
    # the new key may be seen by its looks, at its own line; nothing else tells it
    assert "semantic" in outcomes
    assert outcomes <= {"semantic", "right line"}


def test_the_copy_is_whole_again_after_the_damages(reused: Reused, judged: list[Judged]) -> None:
    root = reused.project.root
    for path, data in real_files().items():
        assert (root / path).read_bytes() == data
    assert [p for p in reused.check()[1] if p.severity != "note"] == []


def test_what_is_reused_changes_nothing_of_what_is_said(
    judged: list[Judged], tmp_path: Path
) -> None:
    root = copied_project(tmp_path)
    numeric = next(one for one in judged if one.damage.kind == "wrong unit" and one.said)
    plain = checked_plainly(root, numeric.damage)
    assert numeric.said in [f"{p.place}: {p.message} [{p.rule}]" for p in plain]
