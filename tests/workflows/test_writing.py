"""Writing: whole files or none, a whole folder or the earlier one."""

from pathlib import Path

import pytest

from generator.workflows.files.writing import replace_folder, write_files


def left_over(folder: Path) -> list[str]:
    return [path.name for path in folder.iterdir() if path.name.startswith(".")]


def test_files_are_written_and_named_in_order(tmp_path: Path) -> None:
    folder = tmp_path / "deep" / "printed"
    written = write_files(folder, {"b.pdf": b"2", "a.pdf": b"1"})
    assert written == (folder / "b.pdf", folder / "a.pdf")
    assert [path.read_bytes() for path in written] == [b"2", b"1"]
    assert left_over(folder.parent) == []


def test_files_of_other_names_stay(tmp_path: Path) -> None:
    write_files(tmp_path / "printed", {"a.pdf": b"1"})
    write_files(tmp_path / "printed", {"b.pdf": b"2"})
    assert {p.name for p in (tmp_path / "printed").iterdir()} == {"a.pdf", "b.pdf"}


def test_when_one_file_cannot_be_written_none_is(tmp_path: Path) -> None:
    folder = tmp_path / "printed"
    write_files(folder, {"a.pdf": b"old"})
    with pytest.raises(OSError, match="No such file"):
        write_files(folder, {"a.pdf": b"new", "no/such/folder.pdf": b"x"})
    assert (folder / "a.pdf").read_bytes() == b"old"
    assert left_over(tmp_path) == []


def test_a_folder_is_replaced_whole(tmp_path: Path) -> None:
    site = tmp_path / "site"
    site.mkdir()
    (site / "old.html").write_text("old", "utf-8")

    def fill(new: Path) -> None:
        assert (site / "old.html").exists()
        (new / "new.html").write_text("new", "utf-8")

    replace_folder(site, fill)
    assert [path.name for path in site.iterdir()] == ["new.html"]
    assert site.stat().st_mode & 0o777 == 0o755
    assert left_over(tmp_path) == []


def test_a_first_folder_needs_no_earlier_one(tmp_path: Path) -> None:
    replace_folder(tmp_path / "deep" / "site", lambda new: (new / "a").touch())
    assert (tmp_path / "deep" / "site" / "a").exists()


def test_a_failure_leaves_the_earlier_folder_and_no_rubbish(tmp_path: Path) -> None:
    site = tmp_path / "site"
    site.mkdir()
    (site / "old.html").write_text("old", "utf-8")
    before = (site / "old.html").stat().st_mtime_ns

    def fill(new: Path) -> None:
        (new / "half.html").touch()
        raise RuntimeError("stopped")

    with pytest.raises(RuntimeError, match="stopped"):
        replace_folder(site, fill)
    assert [path.name for path in site.iterdir()] == ["old.html"]
    assert (site / "old.html").stat().st_mtime_ns == before
    assert left_over(tmp_path) == []
