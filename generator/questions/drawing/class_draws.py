"""Drawing one numeric item for a whole class, so that nobody can use another one's answer."""

from collections.abc import Iterable, Iterator, Mapping
from itertools import islice

from generator.bank import PreparedItem, Solution, Value, all_sets, solve
from generator.quantities import number_text
from generator.questions.drawing.handed_out import LIKE_NEIGHBOUR, HandedOut
from generator.questions.drawing.numeric import MOST_WALKED, draw_of, draw_solution, drawn_values
from generator.refinishing import CATALOGUE

CLASS_ATTEMPTS = 24


def draw_apart(item: PreparedItem, salt: str, form: str, handed: HandedOut) -> Solution:
    """Return the solution for a form whose class has had some draws of the item already.

    Nobody shares a key, then nobody shares values, while the grid allows it; the paper before
    never has the same key while the grid holds two. Chance is tried first, then the grid is walked,
    up to MOST_WALKED sets. Raises NothingToDraw where no set is accepted.
    """
    by_chance = (drawn_values(item, salt, form, attempt) for attempt in range(CLASS_ATTEMPTS))
    found = _best(item, handed, _accepted(item, by_chance))
    if found is not None and _standing(item, handed, found) <= handed.best_left:
        return found
    walked = list(_accepted(item, islice(all_sets(item), MOST_WALKED)))
    handed.no_new_values = all(draw_of(solution.values) in handed.draws for solution in walked)
    handed.no_new_key = all(_key(item, solution) in handed.keys for solution in walked)
    others = walked if found is None else [found, *walked]
    return _best(item, handed, others) or draw_solution(item, salt, form)


def _accepted(item: PreparedItem, sets: Iterable[Mapping[str, Value]]) -> Iterator[Solution]:
    for values in sets:
        solution = solve(item, values, CATALOGUE)
        if isinstance(solution, Solution):
            yield solution


def _best(item: PreparedItem, handed: HandedOut, found: Iterable[Solution]) -> Solution | None:
    """Return the first of the best; nothing better than the best left is looked for."""
    best: Solution | None = None
    standing = LIKE_NEIGHBOUR + 1
    for solution in found:
        its = _standing(item, handed, solution)
        if its < standing:
            best, standing = solution, its
        if standing <= handed.best_left:
            break
    return best


def _standing(item: PreparedItem, handed: HandedOut, solution: Solution) -> int:
    return handed.standing(draw_of(solution.values), _key(item, solution))


def _key(item: PreparedItem, solution: Solution) -> str:
    return number_text(solution.key, item.step)
