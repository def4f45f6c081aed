"""What was issued here, analysed: answers pooled over issues."""

from collections.abc import Sequence

from generator.diagnostics import did_you_mean
from generator.records import Records, RecordsRefused
from generator.records.issues import all_issues
from generator.reports import Pool, PooledAnalysis, analyse_pool, pooled
from generator.workflows.refusals import Refused, refusing


@refusing(RecordsRefused)
def analyse_issues(
    connection: Records, issues: Sequence[int], blueprint: str | None, cut: int | None
) -> PooledAnalysis | Refused:
    """Return the analysis of some issues, or of every issue of a blueprint that was not voided.

    cut  marks from which a person passes
    """
    pool = pooled(connection, tuple(dict.fromkeys(issues)) or issues_of(connection, blueprint))
    if not pool.papers:
        waiting = "; a person must still look at every paper" if pool.waiting else ""
        return Refused(f"nobody has answered these papers yet{waiting}")
    return _cut_that_cannot_be(pool, cut) or analyse_pool(pool, cut)


def issues_of(connection: Records, blueprint: str | None) -> tuple[int, ...]:
    """Return the issues of a blueprint that were not voided; raises RecordsRefused for none."""
    lines = [line for line in all_issues(connection) if not line.voided]
    found = tuple(line.number for line in lines if line.blueprint == blueprint)
    if not found:
        hint = did_you_mean(blueprint or "", (line.blueprint for line in lines))
        known = hint or "guidecoat records issues lists what was issued"
        raise RecordsRefused(f"nothing was issued from the blueprint '{blueprint}'; {known}")
    return found


def _cut_that_cannot_be(pool: Pool, cut: int | None) -> Refused | None:
    if cut is None:
        return None
    if not pool.one_form:
        return Refused("a cut needs one form for everybody, and these forms differ", misuse=True)
    most = sum(pool.papers[0].most.values())
    if cut > most:
        return Refused(f"the cut {cut} is above the {most} marks there are", misuse=True)
    return None
