"""The file of the records: private, moved forward whole, refused in one clear sentence."""

import os
import sqlite3
import stat
from pathlib import Path

import pytest

from generator.records import RecordsRefused, open_records
from generator.records.people.people import all_people
from generator.records.store import migrations
from generator.records.store.database import FILE_NAME, integrity_problems, make_private, writing
from tests.records.small_disk import small_disk as small_disk
from tests.records.small_records import ANN, BOB, TRAINER, small_records

EVERYONE = (ANN, BOB, TRAINER)


def mode(path: Path) -> int:
    """Return the permissions of a path."""
    return stat.S_IMODE(path.stat().st_mode)


def test_folder_and_every_file_beside_the_records_are_the_owners_alone(tmp_path: Path) -> None:
    earlier = os.umask(0)
    try:
        with small_records(tmp_path):
            folder = tmp_path / "records"
            names = {path.name for path in folder.iterdir()}
            assert names == {FILE_NAME, f"{FILE_NAME}-wal", f"{FILE_NAME}-shm"}
            assert mode(folder) == 0o700
            assert {mode(path) for path in folder.iterdir()} == {0o600}
    finally:
        os.umask(earlier)


def test_a_file_that_others_could_read_is_closed_to_them(tmp_path: Path) -> None:
    path = tmp_path / "open"
    path.write_bytes(b"kept")
    path.chmod(0o644)
    make_private(path)
    assert mode(path) == 0o600
    assert path.read_bytes() == b"kept"


def test_the_settings_that_keep_the_file_safe_are_on(tmp_path: Path) -> None:
    with small_records(tmp_path) as connection:
        told = {
            name: connection.execute(f"PRAGMA {name}").fetchone()[0]
            for name in ("foreign_keys", "journal_mode", "synchronous", "secure_delete")
        }
    assert told == {
        "foreign_keys": 1,
        "journal_mode": "wal",
        "synchronous": 2,
        "secure_delete": 1,
    }


def refusal(folder: Path) -> str:
    """Return the sentence with which records are refused."""
    with pytest.raises(RecordsRefused) as refused, open_records(folder) as connection:
        connection.execute("SELECT * FROM people").fetchall()
    return str(refused.value)


def test_a_file_in_the_place_of_the_folder_is_refused(tmp_path: Path) -> None:
    (tmp_path / "records").write_text("not a folder")
    assert refusal(tmp_path / "records") == (
        "'records' is a file and cannot hold the records; move it away"
    )
    assert "is a file" in refusal(tmp_path / "records" / "inside")


@pytest.mark.skipif(os.geteuid() == 0, reason="permissions do not bind the superuser")
def test_a_folder_that_cannot_be_written_is_refused(tmp_path: Path) -> None:
    folder = tmp_path / "records"
    folder.mkdir()
    folder.chmod(0o500)
    assert refusal(folder) == "the folder 'records' cannot be written; check who owns it"


@pytest.mark.parametrize("whole", [True, False])
def test_a_damaged_file_is_refused(tmp_path: Path, whole: bool) -> None:
    with small_records(tmp_path):
        pass
    path = tmp_path / "records" / FILE_NAME
    data = path.read_bytes()
    path.write_bytes(b"not the records" * 900 if whole else data[:5000] + b"\xff" * 20000)
    assert refusal(path.parent) == (
        "the records in 'records' are damaged; put a backup in their place"
    )


def test_records_of_a_later_version_are_refused_and_stay_as_they_are(tmp_path: Path) -> None:
    with small_records(tmp_path) as connection:
        connection.execute(f"PRAGMA user_version = {len(migrations.STEPS) + 1}")
    assert "later version of guidecoat" in refusal(tmp_path / "records")
    with sqlite3.connect(tmp_path / "records" / FILE_NAME) as plain:
        assert plain.execute("SELECT count(*) FROM people").fetchone()[0] == 3
    plain.close()


def later_steps(*more: str) -> tuple[str, ...]:
    """Return the steps of an imagined later version."""
    return (*migrations.STEPS, *more)


def test_moving_forward_keeps_what_an_older_version_wrote(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    with small_records(tmp_path):
        pass
    steps = later_steps("ALTER TABLE people ADD COLUMN shop TEXT NOT NULL DEFAULT 'bay 1'")
    monkeypatch.setattr("generator.records.store.database.STEPS", steps)
    with open_records(tmp_path / "records") as connection:
        assert all_people(connection) == EVERYONE
        shops = connection.execute("SELECT DISTINCT shop FROM people").fetchall()
        assert [row["shop"] for row in shops] == ["bay 1"]
        assert connection.execute("PRAGMA user_version").fetchone()[0] == len(steps)
        assert integrity_problems(connection) == ()


def test_a_step_that_fails_leaves_the_older_version_whole(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    with small_records(tmp_path):
        pass
    before = len(migrations.STEPS)
    steps = later_steps("CREATE TABLE added (id INTEGER) STRICT; INSERT INTO nowhere VALUES (1)")
    monkeypatch.setattr("generator.records.store.database.STEPS", steps)
    assert "cannot be used: no such table: nowhere" in refusal(tmp_path / "records")
    monkeypatch.undo()
    with open_records(tmp_path / "records") as connection:
        assert all_people(connection) == EVERYONE
        assert connection.execute("PRAGMA user_version").fetchone()[0] == before
        tables = connection.execute("SELECT name FROM sqlite_schema WHERE name = 'added'")
        assert tables.fetchone() is None


def fill(connection: sqlite3.Connection) -> None:
    """Write until the disk is full."""
    with writing(connection):
        for number in range(100_000):
            connection.execute(
                "INSERT INTO diary (at, action, detail) VALUES ('', 'fill', ?)",
                (f"{number:05}" + "x" * 4000,),
            )


FULL = "the disk that holds 'records' is full; nothing was changed"


def test_a_file_that_may_not_grow_says_that_the_disk_is_full(tmp_path: Path) -> None:
    with pytest.raises(RecordsRefused, match=FULL), small_records(tmp_path) as connection:
        pages = connection.execute("PRAGMA page_count").fetchone()[0]
        connection.execute(f"PRAGMA max_page_count = {pages + 4}")
        fill(connection)
    with open_records(tmp_path / "records") as connection:
        assert connection.execute("SELECT count(*) FROM diary").fetchone()[0] == 1
        assert all_people(connection) == EVERYONE


def test_a_disk_that_is_full_is_named_and_earlier_work_stays(small_disk: Path) -> None:
    with pytest.raises(RecordsRefused, match=FULL), small_records(small_disk) as connection:
        fill(connection)
    with open_records(small_disk / "records") as connection:
        assert integrity_problems(connection) == ()
        assert all_people(connection) == EVERYONE
        assert connection.execute("SELECT count(*) FROM diary").fetchone()[0] == 1


def test_records_that_stay_locked_are_named(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr("generator.records.store.database.WAIT_SECONDS", 0.05)
    with (
        small_records(tmp_path) as first,
        writing(first),
        pytest.raises(RecordsRefused, match="another program kept the records in 'records'"),
        open_records(tmp_path / "records") as second,
        writing(second),
    ):
        pass
