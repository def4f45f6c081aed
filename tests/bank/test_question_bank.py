"""The bank of this repository: sound, large enough, and covering what its course teaches."""

from collections import Counter
from functools import cache

from generator.bank import Bank, module_of
from generator.bank.counts import bank_figures
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
        pools = Counter(entry.record.pool for name, entry in items if module_of(name) == module)
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
        if entry.record.pool != "study" and memory & {tag.key for tag in entry.record.source}
    ]
    assert resting == []


def test_every_blueprint_draws_on_taught_modules_only() -> None:
    bank, _ = found()
    for entry in bank.blueprints.values():
        for cell in entry.record.cells:
            assert (cell.module or module_of(cell.objective or "")) in taught(), entry.name
