"""Keep-times are shown with their source and how far it was checked; nothing goes by age."""

from generator.records.practice.retention import PERIODS
from tests.records.real_bank import real_bank

RANK = {"from_memory": 0, "restated": 1, "read": 2}


def test_no_period_claims_more_than_its_source():
    bank = real_bank()
    for period in PERIODS:
        if period.source:
            known = bank.sources[period.source].record
            assert RANK[period.status] <= RANK[known.status], period.record
        else:
            assert period.status != "read", period.record


def test_periods_from_memory_say_so():
    """Spray rule records and those after it: no text of the period itself was read."""
    told = {(p.document, p.status) for p in PERIODS}
    for document in ("40 CFR 63.11178", "29 CFR 1910.1020", "29 CFR 30.12"):
        assert (document, "from_memory") in told
    memory = [p for p in PERIODS if p.status == "from_memory"]
    assert all("from memory" in p.status_words for p in memory)


def test_every_period_says_where_it_holds_and_what_it_is_for():
    assert len({p.jurisdiction for p in PERIODS}) >= 3
    assert all(p.record and p.keep and p.jurisdiction for p in PERIODS)
