"""What the rules said of a record before, so that a record that did not change is not judged again.

A verdict is found by a digest of the record's own text and of all that it can rest on. It is never
needed: without it the record is judged.
"""

from bisect import bisect_right
from collections.abc import Iterable, Iterator, Mapping
from hashlib import sha256
from pathlib import Path
from typing import Any

from generator.bank.bank import Bank, Entry
from generator.diagnostics import Place, Problem

# what every record of a bank can rest on
FRAME = ("bank", "outline", "sources", "hazards", "places", "glossary")
GROUPS = ("items", "procedures", "faults", "tables")
Kept = tuple[int, int, str, str, str, str]


def frame_digest(folder: Path) -> str:
    """Return a digest of the files on which every record of a bank can rest.

    folder  the question bank; a file that is missing counts as one without a text
    """
    files = (folder / f"{name}.yml" for name in FRAME)
    texts = (file.read_bytes() if file.is_file() else b"" for file in files)
    return sha256(b"".join(sha256(text).digest() for text in texts)).hexdigest()


class Verdicts:
    """Verdicts of an earlier run, and those of this run.

    ground  a digest of what every record can rest on: the bank's frame and the code that judges
    known   earlier verdicts; what does not look like one is passed over
    used    verdicts that hold for the bank as it is now
    """

    def __init__(self, ground: str, known: Mapping[str, Any] | None = None) -> None:
        self.ground = ground
        self.used: dict[str, list[Kept]] = {}
        self._known = known or {}

    def of(self, entry: Entry[Any]) -> Iterator[Problem] | None:
        """Return what was said of a record, at its present places; None where nobody knows."""
        key = self._key(entry)
        if key not in self._known:
            return None
        try:
            problems = [_placed(entry, *row) for row in self._known[key]]
        except (TypeError, ValueError):
            return None
        self.used[key] = self._known[key]
        return iter(problems)

    def keep(self, entry: Entry[Any], problems: Iterable[Problem]) -> None:
        """Note what is said of a record."""
        if entry.written:
            self.used[self._key(entry)] = [
                (
                    p.place.line - entry.start.line, p.place.column,
                    p.severity, p.rule, p.message, p.hint,
                )
                for p in problems
            ]  # fmt: skip

    def _key(self, entry: Entry[Any]) -> str:
        text = f"{self.ground}\n{entry.start.path}\n{entry.name}\n{entry.written}"
        return sha256(text.encode()).hexdigest()[:32] if entry.written else ""


def _placed(
    entry: Entry[Any], line: int, column: int, severity: Any, rule: str, message: str, hint: str
) -> Problem:
    if severity not in ("error", "warning", "note"):
        raise ValueError(severity)
    for text in (rule, message, hint):
        if not isinstance(text, str):
            raise TypeError(text)
    place = Place(entry.start.path, entry.start.line + int(line), int(column))
    return Problem(place, severity, rule, message, hint)


class RecordAt:
    """Finds the record in which a place lies."""

    def __init__(self, bank: Bank) -> None:
        self._starts: dict[str, list[int]] = {}
        self._entries: dict[str, list[Entry[Any]]] = {}
        found = [entry for group in GROUPS for entry in getattr(bank, group).values()]
        for entry in sorted(found, key=lambda entry: (entry.start.path, entry.start.line)):
            self._starts.setdefault(entry.start.path, []).append(entry.start.line)
            self._entries.setdefault(entry.start.path, []).append(entry)

    def __call__(self, place: Place) -> Entry[Any] | None:
        """Return the record; None where the place lies in none."""
        at = bisect_right(self._starts.get(place.path, ()), place.line)
        return self._entries[place.path][at - 1] if at else None
