"""Questions that a person should look at, as far as the number of answers bears it."""

from collections.abc import Mapping, Sequence
from typing import Any

from generator.marking.analysis import FACILITY_FROM, FLAG_WORDS, INTERVAL_FROM, idle_options
from generator.reports.combined import PooledAnalysis, PooledItem
from generator.reports.intervals import percent

Plain = dict[str, Any]
MOST_ROWS = 6
LONGEST_STEM = 110
COUNTS_ONLY = (
    f"No question has {FACILITY_FROM} answers yet, so there are only counts: none can be called "
    "easy, hard or bad."
)
NO_FLAGS_YET = (
    f"No question has {INTERVAL_FROM} answers yet, so no key can be suspected and no option called "
    "idle. The hardest ones are listed with their intervals."
)
NOTHING_FLAGGED = f"No question with {INTERVAL_FROM} answers or more calls for a look."


def items_to_look_at(analysis: PooledAnalysis, stems: Mapping[str, str]) -> tuple[list[Plain], str]:
    """Return rows of items with what to look at, and a sentence on what the numbers bear.

    stems  of the items as one form printed them; an item without one shows its name alone
    """
    biggest = max((item.people for item in analysis.items), default=0)
    if biggest < FACILITY_FROM:
        return [], COUNTS_ONLY
    if biggest < INTERVAL_FROM:
        return [
            _row(item, "hard for those who met it", stems) for item in _hardest(analysis.items)
        ], (NO_FLAGS_YET)
    flagged = [(item, words) for item in analysis.items if (words := _flag_words(item))]
    flagged.sort(key=lambda found: (_least(found[0]), found[0].analysis.name))
    rows = [_row(item, words, stems) for item, words in flagged[:MOST_ROWS]]
    more = len(flagged) - len(rows)
    said = f"{more} more: guidecoat analyse lists them." if more else ""
    return rows, said if rows else NOTHING_FLAGGED


def _flag_words(item: PooledItem) -> str:
    flags = [flag for flag in item.analysis.flags if flag not in ("too_few_people", "no_spread")]
    words = [FLAG_WORDS[flag] for flag in flags if flag != "option_not_working"]
    idle = idle_options(item.analysis.options) if "option_not_working" in flags else ()
    words += [f"hardly anyone who missed it chose {', '.join(idle)}"] if idle else []
    return "; ".join(words)


def _least(item: PooledItem) -> float:
    rest = item.analysis.item_rest.value
    return rest if rest is not None else 1.0


def _hardest(items: Sequence[PooledItem]) -> list[PooledItem]:
    enough = [
        i for i in items if i.people >= FACILITY_FROM and (i.analysis.facility.value or 0) < 1
    ]
    enough.sort(key=lambda item: (item.analysis.facility.value or 0.0, item.analysis.name))
    return enough[:3]


def _shortened(stem: str) -> str:
    """Cut a long stem after a word, so that a row stays a row."""
    if len(stem) <= LONGEST_STEM:
        return stem
    return f"{stem[:LONGEST_STEM].rpartition(' ')[0]} …"


def _row(item: PooledItem, words: str, stems: Mapping[str, str]) -> Plain:
    found = item.analysis
    share = percent(found.facility.value or 0.0)
    low_high = found.facility_interval
    between = f" ({percent(low_high[0])} to {percent(low_high[1])})" if low_high else ""
    rest = found.item_rest.value if item.people >= INTERVAL_FROM else None
    ends = found.item_rest_interval
    return {
        "item": found.name,
        "stem": _shortened(stems.get(found.name, "")),
        "facility": f"{share}{between}",
        "people": str(item.people),
        "rest": "" if rest is None else f"{rest:.2f}",
        "rest_interval": f"{ends[0]:.2f} to {ends[1]:.2f}" if rest is not None and ends else "",
        "look": words,
    }
