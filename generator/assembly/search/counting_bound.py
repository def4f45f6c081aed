"""The fewest repeats that any choice of questions can have, by counting alone."""

from collections import Counter, defaultdict
from collections.abc import Hashable, Mapping

from generator.assembly.search.candidate_pool import Demand, Pool
from generator.assembly.search.maximum_flow import Edge, largest_flow

# how many uses a record offers for each set of cells that its questions fit
Profile = tuple[tuple[tuple[int, ...], int], ...]


def fewest_repeats(pool: Pool, demand: Demand) -> int:
    """Return a number of repeats below which no set of papers can come.

    Where no question and no record fits two cells this is the sum over the cells of
    max(0, papers x questions - what the cell can give). A question gives as many uses as it has
    values, and a record one use on each paper; what fits several cells is counted once, by the
    largest flow from cells to records.
    """
    fixed = {candidate for _, candidate in demand.must}
    again = sum(max(0, demand.forms - pool.candidates[place].variants) for place in fixed)
    wanted = [count * demand.forms for count in demand.counts]
    for cell, _ in demand.must:
        wanted[cell] -= demand.forms
    network = _network(wanted, _profiles(pool, demand.forms, fixed), demand.forms)
    return again + sum(wanted) - largest_flow(network, "papers", "bank")


def _profiles(pool: Pool, forms: int, fixed: set[int]) -> Counter[Profile]:
    """Count the records of each profile; records of one profile are counted together."""
    offers: dict[str, Counter[tuple[int, ...]]] = defaultdict(Counter)
    for place, candidate in enumerate(pool.candidates):
        if place not in fixed and candidate.cells:
            offers[candidate.record][candidate.cells] += min(candidate.variants, forms)
    return Counter(tuple(sorted(offer.items())) for offer in offers.values())


def _network(wanted: list[int], profiles: Mapping[Profile, int], forms: int) -> dict[Edge, int]:
    edges: dict[tuple[Hashable, Hashable], int] = {
        ("papers", cell): count for cell, count in enumerate(wanted)
    }
    for profile, records in profiles.items():
        edges[profile, "bank"] = records * forms
        for cells, uses in profile:
            offer = (profile, cells)
            edges[offer, profile] = records * uses
            for cell in cells:
                edges[cell, offer] = wanted[cell]
    return edges
