"""A certificate repeats knowledge, practice and dates; without one of them there is none."""

from datetime import date

import pytest

from generator.records import RecordsRefused
from generator.records.certificate_content import NOT_SAID
from generator.records.certificates import (
    all_certificates,
    certificate_of,
    certificates_of,
    certify,
)
from generator.records.dated_facts import DatedFact, add_fact
from generator.records.issues import void
from generator.records.observations import observe
from generator.records.painter_topics import SOURCE, TOPICS
from generator.records.sittings import keep_sittings
from tests.records.real_bank import real_bank
from tests.records.small_records import (
    ANN,
    AT,
    BOB,
    TODAY,
    TRAINER,
    form,
    issued,
    look,
    marked,
    sitting,
    small_records,
    trained,
)


def certified(connection, code=ANN.code, trainer=TRAINER.code, today=TODAY):
    """Certify a person on a day."""
    return certify(connection, code, trainer, "1", AT, today)


def test_a_certificate_names_papers_practice_dates_and_trainer(tmp_path):
    with small_records(tmp_path) as connection:
        trained(connection, job="Van door, job 12")
        add_fact(connection, DatedFact(ANN.code, "sign_off", "2026-10-01"), AT, TODAY)
        content = certified(connection).content
    assert content["person"] == {"code": ANN.code, "name": ANN.name}
    assert content["trainer"] == {"code": TRAINER.code, "name": TRAINER.name}
    assert content["papers"] == [
        {
            "title": "Cup check",
            "date": "2026-03-02",
            "paper": "issue 1, form A, edition 1",
            "result": "passed, 6 of 6 marks",
        }
    ]
    (practice,) = content["practice"]
    assert (practice["title"], practice["date"], practice["observer"], practice["job"]) == (
        "Mix a two-pack",
        "2026-03-01",
        TRAINER.code,
        "Van door, job 12",
    )
    assert content["sign_offs"] == [{"subject": "whole training", "done": "2026-10-01"}]
    assert content["dates"] == {
        "first": "2024-02-29",
        "refresher": "",
        "due": "2029-02-28",
        "overdue": False,
        "leap": True,
    }


def test_a_certificate_says_what_it_does_not_say(tmp_path):
    with small_records(tmp_path) as connection:
        trained(connection)
        content = certified(connection).content
    assert content["not_said"] == list(NOT_SAID)
    said = " ".join(content["not_said"])
    for words in ("fit to work", "medical clearance", "fit test", "skill with a gun"):
        assert words in said


def test_first_training_and_latest_refresher_stand_apart(tmp_path):
    with small_records(tmp_path) as connection:
        trained(connection)
        add_fact(connection, DatedFact(ANN.code, "painter_training", "2026-06-30"), AT, TODAY)
        dates = certified(connection, today=date(2031, 7, 1)).content["dates"]
    assert dates == {
        "first": "2024-02-29",
        "refresher": "2026-06-30",
        "due": "2031-06-30",
        "overdue": True,
        "leap": False,
    }


def test_topics_show_where_they_were_asked_and_observed_or_that_they_were_not(tmp_path):
    with small_records(tmp_path) as connection:
        trained(connection, procedure="set_the_gun")
        topics = certified(connection).content["topics"]
    assert [topic["clause"] for topic in topics] == [
        f"63.11173(f)(2)({place})" for place in ("i", "ii", "iii", "iv")
    ]
    assert topics[0]["knowledge"] == "3 of 3 questions right"
    assert topics[0]["practice"] == "observed: Mix a two-pack"
    assert topics[1]["knowledge"] == "no question asked here"
    assert topics[1]["practice"] == "not observed here"


def test_topics_point_at_objectives_procedures_and_a_source_of_the_bank():
    bank = real_bank()
    for topic in TOPICS:
        assert set(topic.objectives) <= set(bank.objectives)
        assert set(topic.procedures) <= set(bank.procedures)
    assert bank.sources[SOURCE].record.status == "restated"


def test_there_is_no_certificate_without_a_passed_paper(tmp_path):
    with small_records(tmp_path) as connection:
        observe(connection, look(), AT)
        number = issued(connection, form("A", ANN.code))
        missed = marked(0, 1, 1, verdict="must_pass_missed")
        keep_sittings(connection, number, [sitting("A", marks=missed)], AT)
        with pytest.raises(RecordsRefused, match="the knowledge part is empty"):
            certified(connection)


def test_there_is_no_certificate_without_practice(tmp_path):
    with small_records(tmp_path) as connection:
        number = issued(connection, form("A", ANN.code))
        keep_sittings(connection, number, [sitting("A")], AT)
        with pytest.raises(RecordsRefused, match="the hands-on part is empty"):
            certified(connection)


def test_there_is_no_certificate_without_a_date_of_training(tmp_path):
    with small_records(tmp_path) as connection:
        observe(connection, look(), AT)
        number = issued(connection, form("A", ANN.code))
        keep_sittings(connection, number, [sitting("A")], AT)
        with pytest.raises(RecordsRefused, match="no date of painter training"):
            certified(connection)


@pytest.mark.parametrize(
    ("code", "trainer", "reason"),
    [
        (ANN.code, ANN.code, "nobody certifies themselves"),
        (ANN.code, BOB.code, "is a learner; a trainer or lead signs"),
        (ANN.code, "Nobody", "'Nobody' is not in the records"),
        ("Nobody", TRAINER.code, "'Nobody' is not in the records"),
    ],
)
def test_who_may_not_sign_is_refused(tmp_path, code, trainer, reason):
    with small_records(tmp_path) as connection:
        trained(connection)
        with pytest.raises(RecordsRefused, match=reason):
            certified(connection, code, trainer)
        assert list(all_certificates(connection)) == []


def test_a_certificate_stays_as_it_was_issued_whatever_happens_later(tmp_path):
    with small_records(tmp_path) as connection:
        trained(connection)
        first = certified(connection)
        void(connection, 1, "wrong paper", AT)
        observe(connection, look(observed="2026-10-01"), AT)
        assert certificate_of(connection, first.number) == first
        assert certificates_of(connection, ANN.code) == (first,)
        with pytest.raises(RecordsRefused, match="there is no certificate 9"):
            certificate_of(connection, 9)
