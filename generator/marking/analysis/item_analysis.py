"""A whole test analysed: its consistency, and every item with its options and flags."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from fractions import Fraction

from generator.marking.analysis.decision import Decision, decision_at
from generator.marking.analysis.flags import Flag, Trust, band_of, item_flags, trust_in
from generator.marking.analysis.moments import (
    correlation,
    correlation_interval,
    mean,
    sample_variance,
    share_interval,
    variance,
)
from generator.marking.analysis.option_counts import OptionUse, option_uses
from generator.marking.analysis.reliability import (
    alpha,
    alpha_if_dropped,
    error_of_measurement,
    kr20,
    kr21,
)
from generator.marking.analysis.scores import Figure, Scores

Interval = tuple[float, float] | None


@dataclass(frozen=True, slots=True)
class ItemAnalysis:
    """One item.

    right              people with full marks
    facility           mean score as a share of the most
    facility_interval  by Wilson; nothing for items with part marks
    item_total         correlation with the total, the item included
    item_rest          correlation with the total of the other items
    band               strength of the separation in a word; empty for small classes
    options            empty where only scores are known
    """

    name: str
    right: int
    facility: Figure
    facility_interval: Interval
    item_total: Figure
    item_rest: Figure
    item_rest_interval: Interval
    alpha_if_dropped: Figure
    band: str
    options: tuple[OptionUse, ...]
    flags: tuple[Flag, ...]


@dataclass(frozen=True, slots=True)
class ClassAnalysis:
    """A whole test.

    trust            what the number of people allows to say
    variance         of the totals, divisor n
    sample_variance  of the totals, divisor n - 1
    sem              standard error of measurement in marks
    """

    people: int
    trust: Trust
    mean: Figure
    variance: Figure
    sample_variance: Figure
    alpha: Figure
    kr20: Figure
    kr21: Figure
    sem: Figure
    items: tuple[ItemAnalysis, ...]
    decision: Decision | None = None


def analyse(
    scores: Scores,
    chosen: Mapping[str, Sequence[str]] | None = None,
    key: Mapping[str, str] | None = None,
    cut: int | None = None,
) -> ClassAnalysis:
    """Analyse a table of scores.

    chosen  what each person answered to each item, where options are to be looked at
    key     the right option of each item in `chosen`
    cut     marks from which a person passes, for the decision
    Figures that are not defined are nothing with a reason.
    """
    consistency = alpha(scores)
    people = scores.people
    return ClassAnalysis(
        people=people,
        trust=trust_in(people),
        mean=_figure(mean(scores.totals), scores.scale) if people else NOBODY,
        variance=_figure(variance(scores.totals), scores.scale**2) if people else NOBODY,
        sample_variance=(
            _figure(sample_variance(scores.totals), scores.scale**2) if people > 1 else TOO_FEW
        ),
        alpha=consistency,
        kr20=kr20(scores),
        kr21=kr21(scores),
        sem=error_of_measurement(scores, consistency),
        items=tuple(
            item_analysis(scores, place, (chosen or {}).get(name), (key or {}).get(name, ""))
            for place, name in enumerate(scores.items)
        ),
        decision=None if cut is None else decision_at(scores, cut, consistency),
    )


NOBODY = Figure(None, "nobody took the test")
TOO_FEW = Figure(None, "it takes two people")


def item_analysis(
    scores: Scores, place: int, chosen: Sequence[str] | None = None, key: str = ""
) -> ItemAnalysis:
    """Analyse the item at a place of a table.

    chosen  what each person answered to it, where options are to be looked at
    """
    column, most, people = scores.columns[place], scores.most[place], scores.people
    rest = correlation(column, scores.rest(place))
    options = option_uses(scores, place, chosen, key) if chosen is not None else ()
    facility = _figure(mean(column), scores.scale, most) if people else NOBODY
    right = sum(row[place] == most for row in scores.scores)
    part_marks = any(row[place] not in (0, most) for row in scores.scores)
    return ItemAnalysis(
        name=scores.items[place],
        right=right,
        facility=facility,
        facility_interval=None if part_marks else share_interval(right, people),
        item_total=correlation(column, scores.totals),
        item_rest=rest,
        item_rest_interval=correlation_interval(rest, people),
        alpha_if_dropped=alpha_if_dropped(scores, place),
        band=band_of(people, rest, facility.value or 0.0),
        options=options,
        flags=item_flags(people, rest, options),
    )


def _figure(value: Fraction, scale: int, most: Fraction = Fraction(1)) -> Figure:
    return Figure(float(value / scale / most))
