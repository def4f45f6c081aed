"""Papers under construction: who sits where, how often each question is used, and the sums."""

from dataclasses import dataclass

from generator.assembly.search.candidate_pool import Candidate, Demand, Pool

# what is added up for each paper; ease is the expected marks over those of a middling question
MARKS, EXPECTED, SECONDS, WORDS, NEW, EASE = range(6)


@dataclass(slots=True)
class Seat:
    """One place of a paper: its cell, and the candidate on it; a fixed seat is never changed."""

    cell: int
    candidate: int
    fixed: bool = False


class Papers:
    """All papers of one search.

    holders  for each candidate the papers that hold it, with the number of its seat
    sums     for each paper what its candidates add up to
    """

    def __init__(self, pool: Pool, demand: Demand) -> None:
        self.pool, self.demand = pool, demand
        marks = sum(candidate.marks for candidate in pool.candidates)
        middle = sum(candidate.expected for candidate in pool.candidates) // max(marks, 1)
        self.measures = tuple(_measures(candidate, middle) for candidate in pool.candidates)
        self.seats: list[list[Seat]] = [[] for _ in range(demand.forms)]
        self.holders: list[dict[int, int]] = [{} for _ in pool.candidates]
        self.sums: list[list[int]] = [[0] * 6 for _ in range(demand.forms)]

    def uses(self, candidate: int) -> int:
        """Count the papers that hold a candidate."""
        return len(self.holders[candidate])

    def is_spent(self, candidate: int) -> bool:
        """Say whether one use more would be a repeat."""
        return self.uses(candidate) >= self.pool.candidates[candidate].variants

    def is_free(self, candidate: int, form: int) -> bool:
        """Say whether a paper could take a candidate beside all it has."""
        return form not in self.holders[candidate] and not self.clashes(candidate, form)

    def clashes(self, candidate: int, form: int, besides: int | None = None) -> tuple[int, ...]:
        """Return what a paper has that is kept apart from a candidate; one may be left out."""
        return tuple(
            other
            for other in self.pool.apart[candidate]
            if form in self.holders[other] and other != besides
        )

    def seat(self, form: int, cell: int, candidate: int, fixed: bool = False) -> None:
        """Put a candidate on a new seat."""
        self.holders[candidate][form] = len(self.seats[form])
        self.seats[form].append(Seat(cell, candidate, fixed))
        self._add(form, candidate, 1)

    def unseat(self, form: int) -> int:
        """Take the last seat of a paper away and give the candidate that was on it."""
        candidate = self.seats[form].pop().candidate
        del self.holders[candidate][form]
        self._add(form, candidate, -1)
        return candidate

    def put(self, form: int, seat: int, candidate: int) -> None:
        """Put another candidate on a seat."""
        old = self.seats[form][seat].candidate
        del self.holders[old][form]
        self._add(form, old, -1)
        self.holders[candidate][form] = seat
        self.seats[form][seat].candidate = candidate
        self._add(form, candidate, 1)

    def _add(self, form: int, candidate: int, sign: int) -> None:
        sums = self.sums[form]
        for place, value in enumerate(self.measures[candidate]):
            sums[place] += sign * value

    def open_seats(self, form: int) -> list[int]:
        """Return how many seats each cell still has to fill."""
        left = list(self.demand.counts)
        for seat in self.seats[form]:
            left[seat.cell] -= 1
        return left

    def chosen(self, form: int) -> tuple[int, ...]:
        """Return the candidates of a paper."""
        return tuple(seat.candidate for seat in self.seats[form])

    @property
    def repeats(self) -> int:
        """Count the uses beyond what each candidate can give without repeating itself."""
        return sum(
            max(0, len(forms) - candidate.variants)
            for forms, candidate in zip(self.holders, self.pool.candidates, strict=True)
        )


def _measures(candidate: Candidate, middle: int) -> tuple[int, ...]:
    return (
        candidate.marks,
        candidate.expected,
        candidate.seconds,
        candidate.words,
        int(candidate.past == 0 or candidate.variants > 1),
        candidate.expected - middle * candidate.marks,
    )
