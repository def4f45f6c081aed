"""`guidecoat explain`: a page for every rule, a guess for a misspelt one."""

from pathlib import Path

import pytest

from generator.bank.checks import RULES
from generator.marking import ISSUED_RULES, TABLE_RULES
from generator.records import ROSTER_RULES
from tests.command_line.running import misuse, run

ALL = {**RULES, **TABLE_RULES, **ISSUED_RULES, **ROSTER_RULES}


def test_no_rule_of_bank_tables_or_rosters_hides_another() -> None:
    assert len(ALL) == sum(map(len, (RULES, TABLE_RULES, ISSUED_RULES, ROSTER_RULES)))


@pytest.mark.parametrize("rule", ALL)
def test_every_rule_has_a_page(rule: str, tmp_path: Path) -> None:
    result = run(tmp_path, "explain", rule)
    assert result.exit_code == 0
    assert result.stdout == ALL[rule].page()


def test_without_a_rule_all_are_listed_with_gravity_and_reason(tmp_path: Path) -> None:
    lines = run(tmp_path, "explain").stdout.splitlines()
    assert [line.split()[:2] for line in lines] == [[n, r.severity] for n, r in ALL.items()]


def test_a_misspelt_rule_is_guessed(tmp_path: Path) -> None:
    assert misuse(tmp_path, "explain", "slip-in-bnad") == (
        "there is no rule 'slip-in-bnad'; did you mean 'slip-in-band'?"
    )


def test_a_rule_near_to_none_points_to_the_list(tmp_path: Path) -> None:
    assert misuse(tmp_path, "explain", "qqq") == (
        "there is no rule 'qqq'; run 'guidecoat explain' for the list"
    )
