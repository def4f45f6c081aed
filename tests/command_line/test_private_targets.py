"""Files about people are written neither into the site nor over any file."""

from pathlib import Path

import pytest

from tests.command_line.records_project import shop as shop
from tests.command_line.test_records import ANN, look_at, records, refused, with_people

PUBLISHED = ("site", "course", "site_theme", "question_bank")


def everything(folder: Path) -> dict[str, bytes]:
    """Return what lies in a folder and below."""
    return {p.as_posix(): p.read_bytes() for p in sorted(folder.rglob("*")) if p.is_file()}


@pytest.mark.parametrize("folder", PUBLISHED)
@pytest.mark.parametrize(
    "command",
    [("export", ANN, "--to", "{}/x.json"), ("backup", "{}/b.sqlite"), ("pack", "{}/inspection")],
)
def test_what_leaves_the_records_never_goes_into_a_published_folder(
    shop: Path, command: tuple[str, ...], folder: str
) -> None:
    with_people(shop)
    (shop / folder).mkdir(exist_ok=True)
    before = everything(shop / folder)
    told = refused(shop, *(part.format(folder) for part in command))
    assert f"lies in {folder}/" in told and "somewhere else" in told
    assert everything(shop / folder) == before


def test_a_link_into_the_site_is_followed(shop: Path) -> None:
    with_people(shop)
    (shop / "site").mkdir()
    (shop / "innocent").symlink_to(shop / "site", target_is_directory=True)
    assert "lies in site/" in refused(shop, "export", ANN, "--to", "innocent/x.json")


def test_an_export_never_takes_the_place_of_a_file(shop: Path) -> None:
    with_people(shop)
    look_at(shop)
    (shop / "mine.txt").write_text("mine", "utf-8")
    before = everything(shop / "records")
    for name in ("mine.txt", "records/training_records.sqlite"):
        assert "is there already" in refused(shop, "export", ANN, "--to", name)
    assert (shop / "mine.txt").read_text("utf-8") == "mine"
    assert everything(shop / "records") == before
    assert records(shop, "check").stdout == "the records are whole\n"


def test_an_export_does_not_go_among_the_records(shop: Path) -> None:
    with_people(shop)
    told = refused(shop, "export", ANN, "--to", "records/training_records.sqlite-wal2")
    assert "among the records" in told
