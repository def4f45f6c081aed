"""Answers of one or more issues, item version by item version, as an analysis reads them."""

import gc
from collections.abc import Iterator, Mapping, Sequence
from contextlib import contextmanager
from dataclasses import dataclass
from fractions import Fraction
from functools import cache, cached_property
from typing import NamedTuple

from generator.records import Records
from generator.records.sittings import AnsweredPaper, AnsweredQuestion, answered_papers
from generator.reports.answered_papers import pass_marks


@contextmanager
def gc_paused() -> Iterator[None]:
    """Let answers pile up, without looking through them again and again for what can be freed.

    A hundred thousand of them are read and all kept, and the looking takes longer than the reading.
    """
    running = gc.isenabled()
    gc.disable()
    try:
        yield
    finally:
        if running:
            gc.enable()


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
        """Return the marks there are for each item."""
        return {item: answer.marks for item, answer in self.answers.items()}

    @cached_property
    def points(self) -> Mapping[ItemVersion, Fraction]:
        """Return the marks gained on each item."""
        return {item: _gained(answer) for item, answer in self.answers.items()}

    @cached_property
    def _totals(self) -> tuple[int, int, int]:
        """Return the marks gained as numerator and denominator, and the marks there are."""
        answers = self.answers.values()
        points = [_gained(answer) for answer in answers]
        whole = sum(gained.numerator for gained in points if gained.denominator == 1)
        parts = (gained for gained in points if gained.denominator != 1)
        gained = sum(parts, Fraction(whole))
        return gained.numerator, gained.denominator, sum(answer.marks for answer in answers)

    def rest_share(self, answer: AnsweredQuestion) -> Fraction:
        """Return the share of the marks of the paper's other questions; 0 without others."""
        own = _gained(answer)
        return _rest(*self._totals, own.numerator, own.denominator, answer.marks)

    @cached_property
    def total_share(self) -> Fraction:
        """Return the share of all marks of the paper."""
        gained, gained_over, most = self._totals
        return Fraction(gained, gained_over * most)


def _gained(answer: AnsweredQuestion) -> Fraction:
    # most questions give one mark, and a product of fractions is dear
    return answer.share if answer.marks == 1 else answer.share * answer.marks


@cache
def _rest(
    gained: int, gained_over: int, most: int, own: int, own_over: int, own_most: int
) -> Fraction:
    # a hundred thousand answers leave a few hundred different rests
    return (Fraction(gained, gained_over) - Fraction(own, own_over)) / (most - own_most or 1)


@dataclass(frozen=True, slots=True)
class ItemAnswers:
    """The papers that asked an item, and the answer of each."""

    papers: tuple[PooledPaper, ...]
    answers: tuple[AnsweredQuestion, ...]


@dataclass(frozen=True)
class Pool:
    """Papers of some issues.

    waiting  papers that were not taken, as a person must still look at an answer
    """

    issues: tuple[int, ...]
    papers: tuple[PooledPaper, ...]
    waiting: int

    @cached_property
    def by_item(self) -> Mapping[ItemVersion, ItemAnswers]:
        """Return the answers to each item, in the order in which forms bring the items."""
        found: dict[ItemVersion, list[tuple[PooledPaper, AnsweredQuestion]]] = {}
        for paper in self.papers:
            for item, answer in paper.answers.items():
                found.setdefault(item, []).append((paper, answer))
        return {item: ItemAnswers(*zip(*met, strict=True)) for item, met in found.items()}

    @property
    def common(self) -> tuple[ItemVersion, ...]:
        """Return the items that stand on every paper."""
        everybody = len(self.papers)
        return tuple(item for item, met in self.by_item.items() if len(met.papers) == everybody)

    @cached_property
    def one_form(self) -> bool:
        """Say whether all papers hold the same items for the same marks."""
        first = self.papers[0].most if self.papers else {}
        return all(paper.most == first for paper in self.papers)


@gc_paused()
def pooled(connection: Records, issues: Sequence[int]) -> Pool:
    """Pool the papers of issues; questions that an appeal left out are not there.

    Raises RecordsRefused for an issue that is not there or was voided.
    """
    papers: list[PooledPaper] = []
    items: dict[tuple[str, str], ItemVersion] = {}
    waiting = 0
    for paper in answered_papers(connection, issues):
        if any(answer.status == "illegible" for answer in paper.answers):
            waiting += 1
        elif paper.answers:
            papers.append(_pooled_paper(paper, items))
    return Pool(tuple(issues), tuple(papers), waiting)


def _pooled_paper(paper: AnsweredPaper, items: dict[tuple[str, str], ItemVersion]) -> PooledPaper:
    answers = {}
    for answer in paper.answers:
        asked = (answer.asked.item, answer.asked.version)
        # one object for all papers is found faster than an equal one
        if asked not in items:
            items[asked] = ItemVersion(*asked)
        answers[items[asked]] = answer
    most = sum(answer.marks for answer in paper.answers)
    return PooledPaper(answers, pass_marks(paper.sheet, most))
