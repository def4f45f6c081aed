"""Swaps within and between papers that make them alike, without one repeat more."""

from collections import Counter

from generator.assembly.search.limits import weight_of_misses
from generator.assembly.search.papers import EASE, MARKS, SECONDS, Papers
from generator.questions import SeededRandom

# how far a paper may stray from the middle of all: half a mark, a tenth of an expected mark
# (in thousandths), half a minute
BANDS = ((MARKS, 0.5), (EASE, 100.0), (SECONDS, 30.0))
# papers are swapped on until they stray by less than this part of a band
GOOD_ENOUGH = 0.5
TRIES_PER_SEAT = 150
FEWEST_TRIES, MOST_TRIES = 20_000, 80_000
LOOK_AT_ALL = 500
# a broken limit outweighs a question met before, that outweighs a repeat, that outweighs a use of
# what is used much already, and that the rest
HEAVY = 1e7
MET = 2e5
REPEAT = 1e5
CROWDING = 2e4
SPREAD = 0.25
START_ALLOWED = 4.0

Move = tuple[int, int, int]


def improve(papers: Papers, stream: SeededRandom, bound: int = 0) -> None:
    """Swap questions of the same cell until all is well or tries run out.

    All is well when limits hold, papers are alike and the repeats are down to the bound. A question
    gives way to another one, alone or together with the one that stands in the way, or two papers
    change places with each other. The repeats rise only where a limit is not kept otherwise.
    """
    swapping = _Swapping(papers, bound)
    seats = papers.demand.forms * papers.demand.length
    most = min(MOST_TRIES, max(FEWEST_TRIES, TRIES_PER_SEAT * seats))
    for tries in range(most):
        if tries % LOOK_AT_ALL == 0:
            if swapping.is_good():
                return
            # a little worse is allowed at first, so that a dead end can be left again
            swapping.allowed = max(0.0, START_ALLOWED * (1 - 1.5 * tries / most))
        form = stream.below(papers.demand.forms)
        seat = stream.below(len(papers.seats[form]))
        place = papers.seats[form][seat]
        if not place.fixed:
            swapping.try_one(form, seat, stream.choose(papers.pool.cells[place.cell]), stream)


class _Swapping:
    """Keeps the sums over all papers, and weighs a swap before it is made."""

    def __init__(self, papers: Papers, bound: int) -> None:
        self.papers, self.bound = papers, bound
        self.forms = papers.demand.forms
        self.allowed = 0.0
        self.totals = [sum(sums[measure] for sums in papers.sums) for measure, _ in BANDS]
        named = papers.pool.candidates
        self.objectives = [
            Counter(named[place].objective for place in papers.chosen(form))
            for form in range(self.forms)
        ]

    def is_good(self) -> bool:
        papers = self.papers
        return papers.repeats <= self.bound and not any(
            weight_of_misses(papers.demand, papers.sums[form])
            or any(place in papers.demand.met(form) for place in papers.chosen(form))
            or self._strays(form)
            for form in range(self.forms)
        )

    def _strays(self, form: int) -> bool:
        return any(
            abs(self.papers.sums[form][measure] - total / self.forms) > band * GOOD_ENOUGH
            for (measure, band), total in zip(BANDS, self.totals, strict=True)
        )

    def try_one(self, form: int, seat: int, candidate: int, stream: SeededRandom) -> None:
        """Try to bring a candidate to a seat, and with it what has to move besides."""
        papers = self.papers
        mine = papers.seats[form][seat]
        if form in papers.holders[candidate]:
            return
        clashes = papers.clashes(candidate, form, besides=mine.candidate)
        if not clashes and not self._is_kept_if_better((form, seat, candidate)):
            self._exchange(form, seat, candidate, stream)
        elif len(clashes) == 1:
            self._move_two(form, seat, candidate, papers.holders[clashes[0]][form], stream)

    def _exchange(self, form: int, seat: int, candidate: int, stream: SeededRandom) -> None:
        """Let two papers change places."""
        papers = self.papers
        mine, holders = papers.seats[form][seat], papers.holders[candidate]
        if not holders:
            return
        other = sorted(holders)[stream.below(len(holders))]
        theirs = papers.seats[other][holders[other]]
        if theirs.fixed or theirs.cell != mine.cell or other in papers.holders[mine.candidate]:
            return
        if not papers.clashes(mine.candidate, other, besides=candidate):
            moves = ((form, seat, candidate), (other, holders[other], mine.candidate))
            self._is_kept_if_better(*moves)

    def _move_two(
        self, form: int, seat: int, candidate: int, other: int, stream: SeededRandom
    ) -> None:
        """Move the one seat that stands in the way as well."""
        papers = self.papers
        mine, theirs = papers.seats[form][seat], papers.seats[form][other]
        if theirs.fixed:
            return
        third = stream.choose(papers.pool.cells[theirs.cell])
        clashes = set(papers.clashes(third, form, besides=theirs.candidate)) - {mine.candidate}
        if clashes or third == candidate or form in papers.holders[third]:
            return
        if third not in papers.pool.apart[candidate]:
            self._is_kept_if_better((form, seat, candidate), (form, other, third))

    def _is_kept_if_better(self, *moves: Move) -> bool:
        """Make the moves if the papers get better by it."""
        repeats, crowding = self._uses_after(moves)
        weight = self._change(moves) + REPEAT * repeats + CROWDING * max(0, crowding) / self.forms
        if weight >= self.allowed:
            return False
        papers = self.papers
        for form, seat, candidate in moves:
            old = papers.seats[form][seat].candidate
            self.objectives[form][papers.pool.candidates[old].objective] -= 1
            self.objectives[form][papers.pool.candidates[candidate].objective] += 1
            for place, (measure, _) in enumerate(BANDS):
                self.totals[place] += papers.measures[candidate][measure]
                self.totals[place] -= papers.measures[old][measure]
            papers.put(form, seat, candidate)
        return True

    def _uses_after(self, moves: tuple[Move, ...]) -> tuple[int, int]:
        """Return the change of the repeats, and of the sum of squares of all uses."""
        papers = self.papers
        more: Counter[int] = Counter()
        for form, seat, candidate in moves:
            more[candidate] += 1
            more[papers.seats[form][seat].candidate] -= 1
        repeats = crowding = 0
        for candidate, change in more.items():
            uses, most = papers.uses(candidate), papers.pool.candidates[candidate].variants
            repeats += max(0, uses + change - most) - max(0, uses - most)
            crowding += change * (2 * uses + change)
        return repeats, crowding

    def _change(self, moves: tuple[Move, ...]) -> float:
        """Return what the moves add to the weight of all papers; below 0 is better."""
        papers, demand = self.papers, self.papers.demand
        weight = 0.0
        more = [0] * len(BANDS)
        squares = [0] * len(BANDS)
        for form, seat, candidate in moves:
            old = papers.seats[form][seat].candidate
            before = papers.sums[form]
            gain, loss = papers.measures[candidate], papers.measures[old]
            after = [b + g - o for b, g, o in zip(before, gain, loss, strict=True)]
            weight += HEAVY * (weight_of_misses(demand, after) - weight_of_misses(demand, before))
            met = demand.met(form)
            weight += MET * ((candidate in met) - (old in met))
            weight += SPREAD * self._spread(form, old, candidate)
            for place, (measure, _) in enumerate(BANDS):
                more[place] += after[measure] - before[measure]
                squares[place] += after[measure] ** 2 - before[measure] ** 2
        for place, (_, band) in enumerate(BANDS):
            # the sum over all papers of (theirs - middle) squared, as it changes
            total = self.totals[place]
            middle = (2 * total * more[place] + more[place] ** 2) / self.forms
            weight += (squares[place] - middle) / band**2
        return weight

    def _spread(self, form: int, old: int, new: int) -> int:
        """Return the change of the sum of squares of the questions on each objective."""
        named = self.papers.pool.candidates
        one, other = named[old].objective, named[new].objective
        if one == other:
            return 0
        counts = self.objectives[form]
        return 2 * (counts[other] - counts[one] + 1)
