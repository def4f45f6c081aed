"""Counts: what the small bank holds, and no item counted above its weakest source."""

from pathlib import Path

from generator.bank import load_bank
from generator.bank.counts import bank_figures
from tests.bank.small_bank import SMALL_PROJECT, put, small_project

MEMORY = """\
by_heart:
  kind: written
  level: recall
  use: study
  source: [common_practice, "wall_chart, panel 4", "old_notes, page 2"]
  stem: Say why a block is used.
  points:
    - {text: It spans low places, marks: 1}
  model: It spans low places.
"""


def figures(root: Path) -> dict[str, dict[str, object]]:
    bank, _ = load_bank(root / "question_bank", root / "course")
    assert bank is not None
    return bank_figures(bank)


def test_the_small_bank_is_counted_by_kind_module_pool_and_source() -> None:
    assert figures(SMALL_PROJECT) == {
        "counts": {
            "items": 7,
            "by_kind": {
                "choice": 2,
                "match": 1,
                "multiple_response": 1,
                "numeric": 1,
                "order": 1,
                "written": 1,
            },
            "by_module": {"filler": 5, "film_build": 2},
            "by_source": {"published": 3, "common_practice": 4, "from_memory": 0},
            "by_pool": {"both": 1, "exam": 3, "study": 3},
            "numeric_templates": 1,
            "procedures": 1,
            "faults": 3,
            "tables": 1,
            "data_sheets": 1,
            "beliefs": 1,
            "figures": 1,
            "lessons": 2,
            "glossary": 2,
        },
        "coverage": {"objectives": 5, "covered": 4},
    }


def test_an_item_counts_as_its_weakest_source(tmp_path: Path) -> None:
    root = small_project(tmp_path)
    put(root, "items/filler/shape.yml", MEMORY)
    counted = figures(root)["counts"]["by_source"]
    assert counted == {"published": 3, "common_practice": 4, "from_memory": 1}


def test_an_objective_without_item_or_record_is_not_covered(tmp_path: Path) -> None:
    root = small_project(tmp_path)
    put(root, "faults/thin_film.yml", "(removed)")
    assert figures(root)["coverage"] == {"objectives": 5, "covered": 3}
