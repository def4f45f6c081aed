"""Whole documents and beliefs: what names them, and what they need."""

from collections.abc import Iterator

from generator.bank.bank import Bank, module_of
from generator.bank.checks.rule import Rule
from generator.diagnostics import Problem, did_you_mean


def reads_whole_sheet(bank: Bank) -> Iterator[Problem]:
    """Return items that say they are answered from a whole document and name none."""
    for item in bank.items.values():
        sheet = item.record.sheet
        if item.record.reads_sheet and not (sheet and sheet.document):
            message = "this item is answered by reading a whole document, and names none"
            hint = "write 'sheet:' with the name of a file in data_sheets"
            yield item.problem("error", "reads-sheet", message, "reads_sheet", hint=hint)


def document_lines(bank: Bank) -> Iterator[Problem]:
    """Return lines of documents that are no pair of cells."""
    for entry in bank.data_sheets.values():
        for at, section in enumerate(entry.record.sections):
            for place, row in enumerate(section.rows):
                if len(row) != 2:
                    path = ("sections", at, "rows", place)
                    message = f"this line has {len(row)} cells; it takes a name and its value"
                    hint = "write [name, value]; a cell that holds a comma needs quotes"
                    yield entry.problem("error", "document-line", message, *path, hint=hint)


def unknown_belief(bank: Bank) -> Iterator[Problem]:
    """Return beliefs that items confront and nobody wrote down, and those of no module."""
    modules = [module.module for module in bank.modules]
    for name, entry in bank.beliefs.items():
        if module_of(name) not in modules:
            message = f"the outline has no module '{module_of(name)}', which names this file"
            yield entry.problem("error", "unknown-belief", message)
    for item in bank.items.values():
        for place, name in enumerate(item.record.confronts):
            if name not in bank.beliefs and not bank.was_unread("beliefs", name):
                message = f"the bank has no belief '{name}'"
                hint = did_you_mean(name, bank.beliefs) or "a belief is named module/name"
                yield item.problem(
                    "error", "unknown-belief", message, "confronts", place, hint=hint
                )


RULES = (
    Rule(
        "reads-sheet",
        "error",
        "Finding a line is a skill only on a whole document; on an extract of two lines there is "
        "nothing to find.",
        "reads_sheet: true",
        "reads_sheet: true\nsheet: surfacer_2k",
        reads_whole_sheet,
    ),
    Rule(
        "document-line",
        "error",
        "A document is printed in two columns, a name and its value.",
        "- [Add, 18 to 22 s, 4 mm cup]",
        '- [Add, "18 to 22 s, 4 mm cup"]',
        document_lines,
    ),
    Rule(
        "unknown-belief",
        "error",
        "A belief that a question confronts is written down once, in beliefs, with what is true.",
        "confronts: [mixing/more_hardner_is_faster]",
        "confronts: [mixing/more_hardener_is_faster]",
        unknown_belief,
    ),
)
