"""`guidecoat analyse`."""

import json
import sys
from pathlib import Path

import click

from generator.command_line.analyse_issued import analyse_issued
from generator.command_line.analysis_text import analysis_text
from generator.command_line.renamed_options import renamed
from generator.command_line.table_files import line_of, text_of
from generator.diagnostics import Problem, as_text, has_errors
from generator.marking import (
    Key,
    ResponseTable,
    analysis_as_plain,
    key_disagreements,
    read_key,
    read_responses,
)
from generator.marking import (
    analyse as analyse_scores,
)

_FILE = click.Path(exists=True, dir_okay=False, path_type=Path)
# SQLite holds no larger row number
NUMBER = click.IntRange(1, 2**31)
Problems = tuple[Problem, ...]


@click.command()
@click.argument("responses", type=_FILE, required=False)
@click.option("--key-file", type=_FILE, help="A table with item and key, for RESPONSES.")
@renamed("--key", "--key-file")
@click.option("--issue", "issues", type=NUMBER, multiple=True, help="An issue in the records.")
@click.option("--blueprint", help="Every issue of this blueprint in the records.")
@click.option("--cut", type=click.IntRange(min=0), help="Marks from which a person passes.")
@click.option("--format", "output_format", type=click.Choice(["text", "json"]), default="text")
def analyse(
    responses: Path | None,
    key_file: Path | None,
    issues: tuple[int, ...],
    blueprint: str | None,
    cut: int | None,
    output_format: str,
) -> None:
    """Analyse a class's answers: how hard, how sharp and how consistent a paper was.

    RESPONSES is a comma-separated table: one row a person, the first column names the person, every
    other column is an item. `variance` has the divisor n, `sem` the sample standard deviation.

    Example: guidecoat analyse answers.csv --key-file key.csv --cut 14

    With --issue (once or more) or --blueprint, what was issued here is analysed instead, pooled by
    the version of each question. Where forms differ, a question is set against the rest of the
    person's own form, and alpha rests only on questions that everybody met. The names in JSON are
    the same, with `issues`, `waiting`, `one_form` and `common` besides, and `version` and `people`
    for each question.

    Or: guidecoat analyse --issue 3 --issue 5 --format json
    """
    from_records = bool(issues or blueprint)
    if from_records == (responses is not None):
        raise click.UsageError(
            "give a table of RESPONSES with --key-file, or issues with --issue or --blueprint"
        )
    if from_records:
        if key_file is not None:
            raise click.UsageError("--key-file goes with RESPONSES; issues have their own keys")
        analyse_issued(issues, blueprint, cut, output_format)
        return
    if responses is None or key_file is None:
        raise click.UsageError("a table of RESPONSES needs --key-file with the right answers")
    _analyse_table(responses, key_file, cut, output_format)


def _analyse_table(responses: Path, key_file: Path, cut: int | None, output_format: str) -> None:
    table, key, problems = _read(responses, key_file)
    if problems:
        click.echo(as_text(problems, line_of), err=True)
    if table is None or key is None or has_errors(problems):
        sys.exit(1)
    if cut is not None and cut > len(table.items):
        raise click.UsageError(f"the cut {cut} is above the {len(table.items)} marks there are")
    found = analyse_scores(table.scored(key.right), table.chosen(), key.right, cut)
    if output_format == "json":
        click.echo(json.dumps(analysis_as_plain(found), ensure_ascii=False, indent=2))
    else:
        click.echo(analysis_text(found))


def _read(responses: Path, key_file: Path) -> tuple[ResponseTable | None, Key | None, Problems]:
    answers_text, answers_bad = text_of(responses)
    key_text, key_bad = text_of(key_file)
    if answers_text is None or key_text is None:
        return None, None, (*answers_bad, *key_bad)
    table, table_problems = read_responses(answers_text, responses.as_posix())
    key, problems_of_key = read_key(key_text, key_file.as_posix())
    between = key_disagreements(table, key, responses.as_posix()) if table and key else ()
    return table, key, (*table_problems, *problems_of_key, *between)
