"""Lines as they are printed: rows of sheets in two columns, steps and partners told apart."""

from collections.abc import Iterator, Sequence
from typing import Any

from generator.bank.bank import Bank, Entry
from generator.bank.checks.rule import Rule
from generator.bank.models import MatchItem
from generator.bank.written_texts import written_texts
from generator.diagnostics import Place, Problem, normal

MOST_CHARACTERS = 2000


def sheet_shape(bank: Bank) -> Iterator[Problem]:
    """Return rows of sheets that are no pair of cells, and sheets without rows."""
    for entry in bank.items.values():
        sheet = entry.record.sheet
        if sheet is None:
            continue
        if not sheet.rows:
            message = "this sheet has no rows, so nothing of it is printed"
            yield entry.problem("error", "sheet-shape", message, "sheet", "rows")
        for place, row in enumerate(sheet.rows):
            if len(row) != 2 and not (sheet.document and len(row) == 1):
                cells = {0: "no cell", 1: "1 cell"}.get(len(row), f"{len(row)} cells")
                message = f"this row has {cells}; a row of a sheet is a name and its value"
                yield entry.problem(
                    "error", "sheet-shape", message, "sheet", "rows", place,
                    hint="write [name, value]; a cell that holds a comma needs quotes",
                )  # fmt: skip


def steps_same_text(bank: Bank) -> Iterator[Problem]:
    """Return steps of procedures and order items that read like an earlier one."""
    orders = (e for e in bank.items.values() if getattr(e.record, "kind", "") == "order")
    entries: list[Entry[Any]] = [*bank.procedures.values(), *orders]
    for entry in entries:
        lines = [
            (step.action, ("steps", at, "action")) for at, step in enumerate(entry.record.steps)
        ]
        yield from _repeated(entry, lines, "steps-same-text", "step")


def partners_same_text(bank: Bank) -> Iterator[Problem]:
    """Return sides of a match item that read like another one on the same side."""
    for entry in bank.items.values():
        record = entry.record
        if isinstance(record, MatchItem):
            left = [(pair.left, ("pairs", at, "left")) for at, pair in enumerate(record.pairs)]
            right = [(pair.right, ("pairs", at, "right")) for at, pair in enumerate(record.pairs)]
            spare = [(text, ("spare", at)) for at, text in enumerate(record.spare)]
            yield from _repeated(entry, left, "partners-same-text", "left-hand text")
            yield from _repeated(entry, [*right, *spare], "partners-same-text", "right-hand text")


def _repeated(
    entry: Entry[Any], lines: Sequence[tuple[str, tuple[str | int, ...]]], rule: str, what: str
) -> Iterator[Problem]:
    seen: dict[str, int] = {}
    for place, (text, path) in enumerate(lines):
        first = seen.setdefault(normal(text), place)
        if first != place:
            message = f"this says the same as {what} {first + 1}"
            yield entry.problem("error", rule, message, *path, hint="say what sets the two apart")


def long_text(bank: Bank) -> Iterator[Problem]:
    """Return texts of records that no page and no paper was laid out for."""
    for text in written_texts(bank):
        if len(text.text) > MOST_CHARACTERS:
            yield long_problem(text.place, len(text.text))


def long_problem(place: Place, characters: int) -> Problem:
    """Return the error for a text of so many characters."""
    message = f"this text has {characters:,} characters; {MOST_CHARACTERS:,} is the most"
    return Problem(place, "error", "long-text", message, "split it, or shorten it")


RULES = (
    Rule(
        "long-text",
        "error",
        "A text of a record is shown on a phone and on a paper; nobody reads pages of it there.",
        "action: (3,000 characters)",
        "action: Wipe the panel dry with the second cloth",
        long_text,
    ),
    Rule(
        "sheet-shape",
        "error",
        "A sheet is printed in two columns: a third cell would be lost, and a missing one would "
        "move every later row.",
        "rows:\n  - [Add, 18 to 22 s, 4 mm cup]",
        'rows:\n  - [Add, "18 to 22 s, 4 mm cup"]',
        sheet_shape,
    ),
    Rule(
        "steps-same-text",
        "error",
        "Two lines with the same words look the same on the paper, and only one order of them "
        "would be right.",
        "- {step: first_wipe, action: Wipe the panel}\n- {step: last_wipe, action: Wipe the panel}",
        "- {step: first_wipe, action: Wipe the panel with degreaser}\n"
        "- {step: last_wipe, action: Wipe the panel dry with the second cloth}",
        steps_same_text,
    ),
    Rule(
        "partners-same-text",
        "error",
        "Where two partners read the same, a learner who knows the answer can still be wrong.",
        "- {left: Wax, right: Degreaser}\n- {left: Silicone, right: Degreaser}",
        "- {left: Wax, right: Degreaser}\n- {left: Road salt, right: Water}",
        partners_same_text,
    ),
)
