"""The candidates of a blueprint: what the bank can ask on paper, measured for the search."""

from collections.abc import Collection, Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from fractions import Fraction

from generator.assembly.forms.expected import expected_share
from generator.assembly.forms.form import marks_of
from generator.assembly.forms.history import History
from generator.assembly.forms.reading_load import words_of
from generator.assembly.search import Candidate, Demand, Pool, pool_of
from generator.assembly.supply import Stratum, percent_of, sets_apart, strands_of
from generator.bank.models import Blueprint
from generator.questions import Askable


@dataclass(frozen=True, slots=True)
class Choice:
    """A pool with the askables behind its candidates, and the strands behind its cells."""

    pool: Pool
    askables: tuple[Askable, ...]
    strands: tuple[Stratum, ...]


def choice_for(
    blueprint: Blueprint,
    known: Sequence[Askable],
    past: History,
    giveaways: Iterable[tuple[str, str]] = (),
    whole_cells: Collection[int] = (),
) -> Choice:
    """Measure everything that may stand on a paper of a blueprint.

    giveaways    each two questions of which one tells the answer of the other
    whole_cells  cells that are not parted by kind
    """
    strands = strands_of(blueprint, known, whole_cells)
    asked = []
    candidates = []
    for askable in known:
        cells = tuple(p for p, one in enumerate(strands) if one.takes(blueprint, askable))
        if cells:
            asked.append(askable)
            candidates.append(_candidate(askable, cells, past))
    apart = sets_apart(blueprint, asked, giveaways)
    return Choice(pool_of(tuple(candidates), len(strands), apart), tuple(asked), strands)


def _candidate(askable: Askable, cells: tuple[int, ...], past: History) -> Candidate:
    question = askable.sample or askable.make("measured", ())
    if question is None:
        raise ValueError(f"'{askable.name}' gave no question")
    marks = marks_of(question)
    share = expected_share(askable.kind, askable.level, past.facilities.get(askable.name))
    return Candidate(
        name=askable.name,
        record=askable.group,
        cells=cells,
        objective=askable.objective,
        kind=askable.kind,
        is_derived=askable.is_derived,
        marks=marks,
        expected=round(1000 * marks * share),
        seconds=round(60 * Fraction(question.minutes)),
        words=words_of(question),
        past=past.exposure.get(askable.name, 0),
        variants=askable.variants,
    )


def demand_for(
    blueprint: Blueprint, choice: Choice, forms: int, met: Sequence[frozenset[str]] = ()
) -> Demand:
    """Return what a number of papers must be.

    met  for each paper the names that its person has met; may be empty
    """
    counts = tuple(strand.count for strand in choice.strands)
    names = {candidate.name: place for place, candidate in enumerate(choice.pool.candidates)}
    return Demand(
        counts=counts,
        forms=forms,
        must=tuple(_must(blueprint, choice, names)),
        avoid=tuple(frozenset(names[n] for n in known if n in names) for known in met),
        new=percent_of(blueprint.new_percent, sum(counts)),
        seconds=60 * blueprint.minutes,
        words=blueprint.max_words,
    )


def _must(
    blueprint: Blueprint, choice: Choice, names: Mapping[str, int]
) -> Iterator[tuple[int, int]]:
    """Return a seat to each question that every paper includes, where the fewest are left."""
    left = [strand.count for strand in choice.strands]
    for name in blueprint.must_include:
        cells = choice.pool.candidates[names[name]].cells
        fitting = [cell for cell in cells if left[cell]]
        if not fitting:
            raise ValueError(f"no cell has a seat for '{name}'; check the blueprint first")
        cell = min(fitting, key=lambda cell: left[cell])
        left[cell] -= 1
        yield cell, names[name]
