"""The geometry of an answer sheet: every mark has its place, apart from all others."""

import json
from itertools import combinations
from math import dist

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from generator.printing import sheet_geometry
from tests.printing.form_for_tests import (
    CHOICE,
    KINDS,
    MATCH,
    MULTIPLE,
    NUMERIC,
    ORDER,
    WRITTEN,
    form_of,
    full_form,
)
from tests.some import some

QUIET_MICRO, QUIET_CODE = 2 * 9.9 / 11, 4 * 18 / 25


def _options(count):
    return MULTIPLE | {"key": {"options": [{"letter": x} for x in "ABCDEFGH"[:count]]}}


def _steps(count):
    return ORDER | {"key": {"steps": [{"letter": x} for x in "ABCDEFG"[:count]]}}


def _cases(left, right):
    key = {
        "left": [{"number": str(n + 1)} for n in range(left)],
        "right": [{"letter": x} for x in "ABCDEFGH"[:right]],
    }
    return MATCH | {"key": key}


QUESTIONS = st.one_of(
    st.sampled_from([CHOICE, NUMERIC, WRITTEN]),
    st.integers(2, 7).map(_options),
    st.integers(3, 7).map(_steps),
    st.tuples(st.integers(2, 7), st.integers(2, 8)).map(lambda sides: _cases(*sides)),
)
FORMS = st.lists(QUESTIONS, min_size=1, max_size=40).map(lambda questions: form_of(*questions))


def _fields(geometry):
    return [(page, field) for page in geometry["pages"] for field in page["fields"]]


def _rings(page):
    return [
        (mark["x"], mark["y"])
        for field in page["fields"]
        for group in field["groups"]
        for mark in group["marks"]
    ]


@settings(max_examples=60, deadline=None)
@given(FORMS, st.booleans())
def test_every_question_has_one_field_in_the_order_of_the_numbers(form, large):
    geometry = sheet_geometry(form, large_print=large)
    numbers = [field["number"] for _, field in _fields(geometry)]
    assert numbers == [entry["number"] for entry in form["questions"]]


@settings(max_examples=40, deadline=None)
@given(FORMS, st.booleans())
def test_no_two_rings_touch_and_none_leaves_the_frame(form, large):
    geometry = sheet_geometry(form, large_print=large)
    needed = geometry["ring"]["diameter"] + 2 * geometry["ring"]["line"]
    radius = needed / 2
    for page in some(geometry["pages"]):
        rings = _rings(page)
        assert all(dist(one, other) > needed for one, other in combinations(rings, 2))
        for x, y in rings:
            assert radius <= x <= geometry["frame"]["width"] - radius
            assert radius <= y <= geometry["frame"]["height"] - radius


@settings(max_examples=40, deadline=None)
@given(FORMS, st.booleans())
def test_the_paper_around_the_codes_stays_empty(form, large):
    """Micro QR needs 2 modules around it and QR 4 (ISO/IEC 23941 and 18004)."""
    geometry = sheet_geometry(form, large_print=large)
    radius = geometry["ring"]["diameter"] / 2
    for page in some(geometry["pages"]):
        codes = [(corner, QUIET_MICRO) for corner in page["corners"]]
        codes.append((page["code"], QUIET_CODE if page["page"] == 1 else 4 * 11 / 25))
        for code, quiet in codes:
            for x, y in _rings(page):
                apart_x = max(code["left"] - x, x - code["left"] - code["size"])
                apart_y = max(code["top"] - y, y - code["top"] - code["size"])
                assert max(apart_x, apart_y) >= radius + quiet


@pytest.mark.parametrize(
    ("kind", "groups", "values"),
    [
        (CHOICE, [""], "ABC"),
        (MULTIPLE, [""], "ABCD"),
        (ORDER, ["1", "2", "3", "4", "5"], "ABCDE"),
        (MATCH, ["1", "2", "3"], "ABCD"),
        (NUMERIC, ["1", "2", "3", "4", "5", "6"], ".0123456789"),
        (WRITTEN, [], ""),
    ],
)
def test_the_rings_stand_for_what_the_kind_of_question_needs(kind, groups, values):
    [(_, field)] = _fields(sheet_geometry(form_of(kind)))
    assert [group["group"] for group in field["groups"]] == groups
    for group in field["groups"]:
        assert "".join(mark["value"] for mark in group["marks"]) == values
    assert field["several"] == (kind is MULTIPLE)
    assert len(field["boxes"]) == (6 if kind is NUMERIC else 0)


def test_boxes_to_write_in_stand_over_their_column_of_rings():
    [(_, field)] = _fields(sheet_geometry(form_of(NUMERIC)))
    for box, group in some(zip(field["boxes"], field["groups"], strict=True)):
        assert box["left"] + box["width"] / 2 == pytest.approx(group["marks"][0]["x"], abs=0.01)
        assert box["top"] + box["height"] < group["marks"][0]["y"]


def test_corner_texts_tell_the_page_and_the_corner():
    pages = sheet_geometry(form_of(*[NUMERIC] * 60))["pages"]
    texts = [corner["text"] for page in pages for corner in page["corners"]]
    assert texts[:4] == ["0011", "0012", "0013", "0014"]
    assert texts[4] == "0021"
    assert len(set(texts)) == len(texts) == 4 * len(pages)


def test_the_geometry_is_plain_and_names_the_form_and_nothing_of_its_key():
    form = full_form() | {"form_id": "3F7KQ2MZ"}
    written = json.dumps(sheet_geometry(form))
    assert json.loads(written)["form_id"] == "3F7KQ2MZ"
    for question in KINDS:
        assert question["stem"][:20] not in written
    assert sheet_geometry(form) == json.loads(written)


@pytest.mark.parametrize("large", [False, True])
def test_the_frame_lies_on_both_papers_with_room_for_printers_and_foot(large):
    """Most office printers leave 4.3 mm blank (common practice); the foot needs 12 mm."""
    geometry = sheet_geometry(full_form(), large_print=large)
    for paper in some(geometry["papers"].values()):
        right = paper["width"] - paper["left"] - geometry["frame"]["width"]
        below = paper["height"] - paper["top"] - geometry["frame"]["height"]
        assert min(paper["left"], paper["top"], right) >= 10
        assert below >= 16
