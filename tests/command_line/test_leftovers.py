"""What a command that was stopped hard leaves is put back, cleared away, or named."""

import os
from pathlib import Path

import pytest

from generator.workflows.files import writing
from generator.workflows.files.leftovers import AN_HOUR
from generator.workflows.files.private_files import write_private_files, write_private_folder
from generator.workflows.files.writing import replace_folder, write_files
from tests.command_line.records_project import shop as shop
from tests.command_line.running import run
from tests.command_line.test_records import records, with_people


def left(folder: Path, name: str, age: int) -> Path:
    """Leave a folder of some seconds' age."""
    place = folder / name
    place.mkdir(parents=True)
    (place / "key.pdf").write_text("KEY", "utf-8")
    then = place.stat().st_mtime - age
    os.utime(place, (then, then))
    return place


class Killed(BaseException):
    """The machine stops."""


def test_a_site_moved_aside_by_a_run_that_was_stopped_is_put_back(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    site = tmp_path / "site"
    replace_folder(site, lambda new: (new / "old.html").write_text("old", "utf-8") and None)
    moved = os.replace

    def stop_between(source: Path, target: Path) -> None:
        if target == site:
            raise Killed
        moved(source, target)

    monkeypatch.setattr(writing.os, "replace", stop_between)
    with pytest.raises(Killed):
        replace_folder(site, lambda new: None)
    monkeypatch.undo()
    assert not site.exists()

    def refuse(new: Path) -> None:
        assert (site / "old.html").read_text("utf-8") == "old"
        raise RuntimeError("the course is not sound")

    with pytest.raises(RuntimeError):
        replace_folder(site, refuse)
    assert (site / "old.html").read_text("utf-8") == "old"


@pytest.mark.parametrize("name", [".new-abc", ".old-abc"])
def test_old_leftovers_go_and_young_ones_stay(tmp_path: Path, name: str) -> None:
    old = left(tmp_path, name, 2 * AN_HOUR)
    young = left(tmp_path, name + "d", 60)
    other = left(tmp_path, "new-papers", 2 * AN_HOUR)
    write_files(tmp_path / "printed", {"a.pdf": b"1"})
    assert (old.exists(), young.exists(), other.exists()) == (False, True, True)


def test_private_writers_clear_away_as_well(tmp_path: Path) -> None:
    old = left(tmp_path / "issue-1", ".new-abc", 2 * AN_HOUR)
    write_private_files(tmp_path / "issue-1", [("a.pdf", b"1")])
    assert not old.exists()
    old = left(tmp_path, ".new-abc", 2 * AN_HOUR)
    write_private_folder(tmp_path / "pack", {"a.csv": b"1"})
    assert not old.exists()


def test_records_check_names_what_was_left(shop: Path) -> None:
    with_people(shop)
    assert records(shop, "check").stdout == "the records are intact\n"
    for folder in (shop, shop / "printed", shop / "records" / "exports"):
        left(folder, ".new-abc", 2 * AN_HOUR).chmod(0o700)
        (folder / ".new-abc" / "key.pdf").chmod(0o600)
    (shop / "records" / "exports").chmod(0o700)
    result = run(shop, "records", "check")
    assert result.exit_code == 1 and result.stdout == "3 problems\n"
    for name in (".new-abc", "printed/.new-abc", "records/exports/.new-abc"):
        assert f"{name} was left by a command that was stopped" in result.stderr
