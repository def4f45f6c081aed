"""Kept verdicts: the words of a cold check, for as long as nothing they rest on has changed."""

import json
from collections.abc import Callable
from pathlib import Path

import pytest

import generator
from generator.bank import verdicts
from generator.bank.checks import numbers
from generator.command_line.terminal import cache_folder
from generator.workflows.verdicts import fingerprint
from tests.bank.small_bank import small_project
from tests.command_line.running import run

MIX = "items/filler/mix.yml"
DRY = "items/film_build/dry_from_wet.yml"


@pytest.fixture
def root(tmp_path: Path) -> Path:
    """Copy the small project, with an error in it."""
    root = small_project(tmp_path)
    change(root, MIX, "right: true", "right: false")
    return root


@pytest.fixture
def cache(tmp_path: Path) -> Path:
    return tmp_path / "cache"


def change(root: Path, path: str, old: str, new: str) -> None:
    file = root / "question_bank" / path
    text = file.read_text("utf-8")
    assert old in text
    file.write_text(text.replace(old, new, 1), "utf-8")


def kept(cache: Path) -> Path:
    (file,) = (cache / "guidecoat").iterdir()
    return file


def checked(root: Path, cache: Path | None, *more: str) -> tuple[str, int]:
    result = run(root, "check", "--notes", *more, cache=cache)
    return result.stdout, result.exit_code


@pytest.fixture
def judged(monkeypatch: pytest.MonkeyPatch) -> list[str]:
    """Note the name of each item whose sets of values are judged."""
    names: list[str] = []
    plain = numbers.standings

    def noted(item, *more):  # type: ignore[no-untyped-def]
        names.append(item.name)
        return plain(item, *more)

    monkeypatch.setattr(numbers, "standings", noted)
    return names


@pytest.fixture
def whole(monkeypatch: pytest.MonkeyPatch) -> None:
    """Let no check be answered as a whole, as if some file had changed each time."""
    numbers_drawn = iter(range(1000))
    monkeypatch.setattr(
        "generator.workflows.verdicts.verdict_cache.whole_digest",
        lambda project, machine: str(next(numbers_drawn)),
    )


@pytest.mark.parametrize("form", ["text", "json", "annotations"])
def test_a_warm_check_says_word_for_word_what_a_cold_one_says(
    root: Path, cache: Path, form: str, judged: list[str]
) -> None:
    cold = checked(root, None, "--format", form)
    assert cold[1] == 1
    assert checked(root, cache, "--format", form) == cold
    judged.clear()
    assert checked(root, cache, "--format", form) == cold
    assert judged == []


@pytest.mark.usefixtures("whole")
def test_a_record_that_did_not_change_is_not_judged_again(
    root: Path, cache: Path, judged: list[str]
) -> None:
    first = checked(root, cache)
    everything = set(judged)
    assert everything
    judged.clear()
    assert checked(root, cache) == first
    assert judged == []


@pytest.mark.usefixtures("whole")
def test_a_changed_record_alone_is_judged_again(root: Path, cache: Path, judged: list[str]) -> None:
    before = checked(root, cache)
    judged.clear()
    change(root, DRY, "round_to: 1", "round_to: 0.0000001")
    after = checked(root, cache)
    assert len(set(judged)) == 1
    assert "[ugly-number]" in after[0] and "[ugly-number]" not in before[0]
    assert after == checked(root, None)


@pytest.mark.usefixtures("whole")
def test_places_follow_a_record_that_moved(root: Path, cache: Path) -> None:
    before, _ = checked(root, cache)
    file = root / "question_bank" / MIX
    file.write_text("# a remark\n# of two lines\n" + file.read_text("utf-8"), "utf-8")
    after, _ = checked(root, cache)
    assert after != before
    assert after == checked(root, None)[0]


@pytest.mark.parametrize("path", ["sources.yml", "hazards.yml", "places.yml", "outline.yml"])
def test_a_changed_frame_judges_every_record_again(
    root: Path, cache: Path, judged: list[str], path: str
) -> None:
    checked(root, cache)
    everything = set(judged)
    judged.clear()
    with (root / "question_bank" / path).open("a", encoding="utf-8") as file:
        file.write("# read again\n")
    checked(root, cache)
    assert set(judged) == everything


def test_changed_code_judges_every_record_again(
    root: Path, cache: Path, judged: list[str], monkeypatch: pytest.MonkeyPatch
) -> None:
    first = checked(root, cache)
    everything = set(judged)
    judged.clear()
    monkeypatch.setattr(fingerprint, "code_digest", lambda machine: "another edition of the rules")
    assert checked(root, cache) == first
    assert set(judged) == everything


def test_what_a_record_rests_on_is_named_alike_with_and_without_a_bank() -> None:
    assert verdicts.FRAME == fingerprint.FRAME


@pytest.mark.parametrize("name", verdicts.FRAME)
def test_each_file_of_the_frame_changes_its_digest(name: str, root: Path) -> None:
    before = verdicts.frame_digest(root / "question_bank")
    (root / "question_bank" / f"{name}.yml").write_text("another: text\n", "utf-8")
    assert verdicts.frame_digest(root / "question_bank") != before


def test_all_of_the_generator_counts_as_the_code() -> None:
    package = Path(generator.__file__).parent
    assert package == fingerprint._CODE
    assert package / "bank" / "checks" / "__init__.py" in set(fingerprint._walk(package))


def test_the_digest_of_the_code_changes_with_any_file_of_it(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    (tmp_path / "tables").mkdir()
    rule, table = tmp_path / "rule.py", tmp_path / "tables" / "grades.tsv"
    rule.write_text("LIMIT = 1\n", "utf-8")
    table.write_text("P80\t201\n", "utf-8")
    monkeypatch.setattr(fingerprint, "_CODE", tmp_path)
    seen = {fingerprint.code_digest(())}
    for file, text in ((rule, "LIMIT = 2\n"), (table, "P80\t200\n")):
        file.write_text(text, "utf-8")
        seen.add(fingerprint.code_digest(()))
    rule.rename(tmp_path / "other.py")
    seen.add(fingerprint.code_digest(()))
    seen.add(fingerprint.code_digest(("another Python",)))
    assert len(seen) == 5


@pytest.mark.parametrize(
    "edit",
    [
        lambda root: change(root, MIX, "level: recall", "level: remember"),
        lambda root: (root / "course" / "filler.md").write_text("no heading\n", "utf-8"),
        lambda root: (root / "course" / "stray.md").write_text("# Stray\n", "utf-8"),
        lambda root: (root / "mkdocs.yml").write_text("site_name: bare\n", "utf-8"),
        lambda root: change(root, "blueprints/quick_check.yml", "percent: 80", "percent: 800"),
    ],
    ids=["item", "lesson", "new page", "settings", "plan"],
)
def test_any_change_of_the_project_is_seen(
    root: Path, cache: Path, edit: Callable[[Path], object]
) -> None:
    before = checked(root, cache)
    edit(root)
    after = checked(root, cache)
    assert after == checked(root, None)
    assert after != before


@pytest.mark.parametrize(
    "spoil",
    [
        lambda file: file.write_bytes(b"\xff\x00{"),
        lambda file: file.write_text("[1, 2", "utf-8"),
        lambda file: file.write_text("[]", "utf-8"),
        lambda file: file.write_text('{"records": 7, "whole": 8}', "utf-8"),
        lambda file: file.write_text(_every_row_spoilt(file), "utf-8"),
        lambda file: file.unlink(),
    ],
    ids=["bytes", "cut off", "a list", "numbers", "rows", "deleted"],
)
def test_a_spoilt_or_missing_cache_is_a_cold_check(
    root: Path, cache: Path, spoil: Callable[[Path], object]
) -> None:
    cold = checked(root, cache)
    spoil(kept(cache))
    assert checked(root, cache) == cold
    assert checked(root, cache) == cold


def _every_row_spoilt(file: Path) -> str:
    """Return the file with rows that are no verdicts."""
    found = json.loads(file.read_text("utf-8"))
    found["problems"] = [["path", 1]]
    found["records"] = dict.fromkeys(found["records"], [[None, 1]])
    return json.dumps(found)


def test_without_a_cache_nothing_is_written(root: Path, cache: Path) -> None:
    cold = checked(root, cache, "--no-cache")
    assert not cache.exists()
    assert checked(root, cache) == cold


def test_a_cache_that_cannot_be_written_is_no_matter(root: Path, cache: Path) -> None:
    cold = checked(root, None)
    cache.write_text("a file in the place of the folder", "utf-8")
    assert checked(root, cache) == cold


def test_nobody_else_can_read_the_verdicts(root: Path, cache: Path) -> None:
    checked(root, cache)
    assert kept(cache).stat().st_mode & 0o077 == 0
    assert kept(cache).parent.stat().st_mode & 0o077 == 0


def test_only_verdicts_that_still_hold_are_kept(root: Path, cache: Path) -> None:
    checked(root, cache)
    before = len(json.loads(kept(cache).read_text("utf-8"))["records"])
    change(root, DRY, "round_to: 1", "round_to: 0.1")
    checked(root, cache)
    assert len(json.loads(kept(cache).read_text("utf-8"))["records"]) == before > 0


@pytest.mark.parametrize(
    ("platform", "tail"),
    [
        ("linux", ".cache/guidecoat"),
        ("darwin", "Library/Caches/guidecoat"),
        ("win32", "AppData/Local/guidecoat/cache"),
    ],
)
def test_each_system_has_its_own_folder_for_it(
    platform: str, tail: str, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.delenv("XDG_CACHE_HOME", raising=False)
    monkeypatch.delenv("LOCALAPPDATA", raising=False)
    monkeypatch.setattr("sys.platform", platform)
    folder = cache_folder()
    assert folder is not None and folder.as_posix().endswith(tail)
