"""The table counts what it says: shares leave out the harmless and what only a painter can tell."""

from fractions import Fraction

from tests.damage.damage import Damage
from tests.damage.judging import Judged, Outcome
from tests.damage.table import shares, table_text


def one(outcome: Outcome, kind: str = "tab") -> Judged:
    return Judged(Damage(kind, {}, "a.yml", (3,), "a tab"), outcome, "a.yml:3:1: a tab [yaml-tab]")


def test_shares_are_of_what_can_be_seen() -> None:
    judged = [one("right line")] * 6 + [one("elsewhere")] * 3 + [one("mechanical")]
    assert shares(judged) == (Fraction(9, 10), Fraction(6, 10))
    assert shares([*judged, one("harmless"), one("semantic")]) == shares(judged)


def test_the_table_has_a_row_for_each_kind_and_lists_what_was_missed() -> None:
    text = table_text([one("right line"), one("mechanical", "NUL"), one("semantic", "key flipped")])
    rows = text.splitlines()
    assert [row.split()[0] for row in rows[1:4]] == ["tab", "NUL", "key"]
    assert "caught 50.0%, and 50.0% within two lines" in text
    assert "  NUL: a.yml:3: a tab" in text
    assert "  tab: a.yml:3" not in text
