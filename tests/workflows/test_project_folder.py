"""The project is found from any folder in it, and knows where its parts lie."""

from pathlib import Path

import pytest

from generator.workflows import Refused
from generator.workflows.project import bank_hash, find_project, known_plan
from tests.bank.small_bank import small_project


@pytest.fixture
def root(tmp_path: Path) -> Path:
    return small_project(tmp_path)


@pytest.mark.parametrize("below", [".", "question_bank", "question_bank/items/filler", "course"])
def test_a_project_is_found_from_inside(root: Path, below: str) -> None:
    found = find_project(root / below)
    assert found is not None and found.root.samefile(root)


def test_there_is_none_above_it(root: Path) -> None:
    assert find_project(root.parent) is None


def test_no_name_of_a_private_file_holds_a_person(root: Path) -> None:
    project = find_project(root)
    assert project is not None
    assert project.certificate(3) == project.records / "certificates" / "certificate-3.pdf"
    assert project.export(7) == project.records / "exports" / "person-7.json"


def test_the_hash_changes_with_any_byte_and_any_name(root: Path) -> None:
    project = find_project(root)
    assert project is not None
    seen = {bank_hash(project)}
    sheet = root / "question_bank" / "bank.yml"
    sheet.write_text(sheet.read_text("utf-8") + "\n", "utf-8")
    seen.add(bank_hash(project))
    (root / "question_bank" / "faults" / "thin_film.yml").rename(
        root / "question_bank" / "faults" / "thinner_film.yml"
    )
    seen.add(bank_hash(project))
    assert len(seen) == 3


def test_a_plan_is_known_by_its_file(root: Path) -> None:
    project = find_project(root)
    assert project is not None
    assert known_plan(project, "quick_check") == "quick_check"
    near = known_plan(project, "quick_chek")
    assert isinstance(near, Refused) and near.misuse
    assert near.sentence == "no paper is called 'quick_chek'; did you mean 'quick_check'?"
    far = known_plan(project, "zzz")
    assert isinstance(far, Refused) and far.sentence.endswith("The papers are: quick_check")
