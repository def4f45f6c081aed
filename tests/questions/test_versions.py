"""An item keeps its version until something changes that a learner could notice."""

from generator.bank import load_bank, record_version
from generator.questions import askables, item_versions
from tests.bank.small_bank import small_project


def versions(root):
    bank, problems = load_bank(root / "question_bank")
    assert bank is not None, problems
    return item_versions(bank, askables(bank)), bank


def test_everything_that_can_be_asked_has_a_version(tmp_path):
    found, bank = versions(small_project(tmp_path))
    assert found.keys() == {asked.name for asked in askables(bank)}
    assert len(found) > 3


def test_two_questions_of_one_record_share_its_version(tmp_path):
    found, bank = versions(small_project(tmp_path))
    by_record = {}
    for asked in askables(bank):
        by_record.setdefault(asked.record, set()).add(found[asked.name])
    assert all(len(versions) == 1 for versions in by_record.values())


def test_a_changed_word_changes_the_version_of_that_item_only(tmp_path):
    root = small_project(tmp_path)
    before, bank = versions(root)
    name = next(iter(bank.items))
    module, objective, item = name.split("/")
    path = root / "question_bank" / "items" / module / f"{objective}.yml"
    text = path.read_text("utf-8")
    stem = bank.items[name].record.stem.split()[0]
    path.write_text(text.replace(stem, f"{stem} now", 1), "utf-8")
    after, _ = versions(root)
    assert [n for n in before if before[n] != after[n]] == [name]


def test_a_better_source_changes_no_version(tmp_path):
    _, bank = versions(small_project(tmp_path))
    for entry in bank.items.values():
        other = entry.record.model_copy(update={"source": entry.record.source * 2})
        assert record_version(other) == record_version(entry.record)
