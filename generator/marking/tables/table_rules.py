"""The pages that explain what is refused in a table of answers."""

from collections.abc import Mapping

from generator.bank.checks import Rule

_ALL = (
    Rule(
        "empty-table",
        "error",
        "An analysis needs a header that names the items, and at least one person.",
        "person,Q1,Q2",
        "person,Q1,Q2\nApprentice 01,A,C",
    ),
    Rule(
        "ragged-row",
        "error",
        "A row with too few or too many cells shifts answers to other items.",
        "person,Q1,Q2\nApprentice 01,A",
        "person,Q1,Q2\nApprentice 01,A,",
    ),
    Rule(
        "repeated-person",
        "error",
        "The same person twice counts one sitting double.",
        "Apprentice 01,A,C\nApprentice 01,B,C",
        "Apprentice 01,A,C\nApprentice 02,B,C",
    ),
    Rule(
        "repeated-item",
        "error",
        "Two columns or key rows of one name cannot be told apart.",
        "person,Q1,Q1",
        "person,Q1,Q2",
    ),
    Rule(
        "no-name",
        "error",
        "A person or item without a name cannot be found again.",
        ",A,C",
        "Apprentice 01,A,C",
    ),
    Rule(
        "unknown-item",
        "error",
        "The key names an item that the answers do not have; often one of the two is misspelt.",
        "item,key\nq1,A",
        "item,key\nQ1,A",
    ),
    Rule(
        "item-without-key",
        "error",
        "An item without a key would count as wrong for everyone.",
        "item,key\nQ1,A",
        "item,key\nQ1,A\nQ2,C",
    ),
    Rule("empty-key", "error", "An item needs one right option.", "Q1,", "Q1,A"),
    Rule(
        "key-header",
        "error",
        "The header shows which column is the item and which the key.",
        "Q1,A",
        "item,key\nQ1,A",
    ),
    Rule(
        "csv-quote",
        "error",
        "A quote left open swallows the rows behind it.",
        'Apprentice "01,A',
        '"Apprentice ""01""",A',
    ),
    Rule(
        "csv-control",
        "error",
        "Control characters can change what a screen or a spreadsheet shows.",
        "a cell with a tab inside",
        "a cell with a space instead",
    ),
    Rule(
        "csv-size",
        "error",
        "A table of a class is small; a huge file, or a link to something that is no file, is not "
        "read.",
        "guidecoat analyse everything_since_1990.csv",
        "guidecoat analyse spring_class.csv",
    ),
    Rule(
        "csv-encoding",
        "error",
        "The table is read as UTF-8, so that names come out as they were written.",
        "saved as Latin-1",
        "saved as UTF-8",
    ),
    Rule(
        "formula-cell",
        "warning",
        "A spreadsheet runs a cell that begins with = + - or @. Here it is read as text.",
        "=1+1,A,C",
        "Apprentice 01,A,C",
    ),
)
TABLE_RULES: Mapping[str, Rule] = {rule.name: rule for rule in _ALL}
