"""The table of damages: kinds down, outcomes across, and the shares that are the goal."""

from collections import Counter
from collections.abc import Iterable, Sequence
from fractions import Fraction

from tests.damage.judging import OUTCOMES, Judged

SEEN = ("right line", "elsewhere")


def shares(judged: Iterable[Judged]) -> tuple[Fraction, Fraction]:
    """Return how much of what can be seen without the trade was caught, and caught in its place.

    What is proved harmless needs no message, and what only a painter can tell has none.
    """
    outcomes = Counter(one.outcome for one in judged)
    caught = outcomes["right line"] + outcomes["elsewhere"]
    visible = caught + outcomes["mechanical"]
    return Fraction(caught, visible), Fraction(outcomes["right line"], visible)


def table_text(judged: Sequence[Judged]) -> str:
    """Return the table, the shares, and every damage that was missed or told in another place."""
    kinds = list(dict.fromkeys(one.damage.kind for one in judged))
    lines = [f"{'kind':24}{'n':>5}" + "".join(f"{outcome:>12}" for outcome in OUTCOMES)]
    lines += [_row(kind, [one for one in judged if one.damage.kind == kind]) for kind in kinds]
    lines.append(_row("all", judged))
    caught, near = shares(judged)
    lines.append(
        f"\nOf what can be seen without knowing the trade, check caught {float(caught):.1%}, "
        f"and {float(near):.1%} within two lines.\n"
    )
    for outcome in ("mechanical", "elsewhere", "semantic"):
        lines.append(f"{outcome}:")
        lines += [_line(one) for one in judged if one.outcome == outcome]
    return "\n".join(lines)


def _row(kind: str, judged: Sequence[Judged]) -> str:
    counts = Counter(one.outcome for one in judged)
    cells = "".join(f"{counts[outcome] or '':>12}" for outcome in OUTCOMES)
    return f"{kind:24}{len(judged):>5}{cells}"


def _line(one: Judged) -> str:
    damage = one.damage
    where = f"{damage.path}:{damage.lines[0]}"
    told = f"\n      told at {one.said}" if one.said else ""
    return f"  {damage.kind}: {where}: {damage.what[:160]}{told}"
