"""Damage to whole lines: deleted, doubled, indented, without their source; and to the settings."""

import re

from tests.damage.damage import Chance, Damage, Kind
from tests.damage.papers import Spot, lines_of, spots

# one entry of a list, or one optional statement: what is left is as whole as before
_WHOLE_ENTRY = re.compile(r"\s*- [\[{].*[\]}]$|\s*- [^:]+$|#|\| ")
_SOURCE = re.compile(r"  source: \S")


def _filled(chance: Chance, group: str = "") -> Spot:
    found = spots(chance.files, group or chance.group())
    return chance.pick([spot for spot in found if spot.text.strip()])


def line_deleted(chance: Chance) -> Damage:
    """Take a line away."""
    spot = _filled(chance)
    return chance.line(spot, what=f"gone: {spot.text.strip()!r}", trade=_leaves_whole(chance, spot))


def _leaves_whole(chance: Chance, spot: Spot) -> bool:
    """Say whether nothing of what is left shows that the line ever stood there."""
    lines = lines_of(chance.files, spot.path)
    if spot.path.startswith("course/"):
        # a sentence a line: the text is whole without one of them
        return not spot.text.startswith("```") and not spot.text.startswith("# ")
    before = lines[spot.line - 2] if spot.line > 1 else ""
    folded = before.rstrip().endswith((".", "?")) and spot.text.rstrip().endswith((".", "?"))
    return bool(_WHOLE_ENTRY.match(spot.text)) or folded


def line_doubled(chance: Chance) -> Damage:
    """Write a line twice."""
    spot = _filled(chance)
    return chance.line(spot, spot.text, spot.text, what=f"twice: {spot.text.strip()!r}")


def indent(chance: Chance) -> Damage:
    """Move a line of the bank one or two columns."""
    spot = _filled(chance, "question_bank/")
    by = chance.random.choice((1, 2, -1, -2))
    start = len(spot.text) - len(spot.text.lstrip())
    by = abs(by) if start + by < 0 else by
    new = " " * (start + by) + spot.text.lstrip()
    return chance.line(spot, new, what=f"moved by {by}: {spot.text.strip()!r}")


def source_removed(chance: Chance) -> Damage:
    """Take away what a record rests on."""
    found = [s for s in spots(chance.files, "question_bank/items/") if _SOURCE.match(s.text)]
    spot = chance.pick(found)
    return chance.line(spot, what=f"gone: {spot.text.strip()!r}")


def settings(chance: Chance) -> Damage:
    """Delete, double, cut or misspell a line of mkdocs.yml."""
    spot = _filled(chance, "mkdocs.yml")
    lines = lines_of(chance.files, spot.path)
    way = chance.random.choice(("deleted", "doubled", "cut", "misspelt"))
    what = f"{way}: {spot.text!r}"
    if way == "deleted":
        return chance.line(spot, what=what)
    if way == "doubled":
        return chance.line(spot, spot.text, spot.text, what=what)
    if way == "cut":
        kept = "\n".join(lines[: spot.line - 1] + [spot.text[: len(spot.text) // 2]])
        return chance.raw(spot, kept.encode("utf-8"), what)
    at = chance.random.randrange(len(spot.text) - 1)
    new = spot.text[:at] + spot.text[at + 1] + spot.text[at] + spot.text[at + 2 :]
    return chance.line(spot, new, what=what)


KINDS: dict[str, Kind] = {
    "line deleted": line_deleted,
    "line doubled": line_doubled,
    "indent": indent,
    "source removed": source_removed,
    "mkdocs.yml": settings,
}
