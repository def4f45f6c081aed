"""Loading: every folder is read, every file that cannot be is named once."""

from pathlib import Path

import pytest

from generator.bank import Bank, load_bank, module_of, objective_of
from generator.diagnostics import Place
from tests.bank.small_bank import SMALL_PROJECT, put, said, small_project


def loaded(root: Path) -> Bank:
    bank, problems = load_bank(root / "question_bank", root / "course")
    assert problems == ()
    assert bank is not None
    return bank


def test_every_kind_of_record_is_read_under_its_name() -> None:
    bank = loaded(SMALL_PROJECT)
    assert bank.sheet.title == "Small training bank"
    assert [module.module for module in bank.modules] == ["filler", "film_build", "curing"]
    assert set(bank.sources) == {"wall_chart", "film_slides", "old_notes"}
    assert set(bank.glossary) == {"gel_time", "pot_life"}
    assert set(bank.procedures) == {"mix_filler"}
    assert set(bank.faults) == {"soft_filler", "stained_filler", "thin_film"}
    assert set(bank.tables) == {"hardener_by_heat"}
    assert set(bank.blueprints) == {"quick_check"}
    assert [lesson.name for lesson in bank.lessons] == ["filler", "film_build"]
    assert "film_build/dry_from_wet/wet_for_target" in bank.items
    assert not bank.is_partly_read


def test_an_entry_knows_its_place_and_the_place_of_each_part() -> None:
    bank = loaded(SMALL_PROJECT)
    path = "question_bank/items/filler/mix.yml"
    item = bank.items["filler/mix/streaks"]
    assert item.place() == Place(path, 1, 1)
    assert item.place("level") == Place(path, 3, 10)
    assert item.key("level") == Place(path, 3, 3)
    assert item.place("options", 1, "text") == Place(path, 11, 13)
    fault = bank.faults["soft_filler"]
    assert fault.place() == Place("question_bank/faults/soft_filler.yml", 1, 1)


def test_objectives_are_named_with_their_module_and_only_taught_modules_have_a_lesson() -> None:
    bank = loaded(SMALL_PROJECT)
    assert set(bank.objectives) == {
        "filler/mix",
        "filler/shape",
        "film_build/dry_from_wet",
        "film_build/coats",
        "curing/tell_apart",
    }
    assert [module.module for module in bank.taught] == ["filler", "film_build"]
    assert module_of("filler/mix/streaks") == module_of("filler/mix") == "filler"
    assert objective_of("filler/mix/streaks") == "filler/mix"


def test_a_bank_is_read_alike_from_anywhere_and_twice(tmp_path: Path) -> None:
    root = small_project(tmp_path)
    assert loaded(root) == loaded(root) == loaded(SMALL_PROJECT)


def test_a_bank_without_a_course_has_no_lessons_and_no_complaint() -> None:
    bank, problems = load_bank(SMALL_PROJECT / "question_bank")
    assert problems == ()
    assert bank is not None
    assert bank.lessons == ()


@pytest.mark.parametrize("name", ["bank.yml", "outline.yml"])
def test_without_sheet_or_outline_there_is_no_bank(tmp_path: Path, name: str) -> None:
    root = small_project(tmp_path)
    put(root, name, "(removed)")
    bank, problems = load_bank(root / "question_bank", root / "course")
    assert bank is None
    assert [said(problem) for problem in problems] == [
        f"question_bank/{name}:1:1: error: the file is missing [file-unreadable]"
    ]


def test_an_empty_folder_brings_one_message_for_each_needed_file(tmp_path: Path) -> None:
    folder = tmp_path / "question_bank"
    folder.mkdir()
    bank, problems = load_bank(folder, tmp_path / "course")
    assert bank is None
    assert [problem.place.path for problem in problems] == [
        f"question_bank/{name}.yml" for name in ("bank", "outline", "sources", "glossary")
    ]


def test_a_folder_in_the_place_of_a_file_cannot_be_read(tmp_path: Path) -> None:
    root = small_project(tmp_path)
    put(root, "glossary.yml", "(removed)")
    (root / "question_bank" / "glossary.yml").mkdir()
    _, problems = load_bank(root / "question_bank")
    assert [said(problem) for problem in problems] == [
        "question_bank/glossary.yml:1:1: error: the file cannot be read [file-unreadable]"
    ]


def test_a_device_or_a_file_without_end_is_not_read(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    root = small_project(tmp_path)
    put(root, "glossary.yml", "(removed)")
    (root / "question_bank" / "glossary.yml").symlink_to("/dev/zero")
    monkeypatch.setattr("generator.bank.reading.file_text.MOST_BYTES", 3000)
    put(root, "places.yml", "# " + "x" * 3000)
    _, problems = load_bank(root / "question_bank")
    found = [said(problem) for problem in problems if problem.place.line == 1]
    assert (
        "question_bank/glossary.yml:1:1: error: the file cannot be read [file-unreadable]" in found
    )
    large = "a file of the bank or the course has at most 0 MB"
    assert f"question_bank/places.yml:1:1: error: {large} [file-unreadable]" in found


@pytest.mark.parametrize(
    ("path", "text", "group", "name"),
    [
        ("glossary.yml", "gel_time: {term: gel time}\n", "glossary", "gel_time"),
        ("sources.yml", "a: [\n", "sources", "any_key_at_all"),
        ("faults/soft_filler.yml", "title: Soft\n", "faults", "soft_filler"),
        ("items/filler/mix.yml", "streaks: {kind: chioce}\n", "items", "filler/mix/streaks"),
        ("items/filler/mix.yml", "{\n", "items", "filler/mix/any_item"),
    ],
)
def test_what_could_not_be_read_is_remembered_by_name(
    tmp_path: Path, path: str, text: str, group: str, name: str
) -> None:
    root = small_project(tmp_path)
    put(root, path, text)
    bank, problems = load_bank(root / "question_bank", root / "course")
    assert bank is not None
    assert {problem.place.path for problem in problems} == {f"question_bank/{path}"}
    assert bank.is_partly_read
    assert bank.was_unread(group, name)
    assert not bank.was_unread("tables", "hardener_by_heat")


def test_one_broken_record_leaves_its_neighbours_readable(tmp_path: Path) -> None:
    root = small_project(tmp_path)
    put(root, "glossary.yml", "gel_time: {term: gel time}\npot_life: {term: a, meaning: b}\n")
    bank, problems = load_bank(root / "question_bank", root / "course")
    assert len(problems) == 1
    assert bank is not None
    assert set(bank.glossary) == {"pot_life"}
