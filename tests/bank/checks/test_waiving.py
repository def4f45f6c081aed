"""Waivers: only of rules that exist and are warnings, and a version does not change with one."""

from generator.bank.checks import RULES
from generator.bank.checks.waiving import WAIVABLE
from generator.bank.record_version import record_version
from tests.bank.small_bank import numeric_item

ITEM = """\
stem: How thick is {wet}?
given: {wet: {unit: um, values: [50, 60]}}
answer: {formula: wet * 2, unit: um, round_to: 1}
slips: [{formula: wet * 3, feedback: You took three times.}]
"""
WAIVER = "waived: [{rule: options-overlap, reason: The sheet has both.}]\n"


def test_only_warnings_can_be_waived() -> None:
    assert {RULES[name].severity for name in WAIVABLE} == {"warning"}


def test_a_waiver_makes_no_other_version_of_its_item() -> None:
    plain, waived = numeric_item(ITEM).record, numeric_item(ITEM + WAIVER).record
    assert plain != waived
    assert record_version(plain) == record_version(waived)
