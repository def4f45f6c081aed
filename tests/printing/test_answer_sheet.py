"""The answer sheet has a place for every answer and a code that carries the form only."""

import re
from io import BytesIO

import pytest
from pypdf import PdfReader

from generator.printing import answer_sheet
from generator.printing.sheet_content import form_code
from tests.printing.form_for_tests import CHOICE, KINDS, MATCH, ORDER, form_of, full_form
from tests.printing.pdf_reading import FONTS, page_texts, whole_text


def _sheet(form, **more):
    return answer_sheet(form, **({"paper": "a4", "fonts": FONTS} | more))


@pytest.mark.parametrize("size", ["a4", "letter"])
@pytest.mark.parametrize("count", [1, 20, 36])
def test_a_sheet_fits_one_page(size, count):
    assert len(page_texts(_sheet(form_of(*[CHOICE] * count), paper=size))) == 1


def test_a_very_long_form_goes_on_to_a_second_page_with_every_number():
    pages = page_texts(_sheet(form_of(*[CHOICE] * 60)))
    assert len(pages) == 2
    for number in range(1, 61):
        assert f" {number} A B C" in " ".join(pages)


def test_each_kind_gets_its_own_place():
    text = whole_text(_sheet(form_of(*KINDS)))
    assert "1 µm" in text
    assert "2 A B C 3 A B C D" in text
    assert "4 1 2 3 4 5 5 1 2 3 6 see paper" in text


@pytest.mark.parametrize("size", ["a4", "letter"])
def test_the_longest_order_and_match_keep_to_their_row(size):
    seven, six = range(1, 8), range(1, 7)
    order = ORDER | {"key": {"steps": [{"letter": "A", "text": "-"} for _ in seven]}}
    match = MATCH | {"key": {"left": [{"number": str(n), "text": "-"} for n in six]}}
    wide = form_of(*[order, match] * 18)
    narrow = form_of(*[CHOICE] * 36)
    assert _lowest(_sheet(wide, paper=size)) == pytest.approx(
        _lowest(_sheet(narrow, paper=size)), abs=3
    )


def _lowest(document):
    """Find how far down the page, in points from its foot, the last question number stands."""
    found = []

    def note(text, _matrix, text_matrix, _font, _size):
        found.extend([text_matrix[5]] if text.strip() == "18" else [])

    PdfReader(BytesIO(document)).pages[0].extract_text(visitor_text=note)
    return found[-1]


def test_the_sheet_shows_no_question_text():
    text = whole_text(_sheet(full_form()))
    for words in ("Degrease", "trailer door", "Solvent trapped", "60 %"):
        assert words not in text


def _modules(drawing):
    """Turn the strokes of the drawn code into rows of grey values, four pixels to a module."""
    side = int(re.search(r'(?:viewBox="0 0 |width=")(\d+)', drawing)[1])
    rows = [[255] * side for _ in range(side)]
    x, y = 0.0, 0.0
    for command, numbers in re.findall(r"([Mmh])([-\d. ]+)", re.search(r' d="(.+?)"', drawing)[1]):
        values = [float(number) for number in numbers.split()]
        if command == "M":
            x, y = values
        elif command == "m":
            x, y = x + values[0], y + values[1]
        else:
            rows[int(y)][int(x) : int(x + values[0])] = [0] * int(values[0])
            x += values[0]
    return bytes(value for row in rows for _ in range(4) for value in row for _ in range(4)), side


@pytest.mark.parametrize("form", ["A", "B-017", "specimen"])
def test_the_code_reads_back_as_the_form_and_nothing_else(form):
    reader = pytest.importorskip("zxingcpp")
    pixels, side = _modules(form_code(form))
    found = reader.read_barcodes(memoryview(pixels).cast("B", shape=[side * 4, side * 4]))
    assert [code.text for code in found] == [form]
