"""Fills papers one after the other: least used first, objectives and kinds spread."""

from collections import Counter

from generator.assembly.search.candidate_pool import Candidate
from generator.assembly.search.papers import Papers
from generator.assembly.search.shared_cells import SharedCells
from generator.assembly.supply import unmatched
from generator.questions import SeededRandom

# the percent of a paper that each kind should take, where its cell leaves the kind open
KIND_PERCENT = {
    "choice": 50,
    "numeric": 20,
    "multiple_response": 10,
    "order": 10,
    "match": 6,
    "written": 4,
}
# divided by any of them without a rest
_SCALE = 300


# choices that are tried for one paper before it is given up
MOST_CHOICES = 1500


class CannotFill(Exception):
    """A cell that stayed short on the paper that came nearest to being full.

    cell    place of the cell
    short   how many of its seats stayed empty
    proven  whether every choice was tried, so that no other start can do better
    """

    def __init__(self, cell: int, short: int, proven: bool) -> None:
        super().__init__(f"cell {cell} is {short} short")
        self.cell, self.short, self.proven = cell, short, proven


def fill(papers: Papers, form: int, stream: SeededRandom, shared: SharedCells) -> None:
    """Fill one paper, taking choices back that lead nowhere; raises CannotFill.

    shared  what the cells draw on together
    """
    for cell, candidate in papers.demand.must:
        papers.seat(form, cell, candidate, fixed=True)
    filling = _Filling(papers, form, stream, shared)
    if not filling.fill_from_here():
        _, cell, short = filling.nearest
        raise CannotFill(cell, short, proven=filling.left > 0)


class _Filling:
    """Chooses for one paper.

    left     choices that may still be tried
    nearest  of the fullest paper so far: questions chosen, the cell that ran out, its open seats
    """

    def __init__(
        self, papers: Papers, form: int, stream: SeededRandom, shared: SharedCells
    ) -> None:
        self.papers, self.form, self.shared = papers, form, shared
        self.piles = [stream.shuffled(pile) for pile in papers.pool.cells]
        self.left = MOST_CHOICES
        self.nearest = (-1, 0, 0)
        self.objectives: Counter[str] = Counter()
        self.kinds: Counter[str] = Counter()
        self.derived = 0
        for place in papers.chosen(form):
            self._count(papers.pool.candidates[place], 1)
        counts, records = papers.demand.counts, shared.records
        self.tightest_first = sorted(
            range(len(counts)), key=lambda cell: len(records[cell]) - counts[cell]
        )

    def fill_from_here(self) -> bool:
        """Fill the seats that are open, those of the tightest cell first."""
        open_seats = self.papers.open_seats(self.form)
        cell = next((cell for cell in self.tightest_first if open_seats[cell]), None)
        if cell is None:
            return True
        for place in self._options(cell):
            if self.left <= 0:
                return False
            if self._leaves_enough(cell, place):
                self.left -= 1
                self._seat(cell, place)
                if self.fill_from_here():
                    return True
                self._unseat()
        self.nearest = max(
            self.nearest, (self.papers.demand.length - sum(open_seats), cell, open_seats[cell])
        )
        return False

    def _options(self, cell: int) -> list[int]:
        free = [p for p in self.piles[cell] if self.papers.is_free(p, self.form)]
        return sorted(free, key=self._burden)

    def _seat(self, cell: int, place: int) -> None:
        self.papers.seat(self.form, cell, place)
        self._count(self.papers.pool.candidates[place], 1)

    def _unseat(self) -> None:
        place = self.papers.unseat(self.form)
        self._count(self.papers.pool.candidates[place], -1)

    def _count(self, candidate: Candidate, sign: int) -> None:
        self.objectives[candidate.objective] += sign
        self.kinds[candidate.kind] += sign
        self.derived += sign * candidate.is_derived

    def _burden(self, place: int) -> tuple[int, ...]:
        """Weigh a candidate; the lightest is taken.

        In this order: met by this person, would repeat itself, used before in this run, used in
        earlier issues, objective there already, derived questions piled up, kind there already.
        """
        papers, candidate = self.papers, self.papers.pool.candidates[place]
        chosen = len(papers.seats[self.form])
        kinds = self.kinds[candidate.kind] + 1
        return (
            int(place in papers.demand.met(self.form)),
            int(papers.is_spent(place)),
            papers.uses(place),
            candidate.past,
            self.objectives[candidate.objective],
            int(candidate.is_derived and 2 * self.derived >= chosen),
            kinds * _SCALE // KIND_PERCENT[candidate.kind],
        )

    def _leaves_enough(self, cell: int, place: int) -> bool:
        """Say whether the cells that share records can still be filled after this choice."""
        cells = self.shared.tied[cell]
        if len(cells) == 1:
            return True
        papers, candidates = self.papers, self.papers.pool.candidates
        gone = {candidates[p].record for p in papers.chosen(self.form)}
        gone.add(candidates[place].record)
        left = papers.open_seats(self.form)
        left[cell] -= 1
        free = {
            other: [record for record in self.shared.records[other] if record not in gone]
            for other in cells
            if left[other]
        }
        if all(len(records) >= sum(left[one] for one in free) for records in free.values()):
            return True
        return not unmatched([free[other] for other in free for _ in range(left[other])])
