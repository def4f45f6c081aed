"""Font files: one that is gone, cut off or damaged is named before any paper is set."""

import shutil
from pathlib import Path

import pytest

from generator.printing import PrintingRefused
from generator.printing.font_files import CUTS, unusable_cuts
from generator.printing.settable import unsettable
from tests.printing.pdf_reading import FONTS


def test_the_files_of_the_theme_are_whole_and_all_named() -> None:
    assert unusable_cuts(FONTS) == ()
    assert {path.stem for path in FONTS.glob("*.ttf")} == set(CUTS)


@pytest.mark.parametrize("cut", CUTS)
def test_a_cut_that_is_gone_cut_off_or_damaged_is_named(cut: str, tmp_path: Path) -> None:
    fonts = tmp_path / "fonts"
    shutil.copytree(FONTS, fonts)
    file = fonts / f"{cut}.ttf"
    whole = file.read_bytes()
    middle = len(whole) // 2
    for data in (whole[:middle], whole[:6], b"", whole[:middle] + b"XXXX" + whole[middle + 4 :]):
        file.write_bytes(data)
        assert unusable_cuts(fonts) == (cut,)
    file.unlink()
    assert unusable_cuts(fonts) == (cut,)
    with pytest.raises(PrintingRefused, match="font|damaged"):
        unsettable(["Ann"], fonts)
