"""Tables and files of responses, read cell by cell with every problem placed."""

from generator.marking.tables.answers_file import read_answers_file
from generator.marking.tables.csv_cells import (
    FORMULA_STARTS,
    Cell,
    Row,
    read_cells,
    spreadsheet_safe,
)
from generator.marking.tables.issued_answers import (
    FormAnswers,
    IssuedAnswers,
    file_problems,
    form_ids_of,
    read_issued,
)
from generator.marking.tables.issued_cells import (
    BLANK,
    ILLEGIBLE,
    CellRefused,
    answer_cell,
    doubts_about,
    read_answer,
)
from generator.marking.tables.issued_rules import ISSUED_RULES
from generator.marking.tables.issued_table import answer_table, plain_form_id
from generator.marking.tables.paper_identity import (
    Known,
    by_halves,
    person_meant,
    person_problems,
    unknown_form,
)
from generator.marking.tables.spreadsheet import named_cells, named_text_cells, read_workbook
from generator.marking.tables.table_problems import error, key_problems, table_problems
from generator.marking.tables.table_rules import TABLE_RULES
from generator.marking.tables.workbook_parts import MOST_BYTES

__all__ = [
    "BLANK",
    "Cell",
    "CellRefused",
    "FORMULA_STARTS",
    "FormAnswers",
    "ILLEGIBLE",
    "ISSUED_RULES",
    "IssuedAnswers",
    "Known",
    "MOST_BYTES",
    "Row",
    "TABLE_RULES",
    "answer_cell",
    "answer_table",
    "by_halves",
    "doubts_about",
    "error",
    "file_problems",
    "form_ids_of",
    "key_problems",
    "named_cells",
    "named_text_cells",
    "person_meant",
    "person_problems",
    "plain_form_id",
    "read_answer",
    "read_answers_file",
    "read_cells",
    "read_issued",
    "read_workbook",
    "spreadsheet_safe",
    "table_problems",
    "unknown_form",
]
