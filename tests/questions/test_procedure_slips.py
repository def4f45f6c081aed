"""Slips in a procedure: which step is missing, and what goes wrong the other way round."""

import pytest

from generator.questions.derived.procedure_slips import (
    FEWEST_WRONG,
    what_goes_wrong,
    which_is_missing,
)
from generator.questions.drawing.seeded_random import SeededRandom
from tests.questions.small_bank import MIX_FILLER, WASH_TRAILER, bank_of

LABELS = [str(number) for number in range(40)]
ROW = ("Sweep the bay", "Wet the floor", "Hang the panel", "Spray the coat", "Close the vents")


def work(title, *steps, pairs=(), objective="filler/mix"):
    """Write a procedure of steps named a, b, c; pairs are (first, then, class, result, harm)."""
    listed = "".join(f"  - {{step: {'abcdefg'[n]}, action: {s}}}\n" for n, s in enumerate(steps))
    tied = "".join(
        f"  - {{first: {first}, then: {then}, class: {its_class},"
        f" reason: Because {first} leads to {then}, goes_wrong: {result}, harm: {harm}}}\n"
        for first, then, its_class, result, harm in pairs
    )
    head = f"title: {title}\nobjective: {objective}\nsource: common_practice\n"
    return f"{head}steps:\n{listed}pairs:\n{tied}"


def ruins(first, then, result="It spoils", harm="damage"):
    return (first, then, "ruins", result, harm)


def draws(maker, folder, **procedures):
    """Draw from the procedure named 'asked' in a bank of some procedures."""
    files = {f"procedures/{name}.yml": text for name, text in procedures.items()}
    bank = bank_of(folder, files)
    return [maker(bank, bank.procedures["asked"], SeededRandom(label)) for label in LABELS]


def right(derived):
    (option,) = [option for option in derived.key.options if option.right]
    return option


def wrong_texts(derived):
    return [option.text for option in derived.key.options if not option.right]


CHAIN = [ruins("a", "b"), ruins("b", "c"), ruins("c", "d"), ruins("d", "e")]


def test_where_the_pairs_force_enough_steps_elsewhere_no_step_of_another_job_is_offered(tmp_path):
    asked = work("Spray", *ROW, pairs=CHAIN)
    # of five steps in a row each gap has two steps on the far side of its neighbours
    for derived in draws(which_is_missing, tmp_path, asked=asked, wash=WASH_TRAILER):
        wrong = wrong_texts(derived)
        assert set(wrong) <= set(ROW)
        assert len(wrong) == 2


def test_steps_of_another_job_join_where_the_own_ones_are_too_few(tmp_path):
    asked = work("Spray", *ROW[:4], pairs=CHAIN[:3])
    for derived in draws(which_is_missing, tmp_path, asked=asked, wash=WASH_TRAILER):
        wrong = wrong_texts(derived)
        assert len([text for text in wrong if text in ROW]) == 1
        assert len(wrong) == 3


def test_a_step_that_could_stand_in_the_gap_as_well_is_no_wrong_option(tmp_path):
    # the floor may be wetted at any time before the coat, so it is forced past no neighbour
    asked = work("Spray", *ROW, pairs=[ruins("a", "c"), ruins("c", "d"), ruins("d", "e")])
    for derived in draws(which_is_missing, tmp_path, asked=asked, wash=WASH_TRAILER):
        assert "Wet the floor" not in wrong_texts(derived)


def test_only_a_step_that_a_scoring_pair_names_goes_missing(tmp_path):
    habit = ("b", "c", "habit", "It takes longer", "damage")
    asked = work("Spray", *ROW, pairs=[ruins("a", "c"), habit, ruins("c", "d"), ruins("d", "e")])
    missing = {
        right(d).text for d in draws(which_is_missing, tmp_path, asked=asked, w=WASH_TRAILER)
    }
    assert missing == {"Hang the panel", "Spray the coat"}


def test_a_gap_with_too_few_wrong_steps_is_not_asked_about(tmp_path):
    # alone in the bank, each gap of four steps has one step elsewhere
    alone = work("Spray", *ROW[:4], pairs=CHAIN[:3])
    assert set(draws(which_is_missing, tmp_path, asked=alone)) == {None}
    assert FEWEST_WRONG == 2


def test_an_optional_step_of_another_job_is_no_wrong_option(tmp_path):
    steps = "  - {step: towel, action: Towel the wing}\n"
    optional = WASH_TRAILER.replace(steps, steps.replace("wing}", "wing, optional: true}"))
    assert optional != WASH_TRAILER
    asked = work("Spray", *ROW[:4], pairs=CHAIN[:3])
    drawn = draws(which_is_missing, tmp_path, asked=asked, wash=optional)
    assert all("Towel the wing" not in wrong_texts(derived) for derived in drawn)
    assert any("Rinse loose grit away" in wrong_texts(derived) for derived in drawn)


def test_the_reason_is_that_of_a_pair_with_a_neighbour_where_there_is_one(tmp_path):
    pairs = [ruins("a", "c"), ruins("b", "c"), ruins("c", "e"), ruins("d", "e")]
    asked = work("Spray", *ROW, pairs=pairs)
    for derived in draws(which_is_missing, tmp_path, asked=asked, wash=WASH_TRAILER):
        if right(derived).text == "Hang the panel":
            assert right(derived).feedback == "Because b leads to c"


SLIPS = [
    ruins("a", "b", "Dust settles in the film", "contamination"),
    ruins("b", "c", "The floor dries too soon", "uneven_film"),
    ruins("c", "d", "The hook leaves a bare patch", "wrong_cure"),
    ruins("d", "e", "Vapour hangs in the bay", "breathing_harm"),
]


def far_job(*results):
    """Write a job of another module that goes wrong in some ways, each of another harm."""
    harms = ("fire", "damage", "wrong_choice")
    slips = [ruins("a", "b", text, harm) for text, harm in zip(results, harms, strict=False)]
    return work("Far job", "Soak it", "Scrub it", "Blow it", pairs=slips, objective="cleaning/wash")


def test_slips_of_the_same_job_are_enough_where_there_are_two(tmp_path):
    asked = work("Spray", *ROW, pairs=SLIPS)
    far = far_job("Wet panel coat burns", "The wet coat marks the panel")
    own = {result for _, _, _, result, _ in SLIPS}
    for derived in draws(what_goes_wrong, tmp_path, asked=asked, zfar=far):
        first, then = next((f, t) for f, t, _, result, _ in SLIPS if result == right(derived).text)
        apart = {r for f, t, _, r, _ in SLIPS if not {f, t} & {first, then}}
        if len(apart) >= FEWEST_WRONG:
            assert set(wrong_texts(derived)) == apart
        else:
            assert apart < set(wrong_texts(derived))
            assert set(wrong_texts(derived)) - own


def test_slips_of_another_job_join_only_where_they_speak_of_the_same_work(tmp_path):
    asked = work("Spray", *ROW, pairs=[ruins("a", "b", "The asked result", "contamination")])
    told = ("The wet coat burns", "A hook drops the panel on the floor", "The paste sets early")
    for derived in draws(what_goes_wrong, tmp_path, asked=asked, zfar=far_job(*told)):
        assert sorted(wrong_texts(derived)) == sorted(told[:2])


def test_nothing_is_asked_where_only_slips_of_other_work_are_left(tmp_path):
    asked = work("Spray", *ROW, pairs=[ruins("a", "b", "The asked result", "contamination")])
    told = ("The wet coat burns", "Paste spurts", "The paste sets early")
    assert set(draws(what_goes_wrong, tmp_path, asked=asked, zfar=far_job(*told))) == {None}


@pytest.mark.parametrize("harm", ["wrong_choice", "damage"])
def test_a_slip_with_the_same_harm_is_no_wrong_option(tmp_path, harm):
    asked = work("Spray", *ROW, pairs=[ruins("a", "b", "The asked result", harm)])
    other = work(
        "Other job",
        *("Stir it", "Pour it", "Strain it"),
        pairs=[
            ruins("a", "b", "The coat marks the panel", harm),
            ruins("a", "c", "The wet coat burns", "fire"),
            ruins("b", "c", "A soft coat on the panel", "wrong_cure"),
        ],
    )
    for derived in draws(what_goes_wrong, tmp_path, asked=asked, other=other):
        assert sorted(wrong_texts(derived)) == ["A soft coat on the panel", "The wet coat burns"]


def test_a_habit_neither_asks_nor_answers(tmp_path):
    habit = ("a", "c", "habit", "It takes an hour longer", "wrong_choice")
    asked = work("Spray", *ROW, pairs=[*SLIPS, habit])
    drawn = draws(what_goes_wrong, tmp_path, asked=asked, mix=MIX_FILLER)
    assert all("It takes an hour longer" not in str(derived) for derived in drawn)
