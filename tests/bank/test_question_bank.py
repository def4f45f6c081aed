"""The bank of this repository: sound, large enough, and covering what its course teaches."""

from collections import Counter
from functools import cache

from generator.assembly import assemble, build_forms
from generator.assembly.supply.plan import cell_counts
from generator.bank import Bank, module_of
from generator.bank.counts import bank_figures
from generator.bank.models import Blueprint
from generator.diagnostics import Problem
from tests.bank.small_bank import REPOSITORY, everything_found, said

FIRST_SEVEN = (
    "cleaning",
    "metal_preparation",
    "filler",
    "abrasives",
    "primers",
    "mixing",
    "film_build",
)


@cache
def found() -> tuple[Bank, tuple[Problem, ...]]:
    bank, problems = everything_found(REPOSITORY)
    assert bank is not None
    return bank, problems


def test_the_bank_has_no_error() -> None:
    assert [said(p) for p in found()[1] if p.severity == "error"] == []


def test_the_bank_has_no_warning() -> None:
    assert [said(p) for p in found()[1] if p.severity == "warning"] == []


def test_the_bank_is_as_large_as_the_course_needs() -> None:
    counts = bank_figures(found()[0])["counts"]
    assert counts["items"] >= 140
    assert counts["numeric_templates"] >= 40
    assert counts["procedures"] >= 16
    assert counts["faults"] >= 20


def test_the_counts_by_kind_module_source_and_pool_all_add_up() -> None:
    counts = bank_figures(found()[0])["counts"]
    for name in ("by_kind", "by_module", "by_source", "by_pool"):
        assert sum(counts[name].values()) == counts["items"], name


def taught() -> list[str]:
    return [module.module for module in found()[0].taught]


def test_eighteen_modules_are_outlined_and_at_least_seven_are_taught() -> None:
    assert [module.code for module in found()[0].modules] == [f"M{n:02}" for n in range(1, 19)]
    assert set(FIRST_SEVEN) <= set(taught())


def test_every_objective_of_a_taught_module_is_asked_about() -> None:
    bank, _ = found()
    asked = {name.rpartition("/")[0] for name in bank.items}
    asked |= {entry.record.objective for entry in bank.procedures.values()}
    asked |= {entry.record.objective for entry in bank.faults.values()}
    for module in taught():
        wanted = {name for name in bank.objectives if module_of(name) == module}
        assert wanted, module
        assert wanted - asked == set()


def test_a_taught_module_keeps_questions_for_exams_and_shows_others() -> None:
    for module in taught():
        items = found()[0].items.items()
        pools = Counter(entry.record.use for name, entry in items if module_of(name) == module)
        assert pools["exam"] >= 3, module
        assert pools["study"] >= 3, module


def test_items_ask_for_more_than_memory() -> None:
    levels = Counter(entry.record.level for entry in found()[0].items.values())
    assert set(levels) == {"recall", "apply", "diagnose"}
    assert levels["recall"] < sum(levels.values()) / 2


def test_no_exam_item_rests_on_memory() -> None:
    bank, _ = found()
    memory = {name for name, entry in bank.sources.items() if entry.record.status == "from_memory"}
    memory.add("from_memory")
    resting = [
        name
        for name, entry in bank.items.items()
        if entry.record.use != "study" and memory & {tag.key for tag in entry.record.source}
    ]
    assert resting == []


def blueprint(name: str) -> Blueprint:
    return found()[0].blueprints[name].record


def test_a_check_of_twenty_items_draws_on_each_taught_module_and_on_that_one_alone() -> None:
    for module in FIRST_SEVEN:
        plan = blueprint(f"{module}_check")
        assert {cell.module for cell in plan.cells} == {module}
        assert sum(cell_counts(plan)) == 20


def test_the_final_paper_has_a_hundred_questions_and_a_gate() -> None:
    plan = blueprint("final_paper")
    assert sum(cell_counts(plan)) == plan.questions == 100
    assert sum(cell.count or 0 for cell in plan.cells if cell.critical) >= 2
    assert {cell.module for cell in plan.cells} >= {*FIRST_SEVEN, "health_safety", "spray_gun"}


# 40 CFR 63.11173(f)(2): the topics of set-up and technique by name, and the four groups
SPRAY_TOPICS = (
    ("(f)(2)(i)", "viscosity"),
    ("(f)(2)(i)", "tip"),
    ("(f)(2)(i)", "pattern"),
    ("(f)(2)(i)", "air pressure and volume"),
    ("(f)(2)(i)", "fluid delivery rate"),
    ("(f)(2)(ii)", "distance and angle"),
    ("(f)(2)(ii)", "banding and overlap"),
    ("(f)(2)(ii)", "lead and lag"),
    ("(f)(2)(iii)", "filters"),
    ("(f)(2)(iii)", "booth upkeep"),
    ("(f)(2)(iv)", "the rule"),
)


def test_the_painter_paper_covers_each_topic_of_the_spray_rule() -> None:
    topics = [cell.topic or "" for cell in blueprint("painter_training").cells]
    for group, word in SPRAY_TOPICS:
        assert any(group + " " in topic and word in topic for topic in topics), (group, word)
    assert all(cell.count for cell in blueprint("painter_training").cells)


def test_the_new_hire_check_fits_into_25_minutes() -> None:
    plan = blueprint("new_hire_check")
    bank = found()[0]
    built = assemble(bank, bank.blueprints["new_hire_check"], "counter", ("A", "B", "C"))
    assert plan.minutes == 25
    assert built.balance.minutes[1] <= 25
    assert all(len(form.gate) == 3 for form in built.forms)


def test_every_shipped_plan_gives_forms_within_its_time() -> None:
    bank = found()[0]
    for name, entry in bank.blueprints.items():
        built = assemble(bank, entry, "shipped", ("A", "B"))
        counts = sum(cell_counts(entry.record))
        assert [len(form.questions) for form in built.forms] == [counts, counts], name
        assert built.balance.minutes[1] <= entry.record.minutes, name


def test_numbers_only_asks_for_nothing_but_numbers() -> None:
    bank = found()[0]
    (form,) = build_forms(bank, bank.blueprints["numbers_only"], "numbers", ("A",))
    assert {entry.question.kind for entry in form.questions} == {"numeric"}
