"""A question's cautions: its own, and those of the hazards of the work that it names."""

import pytest

from generator.questions import as_plain, askables, hazard_cautions
from tests.questions.small_bank import FIRST_JOB, FULL, MIX_FILLER, bank_of, items


def hazard(title, caution):
    return (
        f"{{title: {title}, hurts: eyes, guards: [goggles], first_aid: water, "
        f"caution: {caution}, source: common_practice}}"
    )


FILES = {
    **FULL,
    "hazards.yml": "\n".join(
        (
            "dust: " + hazard("Dust", "Mask on."),
            "peroxide: " + hazard("Peroxide", "Goggles on."),
            "sparks: " + hazard("Sparks", "Shield down."),
        )
    ),
    "items/cleaning/wash.yml": items(
        first=FIRST_JOB + "meets: [sparks, dust]\ncaution: Mind the step.\n",
        handled=FIRST_JOB + "meets: [dust]\nhands_on: true\n",
    ),
    "procedures/mix_filler.yml": MIX_FILLER.replace(
        "action: Knead the paste in its tube",
        "action: Knead the paste in its tube, meets: [peroxide]",
    ).replace("action: Key the bed", "action: Key the bed, meets: [dust]"),
}


@pytest.fixture(scope="module")
def bank(tmp_path_factory):
    return bank_of(tmp_path_factory.mktemp("bank"), FILES)


@pytest.fixture(scope="module")
def known(bank):
    return {asked.name: asked for asked in askables(bank)}


def told(question):
    return [(caution.hazard, caution.text) for caution in question.cautions]


def test_hazards_are_told_once_each_in_the_order_of_their_file(bank):
    assert hazard_cautions(bank, ["sparks", "dust", "sparks"]) == ("Mask on.", "Shield down.")
    assert hazard_cautions(bank, []) == ()


def test_an_item_tells_its_own_caution_and_those_of_its_hazards(known):
    question = known["cleaning/wash/first"].make("A", ())
    assert told(question) == [
        ("", "Mind the step."),
        ("dust", "Mask on."),
        ("sparks", "Shield down."),
    ]


def test_a_caution_comes_with_the_feedback_and_not_beside_the_question(known):
    plain = as_plain(known["cleaning/wash/first"].make("A", ()))
    assert plain["caution"] is None
    assert plain["cautions"][0] == {"hazard": "", "text": "Mind the step."}


def test_where_the_act_itself_can_hurt_it_stands_beside_the_question_alone(known):
    plain = as_plain(known["cleaning/wash/handled"].make("A", ()))
    assert plain["hands_on"]
    assert plain["caution"] == "Mask on."
    assert plain["cautions"] == []


def test_a_question_on_a_procedure_tells_the_hazards_of_the_steps_it_names(known):
    own = ("", "Peroxide paste burns eyes. Goggles on first.")
    asked = known["procedures/mix_filler/order"]
    for number in range(20):
        question = asked.make(f"form {number}", ())
        steps = {text for _, text in question.key.steps}
        hazards = [
            ("dust", "Mask on.") if "Key the bed" in steps else None,
            ("peroxide", "Goggles on.") if "Knead the paste in its tube" in steps else None,
        ]
        assert told(question) == [own, *filter(None, hazards)]


def test_wrong_options_bring_no_caution(known):
    asked = known["procedures/mix_filler/before"]
    for number in range(20):
        question = asked.make(f"form {number}", ())
        right = next(option.text for option in question.key.options if option.right)
        named = question.stem + right
        assert (("dust", "Mask on.") in told(question)) == ("ey the bed" in named)
