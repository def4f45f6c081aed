"""`guidecoat analyse`."""

import json
from pathlib import Path

import click

from generator.command_line.terminal import accepted, records_here, renamed
from generator.diagnostics import as_text

_FILE = click.Path(exists=True, dir_okay=False, path_type=Path)
# SQLite holds no larger row number
NUMBER = click.IntRange(1, 2**31)


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
        from generator.command_line.marking.analysis_text import pooled_text
        from generator.reports import pooled_as_plain
        from generator.workflows.answers import analyse_issues

        with records_here() as (connection, _):
            pool = accepted(analyse_issues(connection, issues, blueprint, cut))
        as_json = output_format == "json"
        click.echo(_json(pooled_as_plain(pool)) if as_json else pooled_text(pool))
        return
    if responses is None or key_file is None:
        raise click.UsageError("a table of RESPONSES needs --key-file with the right answers")
    _analyse_table(responses, key_file, cut, output_format)


def _analyse_table(responses: Path, key_file: Path, cut: int | None, output_format: str) -> None:
    from generator.command_line.marking.analysis_text import analysis_text
    from generator.marking import analysis_as_plain
    from generator.workflows.answers import analyse_table
    from generator.workflows.files import line_of

    found = accepted(analyse_table(responses, key_file, cut), line_of)
    if found.problems:
        click.echo(as_text(found.problems, line_of), err=True)
    as_json = output_format == "json"
    plain = analysis_as_plain(found.analysis)
    click.echo(_json(plain) if as_json else analysis_text(found.analysis))


def _json(plain: object) -> str:
    return json.dumps(plain, ensure_ascii=False, indent=2)
