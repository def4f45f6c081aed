"""A class as a table: one row a person, with a code and, where wanted, a name."""

import re
from collections.abc import Iterator, Sequence
from unicodedata import name as sign_name
from unicodedata import normalize

from generator.diagnostics import Place, Problem, did_you_mean
from generator.marking.tables import FORMULA_STARTS, Cell, Row, read_cells
from generator.records.people.people import Person

COLUMNS = ("code", "name")
MOST_PEOPLE = 200
MOST_CHARACTERS = 80
# a code stands on papers and in tables: letters and digits with single marks between them
_CODE = re.compile(r"[^\W_]+(?:[ ._-][^\W_]+)*\Z")

# small Cyrillic and Greek letters that nobody tells from Latin ones
_LOOK_ALIKE = str.maketrans(
    "\u0430\u0435\u043e\u0440\u0441\u0443\u0445\u0456\u0458\u0455\u03bf\u03b1\u03bd\u03c1",
    "aeopcyxijsoavp",
)


def read_roster(text: str, path: str) -> tuple[tuple[Person, ...], tuple[Problem, ...]]:
    """Read the people of a class in the order of their seats.

    The header names the column code, and may name the column name. Gives nobody when there is any
    error, so that a class is never issued in part.
    """
    # some machines write an accent as a sign of its own
    rows, broken = read_cells(normalize("NFC", text), path)
    problems = (*broken, *_problems(rows, path))
    if problems:
        return (), problems
    columns = _columns(rows[0])
    return tuple(
        Person(row[columns["code"]].text, row[columns["name"]].text if "name" in columns else "")
        for row in rows[1:]
    ), ()


def _columns(header: Row) -> dict[str, int]:
    return {cell.text.casefold(): place for place, cell in enumerate(header)}


def _problems(rows: Sequence[Row], path: str) -> Iterator[Problem]:
    if not rows:
        message = "this roster is empty"
        yield _error(Place(path, 1, 1), "roster-empty", message, "begin with the line 'code,name'")
        return
    header, *body = rows
    wrong = list(_header_problems(header))
    if wrong:
        yield from wrong
        return
    if not body:
        yield _error(header[0].place, "roster-empty", "nobody is on this roster")
    if len(body) > MOST_PEOPLE:
        message = f"{len(body)} people are on this roster; {MOST_PEOPLE} is the most for one issue"
        yield _error(body[MOST_PEOPLE][0].place, "roster-size", message)
    columns = _columns(header)
    whole = []
    for row in body:
        if len(row) != len(header):
            cells = "1 cell" if len(row) == 1 else f"{len(row)} cells"
            message = f"this row has {cells}, the header has {len(header)}"
            yield _error(row[0].place, "roster-row", message)
        else:
            whole.append(row)
    yield from _code_problems([row[columns["code"]] for row in whole])
    if "name" in columns:
        yield from _name_problems([row[columns["name"]] for row in whole])


def _header_problems(header: Row) -> Iterator[Problem]:
    names = [cell.text.casefold() for cell in header]
    for place, cell in enumerate(header):
        if names[place] not in COLUMNS:
            message = f"a roster has no column '{cell.text}'"
            hint = did_you_mean(names[place], COLUMNS) or "its columns are code and name"
            yield _error(cell.place, "roster-columns", message, hint)
        elif names[place] in names[:place]:
            message = f"the column '{cell.text}' is there twice"
            yield _error(cell.place, "roster-columns", message)
    if "code" not in names and set(names) <= set(COLUMNS):
        yield _error(header[0].place, "roster-columns", "a roster needs a column named code")


def _code_problems(cells: Sequence[Cell]) -> Iterator[Problem]:
    first: dict[str, int] = {}
    for cell in cells:
        # two codes that a person would read out alike are the same
        spoken = re.sub(r"[ ._-]+", " ", cell.text).casefold().translate(_LOOK_ALIKE)
        if not cell.text:
            yield _error(cell.place, "person-code", "this person has no code")
        elif cell.text.startswith(FORMULA_STARTS):
            yield _formula(cell)
        elif not _CODE.match(cell.text) or len(cell.text) > MOST_CHARACTERS:
            message = f"'{cell.text[:MOST_CHARACTERS]}' cannot be a code"
            hint = "letters and digits, with a space, dot or dash between them: Apprentice 01"
            yield _error(cell.place, "person-code", message, hint)
        elif _is_mixed(cell.text):
            message = f"'{cell.text}' has letters or digits that look like others and are not"
            hint = "type the code again on one keyboard"
            yield _error(cell.place, "person-code", message, hint)
        elif spoken in first:
            message = f"'{cell.text}' is there already, in line {first[spoken]}"
            yield _error(cell.place, "person-repeated", message)
        else:
            first[spoken] = cell.place.line


def _is_mixed(code: str) -> bool:
    """Say whether a code has letters of two scripts, wide ones, or digits that are not 0 to 9."""
    scripts = {sign_name(sign, "").partition(" ")[0] for sign in code if sign.isalpha()}
    foreign = any(sign.isdigit() and not sign.isascii() for sign in code)
    return (
        foreign
        or normalize("NFKC", code) != code
        or len(scripts & {"LATIN", "GREEK", "CYRILLIC"}) > 1
    )


def _name_problems(cells: Sequence[Cell]) -> Iterator[Problem]:
    for cell in cells:
        if cell.text.startswith(FORMULA_STARTS):
            yield _formula(cell)
        elif len(cell.text) > MOST_CHARACTERS:
            message = f"this name is longer than {MOST_CHARACTERS} characters"
            yield _error(cell.place, "roster-row", message)


def _formula(cell: Cell) -> Problem:
    message = f"'{cell.text[:MOST_CHARACTERS]}' would run as a formula in a spreadsheet"
    return _error(cell.place, "roster-formula", message, "begin with a letter or a digit")


def _error(place: Place, rule: str, message: str, hint: str = "") -> Problem:
    return Problem(place, "error", rule, message, hint)
