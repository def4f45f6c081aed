"""Papers of the real bank: none answers itself, and what is must-pass is critical.

540 forms, 30 of each plan, chosen as `issue` chooses them.
"""

from collections import Counter
from functools import cache

import pytest

from generator.assembly import assemble, form_labels
from generator.assembly.supply.plan import cell_counts
from generator.bank import Bank
from generator.bank.models import Blueprint
from generator.questions import Askable
from generator.questions.giveaways import bank_giveaways, kept_apart
from tests.bank.small_bank import REPOSITORY
from tests.real import real_askables, real_bank

FORMS = 30
PLANS = sorted(path.stem for path in (REPOSITORY / "question_bank" / "blueprints").glob("*.yml"))


@cache
def shipped() -> tuple[Bank, dict[str, Askable]]:
    return real_bank(), {asked.name: asked for asked in real_askables()}


def critical_cells(plan: Blueprint) -> Counter[str]:
    """Count the questions that a plan asks for each hazard."""
    found: Counter[str] = Counter()
    for cell, count in zip(plan.cells, cell_counts(plan), strict=True):
        if cell.critical:
            found[cell.critical] += count
    return found


def test_every_module_that_is_taught_has_a_check_of_its_own() -> None:
    taught = [module.module for module in shipped()[0].taught]
    assert len(taught) == 18
    assert {f"{module}_check" for module in taught} <= set(PLANS)


@pytest.mark.parametrize("name", PLANS)
def test_thirty_forms_hold_no_giveaway_and_no_must_pass_question_without_its_hazard(
    name: str,
) -> None:
    bank, known = shipped()
    plan = bank.blueprints[name]
    apart = [set(pair) for pair in kept_apart(bank)]
    assert apart
    built = assemble(bank, plan, "fair", form_labels(FORMS), known=tuple(known.values()))
    assert len(built.forms) == FORMS
    for form in built.forms:
        names = [entry.question.name for entry in form.questions]
        standing = {*names, *(known[name].record for name in names)}
        assert [pair for pair in apart if pair <= standing] == [], form.label
        groups = Counter(known[name].group for name in names)
        assert max(groups.values()) == 1, form.label
        gate = [form.questions[number - 1].question for number in form.gate]
        assert all(question.critical for question in gate), form.label
        hazards = Counter(q.critical.hazard for q in gate if q.critical)
        assert hazards == critical_cells(plan.record), form.label


def test_the_list_of_the_shipped_bank_is_the_one_that_its_texts_give() -> None:
    bank, known = shipped()
    assert bank.giveaways is not None
    listed = [(one.question, one.gives_away) for one in bank.giveaways.record.found]
    found = bank_giveaways(bank, tuple(known.values()))
    assert listed == [(one.question, one.gives_away) for one in found]


@pytest.mark.parametrize(
    "pair",
    [
        # read on issued forms, each confirmed by hand
        (
            "booth_climate/change_filters/what_passes_the_filter",
            "booth_climate/change_filters/capture_figure",
        ),
        ("faults/gelled_mix/remedy", "faults/dirt_nibs/name"),
        ("faults/pinholes_in_filler/remedy", "filler/pinholes/which_putty"),
        (
            "cleaning/strip_method/lead_dust_clean_up",
            "filler/dust_control/old_lead_paint",
        ),
        ("cleaning/two_cloth_wipe/wipe_in_order", "procedures/two_cloth_wipe"),
        ("primers/mix_and_strain/order_of_mixing", "procedures/mix_two_pack"),
        ("metal_preparation/rust_treatment/rust_in_order", "procedures/rust_treatment"),
        ("cleaning/wash_order/intake_in_order", "procedures/intake_wash"),
    ],
)
def test_what_readers_confirmed_never_shares_a_paper(pair: tuple[str, str]) -> None:
    bank, known = shipped()
    one, other = pair
    group = {record: asked.group for asked in known.values() for record in (asked.record,)}
    is_listed = tuple(sorted(pair)) in kept_apart(bank)
    apart = {n for asked in known.values() if asked.record == one for n in asked.not_with}
    is_twin = one in group and other in group and group[one] == group[other]
    assert is_listed or is_twin or other in apart
