"""Whether all places of a paper can be filled at once, where a record may serve several cells."""

from collections.abc import Collection, Sequence


def unmatched(places: Sequence[Collection[str]]) -> tuple[int, ...]:
    """Return the places, by number from 0, that are left over when as many as can be are filled.

    places  for each place of the paper the records that may take it; no record takes two
    Grows a matching by augmenting paths.
    """
    holder: dict[str, int] = {}
    return tuple(place for place in range(len(places)) if not _seated(place, places, holder, set()))


def _seated(
    place: int, places: Sequence[Collection[str]], holder: dict[str, int], tried: set[str]
) -> bool:
    free = next((record for record in places[place] if record not in holder), None)
    if free is not None:
        holder[free] = place
        return True
    for record in places[place]:
        if record not in tried:
            tried.add(record)
            if _seated(holder[record], places, holder, tried):
                holder[record] = place
                return True
    return False
