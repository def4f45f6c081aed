"""Signs: the typefaces of the papers have Latin, Greek and Cyrillic letters, and say what not."""

from io import BytesIO
from pathlib import Path

import pytest
from pypdf import PdfReader

from generator.printing import PrintingRefused
from generator.printing.settable import unsettable
from generator.printing.typesetter import typeset
from tests.printing.pdf_reading import FONTS

LETTERS = {
    "Latin": "".join(map(chr, [*range(0xC0, 0x180), *range(0x218, 0x21C), *range(0x1EA0, 0x1EFA)])),
    "Greek": "".join(chr(c) for c in range(0x386, 0x3CF) if chr(c).isalpha()),
    "Cyrillic": "".join(map(chr, [*range(0x400, 0x460), *range(0x490, 0x500)])),
}


@pytest.mark.parametrize("script", LETTERS)
def test_every_letter_of_the_three_scripts_can_be_set(script: str) -> None:
    assert unsettable([LETTERS[script]], FONTS) == ()


@pytest.mark.parametrize("script", LETTERS)
def test_the_letters_come_out_of_our_own_typefaces(script: str) -> None:
    pdf = typeset("characters", {"text": LETTERS[script], "corner": "characters"}, fonts=FONTS)
    (page,) = PdfReader(BytesIO(pdf)).pages
    fonts = page["/Resources"]["/Font"].values()
    names = {font.get_object()["/BaseFont"].partition("+")[2] for font in fonts}
    assert names <= {
        "FamiljenGrotesk-Regular",
        "GuidecoatSymbols-Regular",
        "GuidecoatNames-Regular",
    }


def test_each_character_without_a_font_is_given_once_in_its_order() -> None:
    texts = ["Ann \u738b\u4f1f", "\U0001f3a8 and \u738b"]
    assert unsettable(texts, FONTS) == ("\u738b", "\u4f1f", "\U0001f3a8")


def test_nothing_is_asked_of_no_text() -> None:
    assert unsettable([], FONTS) == () == unsettable([""], FONTS)


def test_a_folder_without_fonts_is_said(tmp_path: Path) -> None:
    with pytest.raises(PrintingRefused, match="No font file"):
        unsettable(["Ann"], tmp_path)


def test_the_refusal_names_the_characters_and_the_way_out() -> None:
    with pytest.raises(PrintingRefused) as refused:
        typeset("characters", {"text": "Ann \u738b", "corner": "Certificate 1"}, fonts=FONTS)
    assert "no typeface of the papers has '\u738b'" in str(refused.value)
    assert "Latin, Greek or Cyrillic letters" in str(refused.value)


def test_the_licence_of_the_names_lies_beside_them() -> None:
    text = (FONTS / "LICENCE-guidecoat-names.txt").read_text("utf-8")
    assert "SIL OPEN FONT LICENSE Version 1.1" in text
