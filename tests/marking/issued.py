"""Questions as they are issued, written by hand so that each test shows its key."""

from collections.abc import Iterable, Mapping
from typing import Any

Plain = dict[str, Any]


def question(kind: str, key: Plain) -> Plain:
    """Wrap a key in what a question holds besides."""
    return {"id": f"bench/{kind}", "kind": kind, "safety": False, "stem": "?", "key": key}


def numeric(
    shown: str,
    low: str | None,
    high: str | None,
    unit: str = "um",
    symbol: str = "µm",
    slips: Iterable[tuple[str, str, str]] = (),
    step: str = "1",
) -> Plain:
    """Return a numeric question; slips are (low, high, says)."""
    key = {
        "shown": shown,
        "unit": unit,
        "unit_symbol": symbol,
        "step": step,
        "low": low,
        "high": high,
        "slips": [
            {"shown": low, "low": low, "high": high, "says": says} for low, high, says in slips
        ],
        "says": "",
    }
    return question("numeric", key)


def options(kind: str, right: str, letters: str) -> Plain:
    """Return a choice or multiple response whose right letters are given."""
    made = [
        {"letter": letter, "text": letter, "right": letter in right, "says": f"about {letter}"}
        for letter in letters
    ]
    return question(kind, {"options": made})


def order(
    steps: str, pairs: Iterable[str], danger: Iterable[str] = (), kind: str = "order"
) -> Plain:
    """Return an order question; a pair such as 'PQ' says P before Q."""
    dangerous = tuple(danger)
    made = [
        {
            "first": pair[0],
            "then": pair[1],
            "class": "danger" if pair in dangerous else "ruins",
            "reason": f"because of {pair}",
        }
        for pair in pairs
    ]
    rows = [{"letter": letter, "text": letter} for letter in steps]
    return question(kind, {"steps": rows, "pairs": made, "one_order": list(steps)})


def match(answers: Mapping[str, str], letters: str) -> Plain:
    """Return a match question."""
    return question(
        "match",
        {
            "left": [{"number": number, "text": number} for number in answers],
            "right": [{"letter": letter, "text": letter} for letter in letters],
            "answers": dict(answers),
            "says": {number: f"why {number}" for number in answers},
        },
    )


def written(*marks: int) -> Plain:
    """Return a written question with one point for each number of marks."""
    points = [{"text": f"point {place}", "marks": mark} for place, mark in enumerate(marks, 1)]
    return question("written", {"points": points, "model": "."})
