"""What a search chooses from and what it must deliver, as plain numbers."""

from dataclasses import dataclass, field


@dataclass(frozen=True, slots=True)
class Candidate:
    """A question that may be chosen.

    record    what stands behind it and its twins; two of one record never share a paper
    cells     places of the cells that it may fill
    expected  marks that a learner is expected to get, in thousandths
    past      how often it was issued before
    variants  how many papers it can stand on without repeating itself
    """

    name: str
    record: str
    cells: tuple[int, ...]
    objective: str = ""
    kind: str = "choice"
    is_derived: bool = False
    marks: int = 1
    expected: int = 700
    seconds: int = 60
    words: int = 0
    past: int = 0
    variants: int = 1


@dataclass(frozen=True, slots=True)
class Demand:
    """What the papers must be.

    counts  questions of each cell
    must    (cell, candidate) of each question that stands on every paper
    avoid   for each paper the candidates that its person has met; may be empty
    seconds, words, new: of each paper, at least or at most; None sets no limit
    """

    counts: tuple[int, ...]
    forms: int
    must: tuple[tuple[int, int], ...] = ()
    avoid: tuple[frozenset[int], ...] = ()
    new: int = 0
    seconds: int | None = None
    words: int | None = None

    @property
    def length(self) -> int:
        """Return the number of questions of a paper."""
        return sum(self.counts)

    def met(self, form: int) -> frozenset[int]:
        """Return what the person of a paper has met."""
        return self.avoid[form] if self.avoid else frozenset()


@dataclass(frozen=True, slots=True)
class Pool:
    """The candidates, which of them may fill each cell, and which never meet on a paper."""

    candidates: tuple[Candidate, ...]
    apart: tuple[frozenset[int], ...]
    cells: tuple[tuple[int, ...], ...] = field(default=())


def pool_of(
    candidates: tuple[Candidate, ...], cells: int, apart: tuple[tuple[str, ...], ...] = ()
) -> Pool:
    """Return the pool of some candidates.

    cells  how many cells the plan has
    apart  sets of names or records of which a paper takes one at most
    """
    sets: dict[str, list[int]] = {}
    for place, candidate in enumerate(candidates):
        sets.setdefault(candidate.record, []).append(place)
    named = {candidate.name: [place] for place, candidate in enumerate(candidates)}
    rows = [frozenset(places) for places in sets.values()]
    rows += [
        frozenset(p for name in names for p in (*named.get(name, ()), *sets.get(name, ())))
        for names in apart
    ]
    parted: list[set[int]] = [set() for _ in candidates]
    for row in rows:
        for place in row:
            parted[place] |= row
    return Pool(
        candidates,
        tuple(frozenset(others - {place}) for place, others in enumerate(parted)),
        tuple(
            tuple(p for p, c in enumerate(candidates) if cell in c.cells) for cell in range(cells)
        ),
    )
