"""The list of giveaways: written whole, cleared by hand, and told where it no longer fits."""

from dataclasses import replace

import pytest
import yaml

from generator.assembly.supply.eligibility import sets_apart
from generator.bank import load_bank
from generator.bank.models import Blueprint
from generator.questions import askables
from generator.questions.giveaways import (
    bank_giveaways,
    kept_apart,
    list_problems,
    list_text,
)
from tests.questions.small_bank import FULL, bank_of, items, write_bank

CAPTURE = """
kind: choice
level: recall
use: exam
source: common_practice
stem: Exhaust filters must catch a share of the mist. How much at least?
options:
  - {text: 98 %, right: true, feedback: By rule.}
  - {text: 90 %, feedback: More.}
  - {text: 95 %, feedback: More.}
"""
TOLD = """
kind: choice
level: apply
use: exam
source: common_practice
stem: A new filter catches 98 % of the mist. What goes through it all the same?
options:
  - {text: Vapor, right: true, feedback: It is a gas.}
  - {text: Coarse drops, feedback: They stick.}
"""


def crowd(number):
    return (
        f"kind: choice\nlevel: recall\nuse: exam\nsource: common_practice\n"
        f"stem: Thing{number} about part{number}?\noptions:\n"
        f"  - {{text: Word{number}, right: true, feedback: So.}}\n"
        f"  - {{text: Other{number}, feedback: No.}}\n"
    )


def files(**more):
    crowded = items(**{f"crowd_{n}": crowd(n) for n in range(400)})
    asked = items(capture=more.pop("capture", CAPTURE), told=more.pop("told", TOLD))
    return {
        **{name: text for name, text in FULL.items() if not name.startswith("items/")},
        "items/filler/shape.yml": crowded,
        "items/filler/mix.yml": asked,
        **more,
    }


PAIR = ("filler/mix/told", "filler/mix/capture")


@pytest.fixture(scope="module")
def bank(tmp_path_factory):
    return bank_of(tmp_path_factory.mktemp("bank"), files())


@pytest.fixture(scope="module")
def known(bank):
    return askables(bank)


def names(found):
    return [(one.question, one.gives_away) for one in found]


def test_the_bank_tells_what_gives_away_what(bank, known):
    assert PAIR in names(bank_giveaways(bank, known))


def test_a_study_item_is_left_out_as_it_stands_on_no_paper(bank, known):
    study = [replace(a, use="study") if a.name == PAIR[0] else a for a in known]
    assert PAIR not in names(bank_giveaways(bank, study))


def test_what_its_author_keeps_apart_or_calls_a_twin_is_left_out(bank, known):
    apart = [replace(a, not_with=(PAIR[1],)) if a.name == PAIR[0] else a for a in known]
    assert PAIR not in names(bank_giveaways(bank, apart))
    kin = [replace(a, kin="both") if a.name in PAIR else a for a in known]
    assert PAIR not in names(bank_giveaways(bank, kin))


def with_list(tmp_path, text):
    return bank_of(tmp_path, files(**{"giveaways.yml": text}))


def test_a_list_that_was_written_fits_and_keeps_the_two_apart(bank, known, tmp_path):
    text = list_text(bank, known, "")
    listed = with_list(tmp_path, text)
    assert list(list_problems(listed, known)) == []
    assert tuple(sorted(PAIR)) in kept_apart(listed)
    plan = Blueprint.model_construct(apart=())
    assert any(set(row) == set(PAIR) for row in sets_apart(plan, known, kept_apart(listed)))


def test_without_a_list_it_is_said_what_to_type(bank, known):
    (problem,) = list_problems(bank, known)
    assert problem.rule == "giveaways-out-of-date"
    assert "guidecoat check --write-giveaways" in problem.hint


def test_what_was_cleared_stays_word_for_word_and_may_share_a_paper(bank, known, tmp_path):
    cleared = (
        "cleared:\n  # read by the lead\n"
        f"  - {{question: {PAIR[1]}, gives_away: {PAIR[0]}, reason: Both print it.}}\n"
    )
    text = list_text(bank, known, "found: []\n" + cleared)
    assert text.endswith(cleared)
    assert list_text(bank, known, text) == text
    listed = with_list(tmp_path, text)
    assert list(list_problems(listed, known)) == []
    assert tuple(sorted(PAIR)) not in kept_apart(listed)


def test_the_list_is_plain_yaml(bank, known):
    read = yaml.safe_load(list_text(bank, known, ""))
    assert read["cleared"] == []
    assert {"question": PAIR[0], "gives_away": PAIR[1], "words": "98 %"} in read["found"]


def test_a_bank_reads_without_a_list(tmp_path):
    bank, problems = load_bank(write_bank(tmp_path, FULL))
    assert problems == ()
    assert bank is not None
    assert kept_apart(bank) == ()
