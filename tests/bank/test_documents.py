"""Whole documents: an item that names one is printed with all of its lines."""

from pathlib import Path

from generator.bank.reading import load_bank
from generator.bank.record_version import record_version
from tests.bank.small_bank import put, small_project

ITEM = """how_much:
  kind: written
  level: recall
  use: study
  source: common_practice
  sheet: filler
  reads_sheet: true
  stem: Say how much hardener this filler takes.
  points:
    - {text: 2 percent, marks: 1}
  model: Two percent by weight.
"""


def test_an_item_takes_every_line_of_the_document_it_names(tmp_path: Path) -> None:
    project = small_project(tmp_path)
    put(project, "items/filler/shape.yml", ITEM)
    bank, problems = load_bank(project / "question_bank")
    assert bank is not None and not problems
    sheet = bank.items["filler/shape/how_much"].record.sheet
    assert sheet is not None
    assert sheet.title == "Made-up data sheet, filler"
    assert sheet.rows == (
        ("Mixing",),
        ("Hardener", "2 % by weight"),
        ("Sanding",),
        ("Earliest", "20 min at 20 °C"),
    )


def test_a_changed_line_of_the_document_is_another_version_and_is_judged_anew(
    tmp_path: Path,
) -> None:
    project = small_project(tmp_path)
    put(project, "items/filler/shape.yml", ITEM)
    before, _ = load_bank(project / "question_bank")
    document = project / "question_bank" / "data_sheets" / "filler.yml"
    document.write_text(document.read_text("utf-8").replace("2 %", "3 %"), "utf-8")
    after, _ = load_bank(project / "question_bank")
    assert before is not None and after is not None
    old, new = (bank.items["filler/shape/how_much"] for bank in (before, after))
    assert record_version(old.record) != record_version(new.record)
    assert old.written != new.written
