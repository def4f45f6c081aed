"""Answers of one or more issues, item version by item version, as an analysis reads them."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from fractions import Fraction
from functools import cache, cached_property
from typing import NamedTuple

from generator.records import Records
from generator.records.answered_papers import AnsweredPaper, AnsweredQuestion, answered_papers
from generator.reports.sat_papers import pass_marks


class ItemVersion(NamedTuple):
    """An item and the version of its text; other text is another item."""

    name: str
    version: str


@dataclass(frozen=True)
class PooledPaper:
    """One paper.

    answers  by item, in the order of the form
    cut      marks from which the paper is passed
    """

    answers: Mapping[ItemVersion, AnsweredQuestion]
    cut: int

    @cached_property
    def most(self) -> Mapping[ItemVersion, int]:
        """Give the marks there are for each item."""
        return {item: answer.marks for item, answer in self.answers.items()}

    @cached_property
    def points(self) -> Mapping[ItemVersion, Fraction]:
        """Give the marks gained on each item."""
        # most questions give one mark, and a product of fractions is dear
        return {
            item: answer.share if answer.marks == 1 else answer.share * answer.marks
            for item, answer in self.answers.items()
        }

    @cached_property
    def _totals(self) -> tuple[Fraction, int]:
        return sum(self.points.values(), Fraction(0)), sum(self.most.values())

    def rest_share(self, item: ItemVersion) -> Fraction:
        """Give the share of the marks of the other questions of the paper; 0 without others."""
        gained, most = self._totals
        own = self.points[item]
        places = (gained.numerator, gained.denominator, own.numerator, own.denominator)
        return _rest(*places, most - self.most[item])

    @cached_property
    def total_share(self) -> Fraction:
        """Give the share of all marks of the paper."""
        gained, most = self._totals
        return gained / most


@cache
def _rest(gained: int, gained_over: int, own: int, own_over: int, others: int) -> Fraction:
    # a hundred thousand answers leave a few hundred different rests
    return (Fraction(gained, gained_over) - Fraction(own, own_over)) / (others or 1)


@dataclass(frozen=True)
class Pool:
    """Papers of some issues.

    waiting  papers that were not taken, as a person must still look at an answer
    """

    issues: tuple[int, ...]
    papers: tuple[PooledPaper, ...]
    waiting: int

    @cached_property
    def by_item(self) -> Mapping[ItemVersion, tuple[PooledPaper, ...]]:
        """Give the papers that asked each item, in the order in which forms bring the items."""
        found: dict[ItemVersion, list[PooledPaper]] = {}
        for paper in self.papers:
            for item in paper.answers:
                found.setdefault(item, []).append(paper)
        return {item: tuple(papers) for item, papers in found.items()}

    @property
    def common(self) -> tuple[ItemVersion, ...]:
        """Give the items that stand on every paper."""
        everybody = len(self.papers)
        return tuple(item for item, papers in self.by_item.items() if len(papers) == everybody)

    @cached_property
    def one_form(self) -> bool:
        """Say whether all papers hold the same items for the same marks."""
        first = self.papers[0].most if self.papers else {}
        return all(paper.most == first for paper in self.papers)


def pooled(connection: Records, issues: Sequence[int]) -> Pool:
    """Pool the papers of issues; questions that an appeal left out are not there.

    Raises RecordsRefused for an issue that is not there or was voided.
    """
    papers: list[PooledPaper] = []
    waiting = 0
    for paper in answered_papers(connection, issues):
        if any(answer.status == "illegible" for answer in paper.answers):
            waiting += 1
        elif paper.answers:
            papers.append(_pooled_paper(paper))
    return Pool(tuple(issues), tuple(papers), waiting)


def _pooled_paper(paper: AnsweredPaper) -> PooledPaper:
    most = sum(answer.marks for answer in paper.answers)
    return PooledPaper(
        {ItemVersion(a.asked.item, a.asked.version): a for a in paper.answers},
        pass_marks(paper.sheet, most),
    )
