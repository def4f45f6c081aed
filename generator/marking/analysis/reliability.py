"""How consistent a test is: alpha, the Kuder-Richardson figures, the error of measurement.

Formulas: Cronbach 1951; Kuder and Richardson 1937. Variances have the divisor n throughout, so
that KR-20 equals alpha on right-or-wrong items; only the error of measurement uses n - 1.
"""

from collections.abc import Sequence
from fractions import Fraction
from math import sqrt

from generator.marking.analysis.moments import NOBODY, ONE_PERSON, mean, sample_variance, variance
from generator.marking.analysis.scores import Scores, Statistic

ONE_ITEM = "a single item has no consistency"
NO_SPREAD = "everyone has the same total"
NOT_RIGHT_OR_WRONG = "not every item is right or wrong"


def alpha(scores: Scores) -> Statistic:
    """Return Cronbach's alpha on the raw scores."""
    return _statistic(_exact_alpha(scores.columns, scores.totals))


def alpha_if_dropped(scores: Scores, place: int) -> Statistic:
    """Return alpha without one item."""
    others = [column for other, column in enumerate(scores.columns) if other != place]
    return _statistic(_exact_alpha(others, scores.rest(place)))


def kr20(scores: Scores) -> Statistic:
    """Return KR-20, from the share of right answers alone; for right-or-wrong items only."""
    refusal = _refusal(len(scores.items), scores.totals)
    if refusal or not scores.right_or_wrong:
        return Statistic(None, refusal or NOT_RIGHT_OR_WRONG)
    shares = [mean(column) for column in scores.columns]
    spread = sum((share * (1 - share) for share in shares), Fraction(0))
    return _statistic(_stretched(len(shares), spread / variance(scores.totals)))


def kr21(scores: Scores) -> Statistic:
    """Return KR-21, which takes all items as equally hard; for right-or-wrong items only."""
    refusal = _refusal(len(scores.items), scores.totals)
    if refusal or not scores.right_or_wrong:
        return Statistic(None, refusal or NOT_RIGHT_OR_WRONG)
    items, middle = len(scores.items), mean(scores.totals)
    return _statistic(
        _stretched(items, middle * (items - middle) / (items * variance(scores.totals)))
    )


def error_of_measurement(scores: Scores, consistency: Statistic) -> Statistic:
    """Return the standard error of measurement in marks, from the sample standard deviation."""
    if consistency.value is None:
        return consistency
    spread = sample_variance(scores.totals) / scores.scale**2
    return Statistic(sqrt(spread * (1 - Fraction(consistency.value))))


def _exact_alpha(columns: Sequence[Sequence[int]], totals: Sequence[int]) -> Fraction | str:
    refusal = _refusal(len(columns), totals)
    if refusal:
        return refusal
    spread = sum((variance(column) for column in columns), Fraction(0))
    return _stretched(len(columns), spread / variance(totals))


def _refusal(items: int, totals: Sequence[int]) -> str:
    if len(totals) < 2:
        return ONE_PERSON if totals else NOBODY
    if items < 2:
        return ONE_ITEM
    return NO_SPREAD if variance(totals) == 0 else ""


def _stretched(items: int, share_of_items: Fraction) -> Fraction:
    return Fraction(items, items - 1) * (1 - share_of_items)


def _statistic(found: Fraction | str) -> Statistic:
    return Statistic(None, found) if isinstance(found, str) else Statistic(float(found))
