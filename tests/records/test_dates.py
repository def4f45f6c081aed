"""What falls due: five years, one year, days somebody set; leap days and the turn of the year."""

from datetime import date, timedelta

import pytest
from hypothesis import given
from hypothesis import strategies as st

from generator.records import RecordsRefused
from generator.records.practice.dated_facts import RENEWALS, DatedFact, add_fact, facts_of
from generator.records.practice.due import due_list, why_due
from generator.records.sittings.sittings import keep_sittings
from generator.records.store.calendar_dates import days_after, read_date, years_after
from tests.records.small_records import (
    ANN,
    AT,
    BOB,
    form,
    issued,
    marked,
    sitting,
    small_records,
)

TODAY = date(2026, 11, 25)


@pytest.mark.parametrize(
    ("start", "years", "day"),
    [
        ("2021-11-25", 5, "2026-11-25"),
        ("2024-02-29", 5, "2029-02-28"),
        ("2024-02-29", 1, "2025-02-28"),
        ("2024-02-29", 4, "2028-02-29"),
        ("2023-02-28", 5, "2028-02-28"),
        ("2023-03-01", 1, "2024-03-01"),
        ("2021-12-31", 5, "2026-12-31"),
        ("2022-01-01", 5, "2027-01-01"),
    ],
)
def test_the_same_day_some_years_later(start, years, day):
    assert years_after(read_date(start), years).isoformat() == day


@given(st.dates(max_value=date(9000, 1, 1)), st.integers(1, 40))
def test_a_day_some_years_later_is_never_later_than_the_same_month_and_day(start, years):
    day = years_after(start, years)
    assert day.year == start.year + years
    assert (day.month, day.day) == (start.month, start.day) or (
        (start.month, start.day, day.month, day.day) == (2, 29, 2, 28)
    )


@given(st.dates(), st.integers(0, 40_000))
def test_days_ahead_never_leave_the_calendar(start, days):
    assert days_after(start, days) == (
        start + timedelta(days) if date.max - start >= timedelta(days) else date.max
    )


def test_a_day_beyond_the_calendar_is_refused():
    with pytest.raises(RecordsRefused, match="too late a date"):
        years_after(date(9999, 1, 1), 5)


@pytest.mark.parametrize("text", ["", "2026-02-30", "01.03.2026", "20260301", "2026-W10-1", "x"])
def test_what_is_no_date_is_refused(text):
    with pytest.raises(RecordsRefused, match="is not a date such as 2026-03-01"):
        read_date(text)


def fact(kind="painter_training", done="2024-02-29", due="", subject="", person=ANN.code):
    """Return a dated fact."""
    return DatedFact(person, kind, done, due, subject)


@pytest.mark.parametrize(
    ("known", "day", "why"),
    [
        (fact(), "2029-02-28", "every 5 years (29 February counts as 28), 40 CFR 63.11173(g)"),
        (fact(due="2027-01-01"), "2027-01-01", "day entered"),
        (fact(due="2031-01-01"), "2029-02-28", "every 5 years"),
        (fact("fit_test", "2025-12-31"), "2026-12-31", "from memory, not checked"),
        (fact("isocyanate_training", "2023-08-24"), "2028-08-24", "REACH Annex XVII entry 74"),
        (fact("medical", "2026-01-01", "2027-06-30"), "2027-06-30", "day entered"),
    ],
)
def test_the_earlier_of_rule_and_entered_day_counts(known, day, why):
    assert known.falls_due.isoformat() == day
    assert why in why_due(known, known.falls_due)


@pytest.mark.parametrize("kind", ["medical", "sign_off"])
def test_what_no_rule_renews_is_due_only_when_somebody_says_so(kind):
    assert fact(kind).falls_due is None


def test_the_renewal_rules_say_how_far_they_were_checked():
    """Painter refresher: 40 CFR 63.11173(g), restated; fit test: 29 CFR 1910.134(f)(2), memory."""
    told = {kind: (rule.years, rule.status) for kind, rule in RENEWALS.items()}
    assert told == {
        "painter_training": (5, "restated"),
        "fit_test": (1, "from_memory"),
        "isocyanate_training": (5, "restated"),
    }


@pytest.mark.parametrize(
    ("wrong", "reason"),
    [
        (fact(done="2026-11-26"), "2026-11-26 is still to come"),
        (fact(done="2026-01-02", due="2026-01-01"), "before it was done"),
        (fact(done="2026-02-30"), "not a date"),
        (fact(kind="diagnosis", done="2026-01-01"), "no kind of date 'diagnosis'"),
        (fact(person="Nobody"), "'Nobody' is not in the records"),
    ],
)
def test_a_date_that_cannot_be_is_not_kept(tmp_path, wrong, reason):
    with small_records(tmp_path) as connection:
        with pytest.raises(RecordsRefused, match=reason):
            add_fact(connection, wrong, AT, TODAY)
        assert connection.execute("SELECT count(*) FROM dated_facts").fetchone()[0] == 0


def test_the_list_has_the_latest_of_each_kind_earliest_day_first(tmp_path):
    with small_records(tmp_path) as connection:
        for known in (
            fact(done="2016-05-01"),
            fact(done="2021-12-01"),
            fact("fit_test", "2025-11-24"),
            fact("fit_test", "2025-11-25", person=BOB.code),
            fact("medical", "2026-01-01"),
        ):
            add_fact(connection, known, AT, TODAY)
        found = due_list(connection, TODAY, 60)
        assert facts_of(connection, ANN.code)[0].done == "2016-05-01"
        assert due_list(connection, TODAY, 0) == found[:2]
    assert [(d.person, d.what, d.day.isoformat(), d.is_overdue(TODAY)) for d in found] == [
        (ANN.code, "fit test of the respirator", "2026-11-24", True),
        (BOB.code, "fit test of the respirator", "2026-11-25", False),
        (ANN.code, "painter training", "2026-12-01", False),
    ]


@pytest.mark.parametrize(("within", "listed"), [(0, 0), (36, 0), (37, 1)])
def test_the_look_ahead_crosses_the_turn_of_the_year(tmp_path, within, listed):
    with small_records(tmp_path) as connection:
        add_fact(connection, fact("fit_test", "2026-01-01"), AT, TODAY)
        assert len(due_list(connection, TODAY, within)) == listed


def test_a_paper_not_passed_is_on_the_list_until_it_is_passed(tmp_path):
    failed = sitting("A", marks=marked(0, 0, 0, verdict="not_passed"))
    with small_records(tmp_path) as connection:
        keep_sittings(connection, issued(connection, form("A", ANN.code)), [failed], AT)
        (open_one,) = due_list(connection, TODAY, 0)
        assert (open_one.what, open_one.day.isoformat()) == ("retest: Cup check", AT[:10])
        planned = fact("retest", "2026-03-02", "2026-12-20", "cup_check")
        add_fact(connection, planned, AT, TODAY)
        assert due_list(connection, TODAY, 0) == ()
        (later,) = due_list(connection, TODAY, 30)
        assert (later.what, later.day.isoformat()) == ("retest: Cup check", "2026-12-20")
        again = issued(connection, form("A", ANN.code))
        keep_sittings(connection, again, [sitting("A")], "2026-03-09T08:00:00")
        assert due_list(connection, TODAY, 365) == ()
