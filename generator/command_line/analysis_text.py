"""An analysis as text for people: no more is said than the size of the class bears."""

from collections.abc import Iterator

from generator.marking import ClassAnalysis, Figure, ItemAnalysis
from generator.marking.analysis import FLAG_WORDS, Decision, idle_options, trust_in
from generator.reports import PooledAnalysis
from generator.reports.combined import FORMS_DIFFER

_TRUST = {
    "counts": "Fewer than 10 people: only counts are shown.",
    "facility": "Fewer than 30 people: no verdict on how items separate.",
    "interval": "Fewer than 100 people: read each figure with its interval.",
    "bands": "",
}


def analysis_text(analysis: ClassAnalysis) -> str:
    """Write the whole test, then each item with its options and flags."""
    items = (line for item in analysis.items for line in item_lines(item, analysis.people))
    return "\n".join([*_test(analysis), *items])


def pooled_text(analysis: PooledAnalysis) -> str:
    """Write what an analysis of issues rests on, the whole test, then each item."""
    items = (
        line
        for item in analysis.items
        for line in item_lines(item.analysis, item.people, f" (version {item.version[:8]})")
    )
    return "\n".join([*_pool(analysis), *items])


def _pool(analysis: PooledAnalysis) -> Iterator[str]:
    yield f"Issues: {', '.join(map(str, analysis.issues))}"
    if analysis.waiting:
        yield f"Not in the figures, as a person must still look: {analysis.waiting} papers"
    if analysis.one_form:
        yield from _test(analysis.whole)
        return
    people = analysis.whole.people
    yield f"People: {people}   Items: {len(analysis.items)}, on forms that differ"
    if not analysis.common:
        yield "No item stands on every form, so alpha and KR-20 say nothing here."
    else:
        yield f"Everybody met {len(analysis.common)} of the items; alpha is of these alone."
        if trust_in(people) != "counts":
            whole = analysis.whole
            yield f"Alpha: {_shown(whole.alpha)}   KR-20: {_shown(whole.kr20)}"
    yield "Item-rest r is against the share of the marks on the rest of a person's own form."


def _test(analysis: ClassAnalysis) -> Iterator[str]:
    yield f"People: {analysis.people}   Items: {len(analysis.items)}"
    if _TRUST[analysis.trust]:
        yield _TRUST[analysis.trust]
    yield f"Mean: {_shown(analysis.mean)}"
    if analysis.trust != "counts":
        yield f"Variance (n): {_shown(analysis.variance)}"
        yield f"Alpha: {_shown(analysis.alpha)}   KR-20: {_shown(analysis.kr20)}"
        yield f"Standard error of measurement: {_shown(analysis.sem)} marks"
    if analysis.decision is not None:
        yield from _decision(analysis.decision, analysis)


def _decision(decision: Decision, analysis: ClassAnalysis) -> Iterator[str]:
    yield f"At or above the cut of {decision.cut}: {decision.passed} of {analysis.people}"
    if analysis.trust in ("interval", "bands"):
        yield (
            f"Same verdict again: {_shown(decision.agreement)}"
            f" (by chance {_shown(decision.by_chance)}, kappa {_shown(decision.kappa)})"
        )


def item_lines(item: ItemAnalysis, people: int, more: str = "") -> Iterator[str]:
    """Write one item.

    people  who answered it
    more    what stands behind its name
    """
    trust = trust_in(people)
    with_figures = trust in ("interval", "bands")
    yield ""
    yield f"{item.name}{more}: {item.right} of {people} right"
    if trust != "counts":
        yield f"  facility {_shown(item.facility)}{_between(item.facility_interval)}"
    if with_figures:
        band = f", {item.band}" if item.band else ""
        yield f"  item-rest r {_shown(item.item_rest)}{_between(item.item_rest_interval)}{band}"
        if item.alpha_if_dropped != FORMS_DIFFER:
            yield f"  alpha without it {_shown(item.alpha_if_dropped)}"
    yield from _options(item, with_figures)
    yield from _flags(item)


def _options(item: ItemAnalysis, with_figures: bool) -> Iterator[str]:
    for use in item.options:
        name = ("*" if use.is_key else " ") + (use.option or "blank")
        line = f"  {name:<8}{use.people:>6}"
        if with_figures:
            mean = "" if use.rest_mean is None else f"   mean on the rest {use.rest_mean:.3f}"
            line += f"   share {use.share:.3f}   r {_shown(use.rest)}{mean}"
        yield line


def _flags(item: ItemAnalysis) -> Iterator[str]:
    for flag in item.flags:
        if flag == "option_not_working":
            yield f"  look: {FLAG_WORDS[flag]}: {', '.join(idle_options(item.options))}"
        elif flag != "too_few_people":
            yield f"  look: {FLAG_WORDS[flag]}"


def _shown(figure: Figure) -> str:
    return f"undefined ({figure.reason})" if figure.value is None else f"{figure.value:.3f}"


def _between(interval: tuple[float, float] | None) -> str:
    return f" ({interval[0]:.2f} to {interval[1]:.2f})" if interval else ""
