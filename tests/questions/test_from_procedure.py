"""Questions that follow from a procedure: the key is right and every other option is wrong."""

import pytest

from generator.bank.orders.precedence import transitive_closure
from generator.questions.derived.from_procedure import (
    FROM_PROCEDURE,
    put_in_order,
    what_comes_before,
    what_comes_next,
    what_goes_wrong,
    which_is_missing,
)
from generator.questions.derived.procedure_slips import KIN
from generator.questions.drawing.ordering import scored_procedure
from generator.questions.drawing.seeded_random import SeededRandom
from tests.questions.small_bank import FULL, MIX_FILLER, WASH_TRAILER, bank_of

LABELS = [str(number) for number in range(40)]


@pytest.fixture(scope="module")
def bank(tmp_path_factory):
    return bank_of(tmp_path_factory.mktemp("bank"), FULL)


def draws(maker, bank, name="mix_filler"):
    asked = [maker(bank, bank.procedures[name], SeededRandom(label)) for label in LABELS]
    assert None not in asked
    return asked


def names_by_text(bank, name="mix_filler"):
    return {step.action: step.step for step in bank.procedures[name].record.steps}


def right(derived):
    (option,) = [option for option in derived.key.options if option.right]
    return option


def wrong(derived):
    return [option for option in derived.key.options if not option.right]


@pytest.mark.parametrize("name", ["mix_filler", "wash_trailer"])
@pytest.mark.parametrize("label", FROM_PROCEDURE)
def test_each_question_has_one_right_option_or_a_row_of_steps(bank, label, name):
    for text in LABELS:
        derived = FROM_PROCEDURE[label](bank, bank.procedures[name], SeededRandom(text))
        if derived is None or derived.kind == "order":
            continue
        assert derived.kind == "choice"
        assert sum(option.right for option in derived.key.options) == 1
        assert 3 <= len(derived.key.options) <= 4
        assert len({option.text for option in derived.key.options}) == len(derived.key.options)
        assert all(option.feedback for option in derived.key.options)


@pytest.mark.parametrize(
    "maker", [put_in_order, what_comes_next, what_comes_before, which_is_missing]
)
def test_an_optional_step_is_in_no_question_about_the_order(bank, maker):
    for derived in draws(maker, bank):
        assert "lamp" not in str(derived)


def test_the_order_question_says_that_some_steps_are_not_shown(bank):
    for derived in draws(put_in_order, bank):
        assert derived.stem.startswith("Put these steps of 'Mix filler' in a safe")
        assert "not shown" in derived.stem
        assert len(derived.key.steps) == 6


def test_every_step_that_may_come_next_is_free_and_every_other_option_waits(bank):
    names = names_by_text(bank)
    scored = scored_procedure(bank.procedures["mix_filler"].record)
    for derived in draws(what_comes_next, bank):
        listed = derived.stem.split(" done: ")[1].split(". What may")[0].split("; ")
        last = {name for text, name in names.items() if text.lower() in map(str.lower, listed)}
        steps = list(scored.steps)
        done = set(steps[: max(steps.index(name) for name in last) + 1])
        needs = {first for first, then in scored.reasons if then == names[right(derived).text]}
        assert needs
        assert needs <= done
        for option in wrong(derived):
            needed = {first for first, then in scored.reasons if then == names[option.text]}
            assert needed - done
            assert option.feedback.startswith("Not yet: '")


def test_what_must_come_before_is_a_stated_pair_and_the_others_come_after(bank):
    names = names_by_text(bank)
    scored = scored_procedure(bank.procedures["mix_filler"].record)
    after = transitive_closure(scored.reasons)
    for derived in draws(what_comes_before, bank):
        asked = derived.stem.split("You are about to ")[1].split(". Which")[0]
        (then,) = [name for text, name in names.items() if text.lower() == asked.lower()]
        first = names[right(derived).text]
        assert (first, then) in scored.reasons
        assert right(derived).feedback == scored.reasons[first, then]
        assert all((then, names[option.text]) in after for option in wrong(derived))


def test_the_missing_step_stood_between_its_neighbours_and_the_others_belong_elsewhere(bank):
    record = bank.procedures["mix_filler"].record
    own = [step for step in record.steps if not step.optional]
    names = names_by_text(bank)
    forced = transitive_closure(scored_procedure(record).reasons)
    foreign = {step.action for step in bank.procedures["wash_trailer"].record.steps}
    for derived in draws(which_is_missing, bank):
        place = [step.action for step in own].index(right(derived).text)
        assert own[place - 1].action[1:] in derived.stem
        assert own[place + 1].action[1:] in derived.stem
        for option in wrong(derived):
            if option.text in foreign:
                assert option.feedback == "That is a step of 'Wash a trailer wing'."
            else:
                name = names[option.text]
                earlier = (name, own[place - 1].step) in forced
                later = (own[place + 1].step, name) in forced
                assert earlier or later
                assert option.feedback.startswith(
                    "That comes before" if earlier else "That comes af"
                )


def test_what_goes_wrong_never_sets_kindred_harms_beside_the_key(bank):
    pairs = [p for entry in bank.procedures.values() for p in entry.record.pairs if p.scores]
    harms = {pair.goes_wrong: pair.harm for pair in pairs}
    for derived in draws(what_goes_wrong, bank):
        key = harms[right(derived).text]
        kin = {key}.union(*(row for row in KIN if key in row))
        assert right(derived).text in MIX_FILLER
        assert all(harms[option.text] not in kin for option in wrong(derived))


def test_other_slips_of_the_same_job_share_no_step_with_the_one_asked(bank):
    own = [p for p in bank.procedures["mix_filler"].record.pairs if p.scores]
    by_text = {pair.goes_wrong: {pair.first, pair.then} for pair in own}
    for derived in draws(what_goes_wrong, bank):
        asked = by_text[right(derived).text]
        for option in wrong(derived):
            assert not asked & by_text.get(option.text, set())


def test_a_pair_with_too_few_unlike_harms_is_never_asked_about(tmp_path):
    # with every harm of the bank of one kind, nothing unlike is left to stand beside a key
    kinds = ("skin_eye_harm", "wrong_cure", "wasted_mix", "contamination", "damage", "corrosion")
    alike = {"procedures/mix_filler.yml": MIX_FILLER, "procedures/wash_trailer.yml": WASH_TRAILER}
    for path in alike:
        for kind in kinds:
            alike[path] = alike[path].replace(f"harm: {kind}", "harm: poor_grip")
    bank = bank_of(tmp_path, alike)
    entry = bank.procedures["mix_filler"]
    assert {pair.harm for pair in entry.record.pairs if pair.harm} == {"poor_grip"}
    assert what_goes_wrong(bank, entry, SeededRandom("alike")) is None


def test_a_habit_is_never_asked_about(bank):
    for label in LABELS:
        for maker in (what_comes_before, what_comes_next):
            derived = maker(bank, bank.procedures["wash_trailer"], SeededRandom(label))
            assert derived is None or "Most people do" not in str(derived)


def test_the_same_step_in_two_other_procedures_is_one_wrong_option(tmp_path):
    twin = WASH_TRAILER.replace("Wash a trailer wing", "Wash a van wing")
    bank = bank_of(
        tmp_path,
        {
            "procedures/mix_filler.yml": MIX_FILLER,
            "procedures/wash_trailer.yml": WASH_TRAILER,
            "procedures/wash_van.yml": twin,
        },
    )
    for derived in draws(which_is_missing, bank):
        texts = [option.text for option in derived.key.options]
        assert len(set(texts)) == len(texts) >= 3


def test_a_lone_procedure_takes_its_wrong_options_from_itself(tmp_path):
    bank = bank_of(tmp_path, {"procedures/mix_filler.yml": MIX_FILLER})
    entry = bank.procedures["mix_filler"]
    missing = [which_is_missing(bank, entry, SeededRandom(label)) for label in LABELS]
    texts = {step.action for step in entry.record.steps}
    assert all(o.text in texts for asked in missing if asked for o in asked.key.options)
    assert put_in_order(bank, entry, SeededRandom("alone")) is not None


def test_a_step_that_shares_a_word_with_the_asked_work_is_no_wrong_option(tmp_path):
    shared = WASH_TRAILER.replace("Towel the wing", "Spread a towel on the wing")
    bank = bank_of(
        tmp_path,
        {"procedures/mix_filler.yml": MIX_FILLER, "procedures/wash_trailer.yml": shared},
    )
    for derived in draws(which_is_missing, bank):
        assert "Spread a towel on the wing" not in [o.text for o in wrong(derived)]
