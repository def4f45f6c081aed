"""Practical observations: starred steps come from danger pairs; what nobody saw is not seen."""

import pytest

from generator.records import RecordsRefused
from generator.records.practice.observations import observations_of, observe, observed_steps
from generator.records.practice.observed_steps import seen_of, sheet_steps
from tests.records.real_bank import real_bank
from tests.records.small_records import ANN, AT, BOB, TRAINER, look, small_records


@pytest.fixture(scope="module")
def procedures():
    bank = real_bank()
    return {name: entry.record for name, entry in bank.procedures.items()}


def test_every_procedure_of_the_bank_has_a_sheet_and_there_are_fourteen_at_least(procedures):
    assert len(procedures) >= 14
    for procedure in procedures.values():
        assert [step.step for step in sheet_steps(procedure)] == [s.step for s in procedure.steps]


def test_starred_are_exactly_the_steps_of_danger_pairs(procedures):
    starred = 0
    for procedure in procedures.values():
        for step in sheet_steps(procedure):
            classes = {p.pair_class for p in procedure.pairs if step.step in (p.first, p.then)}
            assert step.critical == ("danger" in classes)
            starred += step.critical
    assert starred > 20


def test_a_step_that_is_not_named_was_not_seen(procedures):
    steps = sheet_steps(procedures["mix_two_pack"])
    seen = seen_of(steps, ("protect=yes", "strain=no", "stir_mix=not_seen"))
    assert seen["protect"] == "yes"
    assert seen["strain"] == "no"
    assert sum(answer == "not_seen" for answer in seen.values()) == len(steps) - 2


@pytest.mark.parametrize(
    ("words", "reason"),
    [
        (("protect",), "'protect' is not a step with =yes, =no or =not_seen"),
        (("protect=maybe",), "'protect=maybe' is not a step with"),
        (("protekt=yes",), "did you mean 'protect'?"),
        (("protect=yes", "protect=no"), "'protect' is there twice"),
        (("protect=not_seen",), "nothing was seen"),
        ((), "nothing was seen"),
    ],
)
def test_what_is_no_observation_is_refused(procedures, words, reason):
    with pytest.raises(RecordsRefused, match=reason):
        seen_of(sheet_steps(procedures["mix_two_pack"]), words)


def test_an_observation_keeps_the_steps_as_they_read_on_the_day(tmp_path, procedures):
    steps = sheet_steps(procedures["mix_two_pack"])
    frozen = observed_steps(steps, seen_of(steps, ("protect=yes",)))
    assert [step.action for step in frozen] == [step.action for step in steps]
    with small_records(tmp_path) as connection:
        kept = look(job="Van door, job 12", note="Stir longer")
        observe(connection, kept, AT)
        assert observations_of(connection, ANN.code) == (kept,)


def test_an_observation_counts_starred_steps_apart():
    assert look().in_words == "Safety steps 1 of 1. Other steps 0 of 1. Not seen: Stir the mix"
    assert look().stars_seen


@pytest.mark.parametrize(
    ("wrong", "reason"),
    [
        (look(observer=ANN.code), "nobody observes their own work"),
        (look(observer=BOB.code), "is a learner"),
        (look(observer="Nobody"), "'Nobody' is not in the records"),
        (look("Nobody"), "'Nobody' is not in the records"),
    ],
)
def test_who_may_not_observe_is_refused(tmp_path, wrong, reason):
    with small_records(tmp_path) as connection:
        with pytest.raises(RecordsRefused, match=reason):
            observe(connection, wrong, AT)
        assert observations_of(connection, ANN.code) == ()
    assert TRAINER.role == "trainer"
