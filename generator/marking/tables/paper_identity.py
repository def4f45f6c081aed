"""What the first cells of a row must say: which form was issued, and whose it is."""

from collections import defaultdict
from collections.abc import Callable, Collection, Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass, field
from typing import Any

from generator.diagnostics import Problem, nearest_code
from generator.marking.tables.csv_cells import Cell
from generator.marking.tables.issued_table import plain_form_id
from generator.marking.tables.table_problems import error

# a form's label such as A or AB is shorter than any id
LONGEST_LABEL = 3
Forms = Mapping[str, Mapping[str, Any]]
Halves = Mapping[str, Sequence[str]]


def _nobody_erased(code: str) -> bool:
    return False


@dataclass(frozen=True, slots=True)
class Known:
    """What the records know.

    forms     plain JSON by form id, with the person's code: at least those that the table names
    halves    every id in use by each of its halves, for the nearest one
    people    every code
    voided    the numbers of voided issues by the ids of their forms
    names     code by name in small letters, where the shop keeps names
    erased    says of a code whether that person was erased
    """

    forms: Forms
    halves: Halves
    people: Collection[str]
    voided: Mapping[str, int] = field(default_factory=dict)
    names: Mapping[str, str] = field(default_factory=dict)
    erased: Callable[[str], bool] = _nobody_erased


def unknown_form(cell: Cell, known: Known) -> Problem:
    """Return the problem of an id that marks nothing."""
    form_id = plain_form_id(cell.text)
    if not form_id:
        return error(cell.place, "unknown-form", "this row names no form")
    if form_id in known.voided:
        number = known.voided[form_id]
        message = f"form {form_id} is of issue {number}, which was voided"
        hint = f"to use it again: guidecoat records void {number} --take-back --reason ..."
        return error(cell.place, "unknown-form", message, hint)
    hint = nearest_form(form_id, known.halves)
    if len(form_id) <= LONGEST_LABEL:
        hint = (
            f"'{cell.text}' is a label; the id of eight characters stands at the foot of the paper"
        )
    return error(cell.place, "unknown-form", f"no form '{cell.text}' was issued", hint)


def by_halves(form_ids: Iterable[str]) -> Halves:
    """Return ids by their first and by their last half, so that a table of strange ids is quick."""
    found: dict[str, list[str]] = defaultdict(list)
    for form_id in form_ids:
        for half in _halves(form_id):
            found[half].append(form_id)
    return found


def _halves(form_id: str) -> tuple[str, str]:
    middle = len(form_id) // 2
    return f"{form_id[:middle]}-", f"-{form_id[middle:]}"


def nearest_form(form_id: str, halves: Halves) -> str:
    """Return a hint with the id of which one half is the same and the other most alike."""
    near = [other for half in _halves(form_id) for other in halves.get(half, ())]
    best = max(near, key=lambda other: _alike(form_id, other), default="")
    return f"did you mean '{best}'?" if best else ""


def _alike(one: str, other: str) -> int:
    return sum(a == b for a, b in zip(one, other, strict=False))


def label_problems(cell: Cell, form: Mapping[str, Any]) -> Iterator[Problem]:
    """Return what is wrong with the label of a form; empty is never wrong."""
    if cell.text and cell.text.upper() != form["form"].upper():
        message = f"form {form['form_id']} has the label {form['form']}, not '{cell.text}'"
        yield error(cell.place, "wrong-label", message)


def person_meant(text: str, form: Mapping[str, Any], known: Known) -> str:
    """Return the code that is meant, as the records write it; the form's own if none is given."""
    owner = str(form.get("person", ""))
    given = " ".join(text.split()).casefold()
    codes = (owner,) if owner else known.people
    return next((code for code in codes if code.casefold() == given), text) if given else owner


def person_problems(cell: Cell, form: Mapping[str, Any], known: Known) -> Iterator[Problem]:
    """Return what is wrong with the person for whom a form is marked; empty is never wrong."""
    owner = form.get("person", "")
    code = person_meant(cell.text, form, known)
    if code == owner:
        return
    if owner:
        message = f"form {form['form_id']} was made for '{owner}', not for '{code}'"
        yield error(cell.place, "wrong-person", message)
    elif code not in known.people:
        yield _unknown_person(cell, code, known)


def _unknown_person(cell: Cell, code: str, known: Known) -> Problem:
    if known.erased(code):
        message = f"'{code}' was erased from the records, so no answers are kept for that code"
        hint = "take this row out of the table"
        return error(cell.place, "unknown-person", message, hint)
    if code.casefold() in known.names:
        message = f"'{code}' is a name, and this column takes the code"
        hint = f"write '{known.names[code.casefold()]}'"
        return error(cell.place, "unknown-person", message, hint)
    hint = nearest_code(code, known.people)
    hint = hint or f'add the person first: guidecoat records people --person "{code}"'
    return error(cell.place, "unknown-person", f"'{code}' is not in the records", hint)
