"""The pages that explain what is refused in a roster."""

from collections.abc import Mapping

from generator.bank.checks import Rule

_ALL = (
    Rule(
        "roster-empty",
        "error",
        "A roster names the people who get a paper, one a line.",
        "code,name",
        "code,name\nApprentice 01,",
    ),
    Rule(
        "roster-columns",
        "error",
        "The header says which column is the code and which, where wanted, the name.",
        "person,phone",
        "code,name",
    ),
    Rule(
        "roster-row",
        "error",
        "A row with too few or too many cells may give one person's paper to another.",
        "code,name\nApprentice 01,Ann,Bay 2",
        "code,name\nApprentice 01,Ann",
    ),
    Rule(
        "roster-size",
        "error",
        "One issue serves a class, not a town.",
        "a roster of 500 people",
        "three rosters, each with a seed of its own",
    ),
    Rule(
        "roster-formula",
        "error",
        "A spreadsheet runs a cell that begins with = + - or @, and results go back into tables.",
        "code\n=1+1",
        "code\nApprentice 01",
    ),
    Rule(
        "person-code",
        "error",
        "A code stands on papers and in tables, so it is short and has letters and digits only, "
        "with a space, dot or dash between them.",
        "code\n../01",
        "code\nApprentice 01",
    ),
    Rule(
        "person-letters",
        "error",
        "Codes stand on papers and names on certificates, and the typefaces of the papers have "
        "Latin, Greek and Cyrillic letters.",
        "code,name\nApprentice 01,\u738b\u4f1f",
        "code,name\nApprentice 01,Wang Wei",
    ),
    Rule(
        "person-repeated",
        "error",
        "The same person twice would get two papers that count as two people.",
        "code\nApprentice 01\napprentice-01",
        "code\nApprentice 01\nApprentice 02",
    ),
)
ROSTER_RULES: Mapping[str, Rule] = {rule.name: rule for rule in _ALL}
