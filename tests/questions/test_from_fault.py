"""Questions that follow from a fault: no other name, cause, remedy or look is right as well."""

import pytest

from generator.questions.derived.from_fault import (
    FROM_FAULT,
    likely_cause,
    name_the_fault,
    right_remedy,
    tell_apart,
)
from generator.questions.drawing.seeded_random import SeededRandom
from tests.questions.small_bank import bank_of, fault

LABELS = [str(number) for number in range(40)]
TITLES = ("Pinholes", "Craters", "Sags", "Rings", "Nibs", "Haze")


def bank_with(folder, **changed):
    """Return a bank of six faults; `changed` maps a title to other entries of its record."""
    files = {f"faults/{t.lower()}.yml": fault(t, **changed.get(t, {})) for t in TITLES}
    return bank_of(folder, files)


def draws(maker, bank, name="pinholes"):
    return [maker(bank, bank.faults[name], SeededRandom(label)) for label in LABELS]


def wrong_texts(derived):
    return {option.text for option in derived.key.options if not option.right}


def right(derived):
    (option,) = [option for option in derived.key.options if option.right]
    return option


LOOKS = "[{fault: craters, difference: Craters have a raised rim}]"


@pytest.fixture(scope="module")
def bank(tmp_path_factory):
    return bank_with(tmp_path_factory.mktemp("bank"), Pinholes={"look_alikes": LOOKS})


@pytest.mark.parametrize("label", FROM_FAULT)
def test_each_question_has_one_right_option_with_reasons_all_round(bank, label):
    for derived in draws(FROM_FAULT[label], bank):
        assert derived.kind == "choice"
        assert sum(option.right for option in derived.key.options) == 1
        assert len({o.text for o in derived.key.options}) == len(derived.key.options)
        assert len(derived.key.options) == (3 if label == "look_alike" else 4)
        assert all(option.feedback for option in derived.key.options)


def test_a_stated_look_alike_is_always_among_the_names(bank):
    for derived in draws(name_the_fault, bank):
        assert right(derived).text == "Pinholes"
        (craters,) = [o for o in derived.key.options if o.text == "Craters"]
        assert craters.feedback.endswith("Craters have a raised rim.")


def test_the_name_question_tells_look_place_and_time_but_not_the_name(bank):
    (derived, *_) = draws(name_the_fault, bank)
    assert derived.stem == (
        "The film shows pinholes marks. Seen on pinholes panels. Which fault is this?"
    )


@pytest.mark.parametrize(
    ("asked", "other"),
    [({"other_names": "[craters]"}, {}), ({}, {"other_names": "[PINHOLES]"})],
)
def test_another_name_of_the_fault_is_never_a_wrong_name(tmp_path, asked, other):
    bank = bank_with(tmp_path, Pinholes=asked, Craters=other)
    for derived in draws(name_the_fault, bank):
        assert "Craters" not in wrong_texts(derived)
        assert len(derived.key.options) == 4


def test_a_cause_is_keyed_only_where_it_belongs_to_this_fault_alone(tmp_path):
    shared = {"causes": "[{family: method, text: Work that brings pinholes}]"}
    bank = bank_with(tmp_path, Pinholes=shared)
    assert set(draws(likely_cause, bank)) == {None}
    for derived in draws(likely_cause, bank, "craters"):
        assert "Work that brings pinholes" not in wrong_texts(derived)


def test_a_cause_that_two_faults_share_is_never_a_wrong_option(tmp_path):
    causes = (
        "[{family: method, text: Work that brings sags, asked: true},"
        " {family: climate, text: work that brings pinholes., asked: false}]"
    )
    bank = bank_with(tmp_path, Sags={"causes": causes})
    for derived in draws(likely_cause, bank, "sags"):
        assert "Work that brings pinholes" not in wrong_texts(derived)


def test_causes_of_look_alikes_are_never_wrong_options(bank):
    for derived in draws(likely_cause, bank):
        assert "Work that brings craters" not in wrong_texts(derived)
    for derived in draws(likely_cause, bank, "craters"):
        assert "Work that brings pinholes" not in wrong_texts(derived)


def test_wrong_causes_come_from_different_faults(tmp_path):
    many = ", ".join(
        f"{{family: method, text: Reason {n} for nibs, asked: true}}" for n in range(9)
    )
    bank = bank_with(tmp_path, Nibs={"causes": f"[{many}]"})
    for derived in draws(likely_cause, bank):
        assert sum("nibs" in text for text in wrong_texts(derived)) <= 1


def test_too_few_causes_elsewhere_give_no_question(tmp_path):
    none = {"causes": "[{family: method, text: Something else}]"}
    many = ", ".join(
        f"{{family: method, text: Reason {n} for sags, asked: true}}" for n in range(5)
    )
    changed = dict.fromkeys(("Craters", "Rings", "Nibs", "Haze"), none)
    bank = bank_with(tmp_path, **changed, Sags={"causes": f"[{many}]"})
    assert set(draws(likely_cause, bank)) == {None}


def test_a_remedy_that_fits_other_faults_is_not_asked_for(tmp_path):
    bank = bank_with(tmp_path, Pinholes={"remedy_asked": "false"})
    assert set(draws(right_remedy, bank)) == {None}
    for derived in draws(right_remedy, bank, "sags"):
        assert "Sand the pinholes away" not in wrong_texts(derived)


def test_the_same_remedy_twice_is_never_offered_twice(tmp_path):
    same = {"remedy": "Sand it all off"}
    bank = bank_with(tmp_path, Pinholes=same, Craters={"remedy": "Sand it all off."}, Sags=same)
    for derived in draws(right_remedy, bank):
        assert wrong_texts(derived) == {
            "Sand the rings away",
            "Sand the nibs away",
            "Sand the haze away",
        }
    for derived in draws(right_remedy, bank, "haze"):
        assert sum(text.startswith("Sand it all off") for text in wrong_texts(derived)) <= 1


def test_telling_apart_keys_the_look_of_the_named_fault(bank):
    for derived in draws(tell_apart, bank):
        assert "'Pinholes' and 'Craters' are easy to mix up" in derived.stem
        assert right(derived).text == "The film shows pinholes marks."
        assert right(derived).feedback == "Craters have a raised rim."
        assert "The film shows craters marks." in wrong_texts(derived)


def test_a_fault_without_look_alikes_gives_no_question_of_telling_apart(bank):
    assert set(draws(tell_apart, bank, "sags")) == {None}
