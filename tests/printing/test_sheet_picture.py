"""The printed answer sheet is where its geometry says, to a tenth of a millimetre."""

from math import cos, pi, sin

import numpy as np
import pytest

from generator.printing import answer_sheet, sheet_geometry
from tests.printing.form_for_tests import CHOICE, KINDS, NUMERIC, form_of, issued_form
from tests.printing.page_pictures import DOTS_PER_MM, needs_pictures, pictures
from tests.printing.pdf_reading import FONTS

pytestmark = needs_pictures
PAPER_NAMES = ("a4", "letter")
BOTH = pytest.mark.parametrize("paper", PAPER_NAMES)
PRINTS = pytest.mark.parametrize("large", [False, True])


def _printed(form, paper, large):
    geometry = sheet_geometry(form, large_print=large)
    document = answer_sheet(form, paper=paper, fonts=FONTS, large_print=large)
    return geometry, pictures(document)


def _grey(picture, place, x, y):
    """Read the grey value at a point of the frame, in mm."""
    column = (place["left"] + x) * DOTS_PER_MM
    row = (place["top"] + y) * DOTS_PER_MM
    return int(picture[int(row), int(column)])


def _around(mark, radius):
    return [
        (mark["x"] + radius * cos(turn * pi / 12), mark["y"] + radius * sin(turn * pi / 12))
        for turn in range(24)
    ]


def _disc(picture, place, mark, radius):
    """Return the part of a picture around a mark, and which of its points lie in the disc."""
    x, y = place["left"] + mark["x"], place["top"] + mark["y"]
    left, right = int((x - radius) * DOTS_PER_MM), int((x + radius) * DOTS_PER_MM) + 1
    top, bottom = int((y - radius) * DOTS_PER_MM), int((y + radius) * DOTS_PER_MM) + 1
    rows, columns = np.ogrid[top:bottom, left:right]
    inside = np.hypot(columns / DOTS_PER_MM - x, rows / DOTS_PER_MM - y) <= radius
    return picture[top:bottom, left:right], inside


def _mean(picture, place, mark, radius):
    part, inside = _disc(picture, place, mark, radius)
    return part[inside].mean()


def _marks(page):
    return [
        mark for field in page["fields"] for group in field["groups"] for mark in group["marks"]
    ]


@BOTH
@PRINTS
def test_every_ring_is_drawn_where_the_geometry_says(paper, large):
    geometry, drawn = _printed(form_of(*KINDS, *KINDS), paper, large)
    place, radius = geometry["papers"][paper], geometry["ring"]["diameter"] / 2
    for page, picture in zip(geometry["pages"], drawn, strict=True):
        for mark in _marks(page):
            on_ring = [_grey(picture, place, *point) for point in _around(mark, radius)]
            outside = [_grey(picture, place, *point) for point in _around(mark, radius + 0.35)]
            assert max(on_ring) < 150, mark
            assert min(outside) > 200, mark


@BOTH
@PRINTS
def test_the_print_inside_a_ring_is_far_lighter_than_a_mark(paper, large):
    geometry, drawn = _printed(form_of(*KINDS), paper, large)
    place, radius = geometry["papers"][paper], geometry["ring"]["diameter"] / 2
    for page, picture in zip(geometry["pages"], drawn, strict=True):
        for mark in _marks(page):
            assert _mean(picture, place, mark, 0.8 * radius) > 170, mark


@BOTH
@PRINTS
def test_a_general_reader_finds_all_codes_at_their_places(paper, large):
    reader = pytest.importorskip("zxingcpp")
    form = issued_form() if not large else form_of(*[NUMERIC] * 5, form_id="3F7KQ2MZ")
    geometry, drawn = _printed(form, paper, large)
    place = geometry["papers"][paper]
    for page, picture in zip(geometry["pages"], drawn, strict=True):
        found = {code.text: code.position for code in reader.read_barcodes(picture)}
        wanted = {corner["text"]: corner for corner in page["corners"]}
        wanted["3F7KQ2MZ"] = page["code"]
        assert sorted(found) == sorted(wanted)
        for text, code in wanted.items():
            seen = found[text]
            left, top = place["left"] + code["left"], place["top"] + code["top"]
            right, bottom = left + code["size"], top + code["size"]
            assert seen.top_left.x / DOTS_PER_MM == pytest.approx(left, abs=0.3)
            assert seen.top_left.y / DOTS_PER_MM == pytest.approx(top, abs=0.3)
            assert seen.bottom_right.x / DOTS_PER_MM == pytest.approx(right, abs=0.3)
            assert seen.bottom_right.y / DOTS_PER_MM == pytest.approx(bottom, abs=0.3)


def test_a_sheet_without_an_id_carries_the_name_of_its_form():
    reader = pytest.importorskip("zxingcpp")
    _, [picture] = _printed(form_of(CHOICE, form="specimen"), "a4", False)
    texts = {code.text for code in reader.read_barcodes(picture)}
    assert texts == {"0011", "0012", "0013", "0014", "specimen"}


@BOTH
def test_a_filled_sheet_reads_back_by_the_geometry_alone(paper):
    """Pencil marks put in by place are told from empty rings by place: the sheet can be read."""
    geometry, drawn = _printed(issued_form(), paper, False)
    place, radius = geometry["papers"][paper], geometry["ring"]["diameter"] / 2
    for page, picture in zip(geometry["pages"], drawn, strict=True):
        filled, marks = picture.copy(), _marks(page)
        for mark in marks[::3]:
            part, inside = _disc(filled, place, mark, 0.9 * radius)
            part[inside] = 90
        greys = [_mean(filled, place, mark, 0.6 * radius) for mark in marks]
        assert [grey < 130 for grey in greys] == [index % 3 == 0 for index in range(len(marks))]


@BOTH
@PRINTS
def test_the_measuring_line_is_a_hundred_millimetres(paper, large):
    geometry, drawn = _printed(form_of(CHOICE), paper, large)
    place = geometry["papers"][paper]
    height = geometry["frame"]["height"] - (8 if large else 6)
    row = drawn[0][int((place["top"] + height) * DOTS_PER_MM)]
    between = row[
        int((place["left"] + 12) * DOTS_PER_MM) : int((place["left"] + 170) * DOTS_PER_MM)
    ]
    assert (between < 128).sum() / DOTS_PER_MM == pytest.approx(100, abs=0.3)
