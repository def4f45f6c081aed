"""A certificate says what was earned: every missing part is refused, with what supplies it."""

from datetime import date
from fractions import Fraction

import pytest

from generator.records import RecordsRefused
from generator.records.certificates.certificate_content import NO_FIT_TEST, NOT_SAID
from generator.records.certificates.certificates import (
    Training,
    all_certificates,
    certificate_of,
    certificates_of,
    certify,
)
from generator.records.certificates.painter_topics import TOPICS
from generator.records.issues.issues import take_back_void, void
from generator.records.practice.amending import put_back, take_out
from generator.records.practice.dated_facts import DatedFact, add_fact
from generator.records.practice.observations import ObservedStep, observe
from generator.records.sittings.corrections import Correction, correct
from generator.records.sittings.sittings import keep_sittings, sittings_of
from generator.records.sittings.stored_marks import KeptMark, Marked
from tests.real import real_bank
from tests.records.small_records import (
    ALL_DONE,
    ANN,
    AT,
    BOB,
    PLAN,
    TODAY,
    TRAINER,
    TRAINING,
    WORK,
    form,
    issued,
    look,
    marked,
    passed,
    sitting,
    small_records,
    trained,
    training_form,
    watched,
)

LATER = "2026-03-05T10:00:00"
SIT = "guidecoat issue painter_training --roster people.csv --seed WORD, then guidecoat mark"


def certified(connection, code=ANN.code, trainer=TRAINER.code, today=TODAY, training=TRAINING):
    """Certify a person on a day."""
    return certify(connection, code, trainer, training, AT, today)


def missing(connection, **more):
    """Return the parts that a refusal names; no certificate is kept."""
    with pytest.raises(RecordsRefused) as refused:
        certified(connection, **more)
    first, *parts = str(refused.value).split("\n  - ")
    assert first == "'Apprentice 01' cannot have a certificate yet. Missing:"
    assert list(all_certificates(connection)) == []
    return parts


def dated(connection):
    """Enter the date of the training."""
    add_fact(connection, DatedFact(ANN.code, "painter_training", "2026-03-02"), AT, TODAY)


def practised(connection):
    """Have all but the paper."""
    watched(connection, ANN.code, *WORK)
    dated(connection)


def test_a_certificate_names_paper_practice_dates_and_trainer(tmp_path):
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
            "result": "passed, 6 of 6 marks; 80 % needed",
        }
    ]
    assert [seen["procedure"] for seen in content["practice"]] == list(WORK)
    assert {(p["date"], p["observer"], p["job"], p["result"]) for p in content["practice"]} == {
        ("2026-03-01", TRAINER.code, "Van door, job 12", "Safety steps 1 of 1. Other steps 1 of 1")
    }
    assert content["sign_offs"] == [{"subject": "whole training", "done": "2026-10-01"}]
    assert content["dates"] == {
        "first": "2024-02-29",
        "refresher": "",
        "due": "2029-02-28",
        "overdue": False,
        "leap": True,
    }


def test_every_topic_stands_with_what_was_asked_and_what_was_watched(tmp_path):
    with small_records(tmp_path) as connection:
        trained(connection)
        topics = certified(connection).content["topics"]
    assert [topic["clause"] for topic in topics] == [
        f"63.11173(f)(2)({place})" for place in ("i", "ii", "iii", "iv")
    ]
    assert {topic["knowledge"] for topic in topics} == {"1 of 1 right"}
    assert [topic["practice"] for topic in topics] == [
        "Mix a two-pack; Mix a two-pack",
        *["Mix a two-pack"] * 3,
    ]


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


def test_an_overdue_fit_test_or_refresher_is_said(tmp_path):
    with small_records(tmp_path) as connection:
        trained(connection)
        assert certified(connection).content["reminders"] == [NO_FIT_TEST]
        add_fact(connection, DatedFact(ANN.code, "fit_test", "2025-11-24"), AT, TODAY)
        assert certified(connection).content["reminders"] == [
            "OVERDUE: fit test of the respirator, last on 2025-11-24, was due again by 2026-11-24."
        ]
        add_fact(connection, DatedFact(ANN.code, "fit_test", "2025-11-25"), AT, TODAY)
        assert certified(connection).content["reminders"] == []
        late = certified(connection, today=date(2029, 3, 1)).content["reminders"]
    assert [said.partition(",")[0] for said in late] == [
        "OVERDUE: painter training",
        "OVERDUE: fit test of the respirator",
    ]


def test_topics_point_at_objectives_procedures_and_a_source_of_the_bank():
    bank = real_bank()
    for topic in TOPICS:
        assert set(topic.objectives) <= set(bank.objectives)
        assert topic.hands_on
        assert {piece.procedure for piece in topic.hands_on} <= set(bank.procedures)
    assert bank.sources["epa_6h_restated"].record.status == "restated"


def test_the_plan_that_serves_the_certificate_asks_every_topic():
    plans = {
        name: entry.record
        for name, entry in real_bank().blueprints.items()
        if entry.record.certificate == "painter_training"
    }
    assert set(plans) == {PLAN}
    for topic in TOPICS:
        assert any(topic.asks(cell.objective) for cell in plans[PLAN].cells if cell.objective)


def test_nothing_at_all_names_every_part_with_its_command(tmp_path):
    with small_records(tmp_path) as connection:
        parts = missing(connection)
    assert len(parts) == 1 + len(WORK) + 1
    assert parts[0] == f"'Apprentice 01' has sat no paper of painter training: {SIT}"
    for part, procedure in zip(parts[1:-1], WORK, strict=True):
        assert "nobody has watched it" in part
        assert f"guidecoat records sheet {procedure}" in part
        assert (
            f'guidecoat records observe "Apprentice 01" {procedure} --observer "Trainer 1" --date'
            in part
        )
    assert parts[-1] == (
        "no date of painter training: "
        'guidecoat records date "Apprentice 01" painter_training --done DAY'
    )


def test_a_passed_paper_of_another_plan_is_no_painter_training(tmp_path):
    """A paper of one easy question does not stand in for the paper that was not passed."""
    with small_records(tmp_path) as connection:
        practised(connection)
        number = issued(connection, form("A", ANN.code))
        keep_sittings(connection, number, [sitting("A")], AT)
        assert missing(connection) == [
            f"'Apprentice 01' has sat no paper of painter training: {SIT}"
        ]


@pytest.mark.parametrize(
    ("marks", "said"),
    [
        (marked(0, 1, 1, verdict="must_pass_missed"), "a must-pass question was missed, 4 of 6"),
        (marked(1, 1, 0, verdict="not_passed"), "not passed yet, 4 of 6 marks"),
    ],
)
def test_a_paper_that_was_not_passed_is_refused_with_its_marks(tmp_path, marks, said):
    with small_records(tmp_path) as connection:
        practised(connection)
        number = issued(connection, training_form("A", ANN.code), blueprint=PLAN)
        keep_sittings(connection, number, [sitting("A", marks=marks)], AT)
        first = missing(connection)[0]
    assert first.startswith("the last paper (issue 1, form A, of 2026-03-02) was ")
    assert said in first
    assert first.endswith(f"teach, then issue a new paper: {SIT}")


def test_a_paper_that_waits_for_a_person_is_marked_first(tmp_path):
    waits = marked(1, 1, 1, verdict="unfinished")
    with small_records(tmp_path) as connection:
        practised(connection)
        number = issued(connection, training_form("A", ANN.code), blueprint=PLAN)
        keep_sittings(connection, number, [sitting("A", marks=waits)], AT)
        (part,) = missing(connection)
    assert "a person must still look at an answer" in part
    assert part.endswith("guidecoat mark")


def test_the_last_paper_counts_and_a_later_failure_outweighs_an_earlier_pass(tmp_path):
    with small_records(tmp_path) as connection:
        trained(connection)
        again = issued(connection, training_form("A", ANN.code), blueprint=PLAN)
        failed = sitting("A", marks=marked(0, 0, 0, verdict="not_passed"))
        keep_sittings(connection, again, [failed], LATER)
        assert missing(connection)[0].startswith("the last paper (issue 2,")
        third = issued(connection, training_form("A", ANN.code), blueprint=PLAN)
        keep_sittings(connection, third, [sitting("A")], "2026-04-05T10:00:00")
        assert certified(connection).content["papers"][0]["paper"].startswith("issue 3,")


def test_a_voided_paper_does_not_count_until_the_void_is_taken_back(tmp_path):
    with small_records(tmp_path) as connection:
        trained(connection)
        void(connection, 1, "left in the canteen", AT)
        assert missing(connection) == [
            f"'Apprentice 01' has sat no paper of painter training: {SIT}"
        ]
        take_back_void(connection, 1, "a slip of the hand", AT)
        assert certified(connection).content["papers"]


def test_a_correction_that_takes_the_pass_away_counts(tmp_path):
    with small_records(tmp_path) as connection:
        trained(connection)
        number = sittings_of(connection, 1)[0].number
        change = Correction("mixing/flow_cup/item_1", {"accept": ["B"]}, "wrong key", TRAINER.code)
        correct(connection, 1, change, {number: marked(0, 1, 1, verdict="must_pass_missed")}, LATER)
        assert "a must-pass question was missed" in missing(connection)[0]


@pytest.mark.parametrize("left", [0, 1, 2])
def test_every_topic_has_to_be_asked_on_the_paper(tmp_path, left):
    asked = ["spray_gun/allowed_guns", "spray_gun/gun_stroke", "booth_climate/change_filters"]
    asked[left] = "filler/mix_filler"
    gone = [["i", "iv"], ["ii"], ["iii"]][left]
    with small_records(tmp_path) as connection:
        practised(connection)
        number = issued(connection, training_form("A", ANN.code, asked), blueprint=PLAN)
        keep_sittings(connection, number, [sitting("A")], AT)
        parts = missing(connection)
    assert len(parts) == len(gone)
    for part, place in zip(parts, gone, strict=True):
        assert f"asks nothing on 63.11173(f)(2)({place}), " in part
        assert part.endswith(SIT)


def test_a_question_that_an_appeal_left_out_asks_no_topic(tmp_path):
    left_out = Marked(
        "passed",
        Fraction(4),
        4,
        (
            *marked(1, 1).marks,
            KeptMark(3, Fraction(0), "wrong", {"left_out": True}),
        ),
    )
    with small_records(tmp_path) as connection:
        trained(connection)
        number = sittings_of(connection, 1)[0].number
        change = Correction("mixing/flow_cup/item_3", {"leave_out": True}, "unclear", TRAINER.code)
        correct(connection, 1, change, {number: left_out}, LATER)
        (part,) = missing(connection)
    assert "asks nothing on 63.11173(f)(2)(iii)" in part


def test_a_topic_of_which_nothing_was_right_is_not_shown(tmp_path):
    with small_records(tmp_path) as connection:
        practised(connection)
        number = issued(connection, training_form("A", ANN.code), blueprint=PLAN)
        keep_sittings(connection, number, [sitting("A", marks=marked(1, 1, 0))], AT)
        (part,) = missing(connection)
    assert part.startswith("no answer on 63.11173(f)(2)(iii), ")


@pytest.mark.parametrize("work", WORK)
def test_every_piece_of_work_has_to_be_watched(tmp_path, work):
    with small_records(tmp_path) as connection:
        passed(connection)
        dated(connection)
        watched(connection, ANN.code, *(other for other in WORK if other != work))
        (part,) = missing(connection)
    assert "nobody has watched it" in part
    assert f"guidecoat records sheet {work}" in part


@pytest.mark.parametrize(
    ("starred", "other", "said"),
    [
        ("no", "yes", "in observation 6 of 2026-03-01 not done: Put the gloves on"),
        ("not_seen", "yes", "in observation 6 of 2026-03-01 a starred step was not seen: Put the"),
        ("yes", "no", "in observation 6 of 2026-03-01 not done: Do the work"),
        ("yes", "not_seen", "only 1 of 2 steps were seen, not most of them"),
    ],
)
def test_a_step_not_done_or_a_starred_step_not_seen_refuses(tmp_path, starred, other, said):
    steps = (
        ObservedStep("gloves_on", "Put the gloves on", True, starred),
        ObservedStep("work", "Do the work", False, other),
    )
    with small_records(tmp_path) as connection:
        trained(connection)
        observe(connection, look(ANN.code, steps, procedure="spray_flat_panel"), AT)
        (part,) = missing(connection)
        assert said in part
        watched(connection, ANN.code, "spray_flat_panel")
        assert certified(connection).content["practice"][2]["procedure"] == "spray_flat_panel"


def test_a_look_that_was_taken_out_shows_nothing(tmp_path):
    with small_records(tmp_path) as connection:
        trained(connection)
        take_out(connection, ANN.code, "observation", 1, "it was somebody else", AT)
        (part,) = missing(connection)
        assert "guidecoat records sheet set_the_gun" in part
        put_back(connection, ANN.code, "observation", 1, "it was Ann after all", AT)
        assert certified(connection).number == 1


def test_work_for_which_no_topic_asks_shows_none(tmp_path):
    with small_records(tmp_path) as connection:
        passed(connection)
        dated(connection)
        observe(connection, look(ANN.code, ALL_DONE, procedure="mix_filler"), AT)
        assert len(missing(connection)) == len(WORK)


def test_there_is_no_certificate_without_a_date_of_training(tmp_path):
    with small_records(tmp_path) as connection:
        passed(connection)
        watched(connection, ANN.code, *WORK)
        (part,) = missing(connection)
    assert part.startswith("no date of painter training: guidecoat records date")


def test_a_bank_without_a_plan_for_it_says_which_line_to_write(tmp_path):
    with small_records(tmp_path) as connection:
        trained(connection)
        (part,) = missing(connection, training=Training("1", frozenset()))
    assert "add that line to the plan that trains painters" in part


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
