"""A workbook gives the cells that were typed; None in it is run, and nothing in it can hurt."""

import io
import tracemalloc
import zipfile
from datetime import date, datetime, time

import openpyxl
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from generator.diagnostics import Place
from generator.marking import ISSUED_RULES
from generator.marking.tables.issued_answers import read_issued
from generator.marking.tables.issued_table import header
from generator.marking.tables.paper_identity import Known
from generator.marking.tables.spreadsheet import (
    MOST_COLUMNS,
    MOST_ROWS,
    cell_name,
    named_cells,
    read_workbook,
)
from generator.marking.tables.workbook_parts import MOST_BYTES
from tests.marking.small_forms import ANN, RIGHT, RIGHT_CELLS, small_form


def book(*rows, formats=None, more_sheets=()):
    """Return the bytes of a workbook; formats are by cell name."""
    made = openpyxl.Workbook()
    for row in rows:
        made.active.append(row)
    for name, shown_as in (formats or {}).items():
        made.active[name].number_format = shown_as
    for title, cells in more_sheets:
        made.create_sheet(title).append(cells)
    return saved(made)


def saved(made):
    """Return the bytes of a workbook."""
    data = io.BytesIO()
    made.save(data)
    return data.getvalue()


def texts(data):
    """Return the texts of the cells of a workbook that has no problem."""
    rows, problems = read_workbook(data, "t.xlsx")
    assert problems == ()
    return [[cell.text for cell in row] for row in rows]


def refused(data):
    """Return the one problem of a workbook."""
    _, problems = read_workbook(data, "t.xlsx")
    (problem,) = problems
    assert problem.rule in ISSUED_RULES
    return problem


def test_a_filled_workbook_reads_as_the_table_does():
    form = small_form("A", ANN)
    known = Known({form["form_id"]: form}, {}, (ANN,))
    cells = [*RIGHT_CELLS[:2], 60, *RIGHT_CELLS[3:]]
    rows, problems = read_workbook(
        book([*header(6)], [form["form_id"], "A", ANN, *cells]), "t.xlsx"
    )
    found, more = read_issued(rows, "t.xlsx", known)
    assert (*problems, *more) == ()
    (paper,) = found.filled
    assert {n: r for n, r in paper.responses.items() if n != 3} == {
        n: r for n, r in RIGHT.items() if n != 3
    }
    assert paper.responses[3].text == "60"
    assert str(paper.place) == "t.xlsx:2:1"


@given(st.decimals(-(10**9), 10**9, places=6, allow_nan=False, allow_infinity=False))
@settings(deadline=None, max_examples=40)
def test_a_number_comes_back_as_it_was_typed(number):
    plain = f"{number.normalize():f}".replace("-0", "0") if number == 0 else f"{number:f}"
    wanted = plain.rstrip("0").rstrip(".") if "." in plain else plain
    assert texts(book([float(number), "end"]))[0][0] == wanted


@pytest.mark.parametrize(
    ("value", "shown_as", "text"),
    [
        (12.5, "General", "12.5"),
        (12, "0.00", "12"),
        (0.1, "General", "0.1"),
        (2.3, "General", "2.3"),
        (1e-7, "General", "0.0000001"),
        (1.5, "# ?/?", "1.5"),
        (0.2, "0%", "20 %"),
        (0.125, "0.0%", "12.5 %"),
        ("12,5 µm", "General", "12,5 µm"),
        ("'=12", "@", "=12"),
        (" B\n", "General", "B"),
        ("?", "General", "?"),
    ],
)
def test_a_cell_gives_what_the_person_sees(value, shown_as, text):
    assert texts(book([value, "end"], formats={"A1": shown_as}))[0][0] == text


@pytest.mark.parametrize(
    ("value", "rule", "said"),
    [
        ("=C4+1", "spreadsheet-formula", "holds a formula"),
        ('=HYPERLINK("x","y")', "spreadsheet-formula", "holds a formula"),
        (date(2026, 4, 3), "spreadsheet-date", "made a date or a time of it: "),
        (datetime(2026, 4, 3, 1, 2), "spreadsheet-date", "made a date or a time of it: "),
        (time(1, 0), "spreadsheet-date", "made a date or a time of it: "),
        (True, "spreadsheet-cell", "'True' is neither"),
        ("#N/A", "spreadsheet-cell", "'#N/A' is neither"),
    ],
)
def test_a_cell_that_is_no_answer_is_refused_by_its_name(value, rule, said):
    _, problems = read_workbook(book(["a", "b"], ["c", value]), "t.xlsx")
    (problem,) = named_cells(problems)
    assert (problem.rule, str(problem.place)) == (rule, "t.xlsx:2:2")
    assert problem.message.startswith("cell B2: ")
    assert said in problem.message
    assert rule in ISSUED_RULES


def test_rows_are_filled_up_and_empty_ones_passed_over():
    rows, problems = read_workbook(book(["a", "b", "c"], [], ["d"], [None, None, None]), "t.xlsx")
    assert problems == ()
    assert [[cell.text for cell in row] for row in rows] == [["a", "b", "c"], ["d", "", ""]]
    assert [row[0].place.line for row in rows] == [1, 3]


def test_a_second_sheet_may_be_empty_but_hold_nothing():
    assert texts(book(["a"], more_sheets=[("Empty", [])])) == [["a"]]
    assert (
        "2 sheets of this workbook hold cells"
        in refused(book(["a"], more_sheets=[("More", ["b"])])).message
    )


@pytest.mark.parametrize("data", [b"", b"PK", b"form,label\n", b"PK\x03\x04" + b"\0" * 100])
def test_what_is_no_workbook_is_refused(data):
    assert refused(data).rule == "spreadsheet-file"


def parts_of(data):
    """Return the parts of a workbook by name."""
    with zipfile.ZipFile(io.BytesIO(data)) as archive:
        return {name: archive.read(name) for name in archive.namelist()}


def packed(parts):
    """Return the bytes of a workbook with these parts."""
    data = io.BytesIO()
    with zipfile.ZipFile(data, "w", zipfile.ZIP_DEFLATED) as archive:
        for name, content in parts.items():
            archive.writestr(name, content)
    return data.getvalue()


# made once: the hour stands in it
WHOLE = book(["form", "label"], ["A", 12.5], ["=A1", True])
SHEET = "xl/worksheets/sheet1.xml"


def test_a_workbook_that_unpacks_to_too_much_is_refused_unread():
    bomb = packed({**parts_of(book(["a"])), "xl/media/a.bin": b"\0" * (MOST_BYTES + 1)})
    assert len(bomb) < 100_000
    assert "unpacks to more than 8 MB" in refused(bomb).message


def test_a_workbook_of_many_parts_is_refused():
    many = {f"xl/media/{n}": b"" for n in range(301)}
    assert refused(packed({**parts_of(book(["a"])), **many})).rule == "spreadsheet-file"


def test_a_part_that_lies_about_its_size_is_not_unpacked_further():
    parts = parts_of(book(["a"])) | {SHEET: b"\0" * 50_000_000}
    data = bytearray(packed(parts))
    name = SHEET.encode()
    # in the list at the end a part's name has 46 bytes in front, its size among them
    end = data.rindex(name)
    data[end - 46 + 24 : end - 46 + 28] = (100).to_bytes(4, "little")
    tracemalloc.start()
    try:
        assert refused(bytes(data)).rule == "spreadsheet-file"
        assert tracemalloc.get_traced_memory()[1] < 3 * MOST_BYTES
    finally:
        tracemalloc.stop()


@pytest.mark.parametrize(
    "start",
    [
        b'<!DOCTYPE a [<!ENTITY b "' + b"b" * 100 + b'">]>',
        b'<!DOCTYPE a [<!ENTITY b SYSTEM "file:///etc/passwd">]>',
    ],
)
@pytest.mark.parametrize("encoding", ["utf-8", "utf-16"])
def test_entities_are_refused_before_they_are_read(start, encoding):
    parts = parts_of(book(["a"]))
    text = parts[SHEET].decode().partition("?>")[2] or parts[SHEET].decode()
    parts[SHEET] = (start.decode() + text).encode(encoding)
    assert "parts that no spreadsheet writes" in refused(packed(parts)).message


def test_a_sheet_that_says_it_is_huge_is_read_for_what_it_holds():
    parts = parts_of(book(["a", "b"]))
    assert b'ref="A1:B1"' in parts[SHEET]
    parts[SHEET] = parts[SHEET].replace(b'ref="A1:B1"', b'ref="A1:XFD1048576"')
    assert texts(packed(parts)) == [["a", "b"]]


@pytest.mark.parametrize(("row", "column"), [(MOST_ROWS + 1, 1), (1, MOST_COLUMNS + 1)])
def test_a_sheet_with_a_cell_far_out_is_refused(row, column):
    made = openpyxl.Workbook()
    made.active.cell(1, 1, "a")
    made.active.cell(row, column, "far")
    assert "has more than 2000 rows or 300 columns" in refused(saved(made)).message


@given(st.data())
@settings(deadline=None, max_examples=150)
def test_a_damaged_workbook_is_refused_or_read_and_never_breaks(data):
    whole = bytearray(WHOLE)
    for _ in range(data.draw(st.integers(1, 8))):
        whole[data.draw(st.integers(0, len(whole) - 1))] = data.draw(st.integers(0, 255))
    _, problems = read_workbook(bytes(whole), "t.xlsx")
    assert {problem.rule for problem in problems} <= set(ISSUED_RULES)


@given(st.data())
@settings(deadline=None, max_examples=60)
def test_a_damaged_part_is_refused_or_read_and_never_breaks(data):
    parts = parts_of(WHOLE)
    name = data.draw(st.sampled_from(sorted(parts)))
    part = bytearray(parts[name])
    for _ in range(data.draw(st.integers(1, 8))):
        part[data.draw(st.integers(0, len(part) - 1))] = data.draw(st.integers(0, 255))
    _, problems = read_workbook(packed({**parts, name: bytes(part)}), "t.xlsx")
    assert {problem.rule for problem in problems} <= set(ISSUED_RULES)


@pytest.mark.parametrize(
    ("line", "column", "name"), [(7, 4, "D7"), (1, 26, "Z1"), (2, 27, "AA2"), (9, 703, "AAA9")]
)
def test_a_place_has_the_name_that_the_spreadsheet_shows(line, column, name):
    assert cell_name(Place("t.xlsx", line, column)) == name
