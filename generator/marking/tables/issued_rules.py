"""The pages that explain what is refused in a filled-in table of an issue."""

from collections.abc import Mapping

from generator.bank.checks import Rule

_HEADER = "form,label,person,1,2"
_ALL = (
    Rule(
        "issued-header",
        "error",
        "The header says which column is which question. It stays as it was issued.",
        "form,person,Q1,Q2",
        _HEADER,
    ),
    Rule(
        "no-answers",
        "error",
        "A table without any answer has nothing to mark.",
        f"{_HEADER}\n7KQ2M4TX,A,,,",
        f"{_HEADER}\n7KQ2M4TX,A,,B,12.5",
    ),
    Rule(
        "unknown-form",
        "error",
        "The id at the foot of a paper says which key marks it. An unknown one marks nothing.",
        "7KQ2M4TY,A,,B,12.5",
        "7KQ2M4TX,A,,B,12.5",
    ),
    Rule(
        "form-twice",
        "error",
        "Two rows for one form and person cannot both be the answers.",
        "7KQ2M4TX,A,,B,12.5\n7KQ2M4TX,A,,C,12.5",
        "7KQ2M4TX,A,,B,12.5",
    ),
    Rule(
        "wrong-label",
        "error",
        "The label of another form shows that two rows or two papers were mixed up.",
        "7KQ2M4TX,B,,B,12.5",
        "7KQ2M4TX,A,,B,12.5",
    ),
    Rule(
        "wrong-person",
        "error",
        "A form that was made for one person is not marked for another.",
        "7KQ2M4TX,A,Apprentice 02,B,12.5",
        "7KQ2M4TX,A,Apprentice 01,B,12.5",
    ),
    Rule(
        "unknown-person",
        "error",
        "Marks go to people who are in the records; a misspelt code would lose them.",
        "7KQ2M4TX,A,Aprentice 01,B,12.5",
        "7KQ2M4TX,A,Apprentice 01,B,12.5",
    ),
    Rule(
        "answer-beyond",
        "error",
        "An answer behind the last question shows that the row has slipped, often through a comma "
        "in a number that is not in quotes.",
        "7KQ2M4TX,A,,B,12,5",
        '7KQ2M4TX,A,,B,"12,5"',
    ),
    Rule("two-letters", "error", "A choice has one answer.", "AB", "B"),
    Rule(
        "answer-letters",
        "error",
        "A letter that the question does not have, or that stands there twice, is a slip of the "
        "hand.",
        "E",
        "A C",
    ),
    Rule(
        "answer-pairs",
        "error",
        "A match is pairs of a number and a letter, each number once.",
        "C A B",
        "1C 2A 3B",
    ),
    Rule(
        "answer-marks",
        "error",
        "A written answer has whole marks for each marking point, none above what it is worth.",
        "3",
        "2 0 1",
    ),
    Rule(
        "answer-length",
        "error",
        "A cell holds one answer, not a text.",
        "a page of text",
        "12.5 µm",
    ),
    Rule(
        "order-not-whole",
        "warning",
        "An order with a step left out or written twice is marked as it stands. Look at the paper "
        "to see whether it was typed right.",
        "C A B",
        "C A B D",
    ),
    Rule(
        "spreadsheet-file",
        "error",
        "Only a plain workbook is read: one sheet with cells, not locked, not huge.",
        "answers.ods",
        "answers.xlsx",
    ),
    Rule(
        "spreadsheet-formula",
        "error",
        "A formula is not an answer, and what it gives may have changed since it was looked at.",
        "=C4",
        "12.5",
    ),
    Rule(
        "spreadsheet-date",
        "error",
        "The spreadsheet turned what was typed into a date or a time, and nobody can tell what it "
        "was. Type it again with the cells set to text.",
        "3-Apr",
        "3/4",
    ),
    Rule(
        "spreadsheet-cell",
        "error",
        "A cell holds a text or a number; TRUE and spreadsheet errors are neither.",
        "#N/A",
        "12.5",
    ),
    Rule(
        "answers-file",
        "error",
        "The answers in a file must be answers to the questions of its form.",
        "an option E where there are three",
        "the file as the page saved it",
    ),
)
ISSUED_RULES: Mapping[str, Rule] = {rule.name: rule for rule in _ALL}
