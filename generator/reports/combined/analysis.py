"""Item and test analysis of what was issued: pooled by item version over forms and issues.

People who met different forms are compared by their share of the marks: an item is set against the
rest of the person's own form. Figures of the whole test need items that everybody met.
"""

from collections.abc import Sequence
from dataclasses import dataclass, replace
from fractions import Fraction
from math import lcm

from generator.marking import ClassAnalysis, Figure, ItemAnalysis, Scores, analyse
from generator.marking.analysis import correlation, item_analysis, trust_in
from generator.reports.combined.answers import (
    ItemAnswers,
    ItemVersion,
    Pool,
    PooledPaper,
    gc_paused,
)
from generator.reports.combined.options import chosen_options

FEWEST_IN_COMMON = 2
REST = "the other questions of the form"
FORMS_DIFFER = Figure(None, "forms differ, and alpha needs the same items for everybody")


@dataclass(frozen=True, slots=True)
class PooledItem:
    """One item version.

    people    who answered it
    analysis  its figures; means on the rest are shares where forms differ, marks where they do not
    """

    version: str
    people: int
    analysis: ItemAnalysis


@dataclass(frozen=True, slots=True)
class PooledAnalysis:
    """What the answers to some issues say about their questions.

    waiting   papers that are not in the figures, as a person must still look at an answer
    one_form  whether everybody met the same items for the same marks
    common    names of the items that everybody met; `whole` is about these
    whole     figures of the test; each is nothing with a reason where too few items are common
    """

    issues: tuple[int, ...]
    waiting: int
    one_form: bool
    common: tuple[str, ...]
    whole: ClassAnalysis
    items: tuple[PooledItem, ...]


@gc_paused()
def analyse_pool(pool: Pool, cut: int | None = None) -> PooledAnalysis:
    """Analyse pooled papers.

    cut  marks for the decision; where forms are one, the marks from which they are passed if not
         given. Forms that differ have no decision.
    """
    if pool.one_form:
        cuts = {paper.cut for paper in pool.papers}
        cut = cut if cut is not None else cuts.pop() if len(cuts) == 1 else None
        whole = _one_form(pool, cut)
        analyses = whole.items
    else:
        whole = _whole(pool)
        analyses = tuple(_item(item, met) for item, met in pool.by_item.items())
    return PooledAnalysis(
        issues=pool.issues,
        waiting=pool.waiting,
        one_form=pool.one_form,
        common=tuple(item.name for item in pool.common),
        whole=whole,
        items=tuple(
            PooledItem(item.version, len(met.papers), analysis)
            for (item, met), analysis in zip(pool.by_item.items(), analyses, strict=True)
        ),
    )


def _one_form(pool: Pool, cut: int | None) -> ClassAnalysis:
    """Analyse one common form exactly as a table of responses is analysed."""
    options = {
        item.name: found
        for item, met in pool.by_item.items()
        if (found := chosen_options(met.answers))
    }
    chosen = {name: found.chosen for name, found in options.items()}
    key = {name: found.key for name, found in options.items()}
    return analyse(_scores(pool.papers, tuple(pool.by_item)), chosen, key, cut)


def _scores(papers: Sequence[PooledPaper], items: Sequence[ItemVersion]) -> Scores:
    return Scores(
        tuple(item.name for item in items),
        tuple(Fraction(papers[0].most[item]) for item in items) if papers else (),
        tuple(tuple(paper.points[item] for item in items) for paper in papers),
    )


def _whole(pool: Pool) -> ClassAnalysis:
    same_marks = [
        item for item in pool.common if len({paper.most[item] for paper in pool.papers}) == 1
    ]
    if len(same_marks) >= FEWEST_IN_COMMON:
        return analyse(_scores(pool.papers, same_marks))
    reason = f"forms differ: {len(same_marks) or 'no'} question stands on every form"
    nothing = Figure(None, reason)
    people = len(pool.papers)
    return ClassAnalysis(
        people, trust_in(people), nothing, nothing, nothing, nothing, nothing, nothing, nothing, ()
    )


def _item(item: ItemVersion, met: ItemAnswers) -> ItemAnalysis:
    """Analyse an item against the rest of each person's own form, in shares of the marks."""
    rows = tuple(
        (answer.share, paper.rest_share(answer))
        for answer, paper in zip(met.answers, met.papers, strict=True)
    )
    scores = Scores((item.name, REST), (Fraction(1), Fraction(1)), rows)
    options = chosen_options(met.answers)
    found = item_analysis(
        scores, 0, options.chosen if options else None, options.key if options else ""
    )
    total = correlation(scores.columns[0], _whole_numbers([p.total_share for p in met.papers]))
    return replace(found, item_total=total, alpha_if_dropped=FORMS_DIFFER)


def _whole_numbers(shares: Sequence[Fraction]) -> tuple[int, ...]:
    scale = lcm(*(share.denominator for share in shares))
    return tuple(share.numerator * (scale // share.denominator) for share in shares)
