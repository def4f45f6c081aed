"""`guidecoat analyse --issue`: what was issued here, pooled over issues."""

import json
from collections.abc import Sequence

import click

from generator.command_line.analysis_text import pooled_text
from generator.command_line.records_desk import records_here
from generator.diagnostics import did_you_mean
from generator.records import Records, RecordsRefused
from generator.records.issues import all_issues
from generator.reports import Pool, analyse_pool, pooled, pooled_as_plain


def analyse_issued(
    issues: Sequence[int], blueprint: str | None, cut: int | None, form: str
) -> None:
    """Show the analysis of some issues, or of every issue of a blueprint that was not voided."""
    with records_here() as (connection, _):
        pool = pooled(connection, tuple(dict.fromkeys(issues)) or issues_of(connection, blueprint))
    if not pool.papers:
        waiting = "; a person must still look at every paper" if pool.waiting else ""
        raise click.ClickException(f"nobody has answered these papers yet{waiting}")
    _refuse_cut(pool, cut)
    found = analyse_pool(pool, cut)
    if form == "json":
        click.echo(json.dumps(pooled_as_plain(found), ensure_ascii=False, indent=2))
    else:
        click.echo(pooled_text(found))


def issues_of(connection: Records, blueprint: str | None) -> tuple[int, ...]:
    """Return the issues of a blueprint that were not voided; raises RecordsRefused for none."""
    lines = [line for line in all_issues(connection) if not line.voided]
    found = tuple(line.number for line in lines if line.blueprint == blueprint)
    if not found:
        hint = did_you_mean(blueprint or "", (line.blueprint for line in lines))
        known = hint or "guidecoat records issues lists what was issued"
        raise RecordsRefused(f"nothing was issued from the blueprint '{blueprint}'; {known}")
    return found


def _refuse_cut(pool: Pool, cut: int | None) -> None:
    if cut is None:
        return
    if not pool.one_form:
        raise click.UsageError("a cut needs one form for everybody, and these forms differ")
    most = sum(pool.papers[0].most.values())
    if cut > most:
        raise click.UsageError(f"the cut {cut} is above the {most} marks there are")
