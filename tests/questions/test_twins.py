"""Twins: what asks the same thing, directly or through others, counts as one."""

from generator.questions import askables
from generator.questions.twins import twin_groups
from tests.questions.small_bank import FIRST_JOB, FULL, WASH_ORDER, bank_of, items


def test_twins_of_twins_belong_together():
    groups = twin_groups({"b": ["c"], "d": ["c"], "x": ["y"]})
    assert groups["b"] == groups["c"] == groups["d"] == "b"
    assert groups["x"] == groups["y"] == "x"


def test_what_has_no_twin_has_no_group():
    assert twin_groups({}) == {}


def test_an_item_and_every_question_of_its_twin_record_are_of_one_group(tmp_path):
    twin = "twin_of: [procedures/wash_trailer]\n"
    files = {
        **FULL,
        "items/cleaning/wash.yml": items(
            order=WASH_ORDER + twin, again=WASH_ORDER + twin, first=FIRST_JOB
        ),
    }
    known = {asked.name: asked for asked in askables(bank_of(tmp_path, files))}
    group = known["cleaning/wash/order"].group
    assert known["cleaning/wash/again"].group == group
    assert known["procedures/wash_trailer/order"].group == group
    assert known["procedures/wash_trailer/before"].group == group
    assert known["procedures/mix_filler/order"].group == "procedures/mix_filler"
    assert known["cleaning/wash/first"].group == "cleaning/wash/first"
    assert known["cleaning/wash/order"].record == "cleaning/wash/order"
