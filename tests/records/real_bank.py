"""The real bank, read once for the tests of this folder."""

from functools import cache

from generator.bank import Bank, load_bank
from tests.bank.small_bank import REPOSITORY


@cache
def real_bank() -> Bank:
    """Read the bank without running its rules."""
    bank, _ = load_bank(REPOSITORY / "question_bank", REPOSITORY / "course")
    assert bank is not None
    return bank
