"""A table of answers that somebody made elsewhere, analysed with its key."""

from dataclasses import dataclass
from pathlib import Path

from generator.diagnostics import Problem, has_errors
from generator.marking import (
    ClassAnalysis,
    Key,
    ResponseTable,
    analyse,
    key_disagreements,
    read_key,
    read_responses,
)
from generator.workflows.files import text_of
from generator.workflows.refusals import Refused

Problems = tuple[Problem, ...]


@dataclass(frozen=True, slots=True)
class TableAnalysis:
    """The analysis of a table, with what looked odd in it."""

    analysis: ClassAnalysis
    problems: Problems


def analyse_table(responses: Path, key_file: Path, cut: int | None) -> TableAnalysis | Refused:
    """Return the analysis of a table, or every problem of the table and its key.

    cut  marks from which a person passes
    """
    table, key, problems = _read(responses, key_file)
    if table is None or key is None or has_errors(problems):
        return Refused("", problems)
    if cut is not None and cut > len(table.items):
        sentence = f"the cut {cut} is above the {len(table.items)} marks there are"
        return Refused(sentence, problems, misuse=True)
    return TableAnalysis(analyse(table.scored(key.right), table.chosen(), key.right, cut), problems)


def _read(responses: Path, key_file: Path) -> tuple[ResponseTable | None, Key | None, Problems]:
    answers_text, answers_bad = text_of(responses)
    key_text, key_bad = text_of(key_file)
    if answers_text is None or key_text is None:
        return None, None, (*answers_bad, *key_bad)
    table, table_problems = read_responses(answers_text, responses.as_posix())
    key, problems_of_key = read_key(key_text, key_file.as_posix())
    between = key_disagreements(table, key, responses.as_posix()) if table and key else ()
    return table, key, (*table_problems, *problems_of_key, *between)
