"""Damage to what a record feedback: units, numbers, keys, options, pairs, percents and grids."""

import re

from generator.quantities import UNITS
from tests.damage.damage import Chance, Damage, Kind
from tests.damage.papers import Spot, lines_of, spots

_UNIT = re.compile(r"\bunit: ([A-Za-z0-9_/]+)")
_NUMBER = re.compile(r"(?<![\w.:/-])\d+(?:\.\d+)?(?![\w.:/-]*[\w:/])")
# numbers that the rest of the record counts or measures by; the others only a painter can judge
_COUNTED = re.compile(r"\s*(?:- )?(?:round_to|tolerance|minutes|questions|count|share)\b")
_PERCENT = re.compile(r" ?%| percent\b")
_STEPPED = re.compile(r"values: (\S+) to (\S+) step")


def wrong_unit(chance: Chance) -> Damage:
    """Write another unit of the list."""
    found = [s for s in spots(chance.files, "question_bank/") if _UNIT.search(s.text)]
    spot = chance.pick(found)
    match = _UNIT.search(spot.text)
    assert match is not None
    old = UNITS.get(match[1])
    others = [name for name in sorted(UNITS) if name != match[1]]
    new = chance.random.choice(others)
    text = spot.text[: match.start(1)] + new + spot.text[match.end(1) :]
    # a column of a table in another unit of its kind reads as well as before
    table = spot.path.startswith("question_bank/tables/")
    alike = old is not None and old.agrees_with(UNITS[new])
    return chance.line(spot, text, trade=table or alike)


def number(chance: Chance) -> Damage:
    """Move the point of a number by one place."""
    found = spots(chance.files, chance.random.choice(("question_bank/", "question_bank/items/")))
    spot = chance.pick([s for s in found if _NUMBER.search(s.text)])
    match = chance.random.choice(list(_NUMBER.finditer(spot.text)))
    size = float(match[0]) * chance.random.choice((10, 0.1))
    text = f"{spot.text[: match.start()]}{size:g}{spot.text[match.end() :]}"
    return chance.line(spot, text, trade=not _COUNTED.match(spot.text))


def _options(chance: Chance, pattern: str) -> list[Spot]:
    return [s for s in spots(chance.files, "question_bank/items/") if re.match(pattern, s.text)]


def key_flipped(chance: Chance) -> Damage:
    """Mark the next option right in the place of the one that is."""
    found = _options(chance, r" {6}right: true$")
    # the next option of the same question, whose mark can move down
    rests = [(s, _next_option(chance, s)) for s in found]
    spot, after = chance.random.choice([(s, n) for s, n in rests if n])
    lines = lines_of(chance.files, spot.path)
    lines.insert(after, spot.text)
    del lines[spot.line - 1]
    text = "".join(f"{line}\n" for line in lines)
    changes = {spot.path: text.encode("utf-8")}
    return Damage(chance.kind, changes, spot.path, (spot.line, after), "key moved down", True)


def _next_option(chance: Chance, spot: Spot) -> int:
    lines = lines_of(chance.files, spot.path)
    for number, text in enumerate(lines[spot.line :], start=spot.line + 1):
        if text.startswith("    - text: "):
            return 0 if lines[number].strip() == "right: true" else number
        if not text.startswith("     "):
            return 0
    return 0


def option_doubled(chance: Chance) -> Damage:
    """Return an option the words of the one before it."""
    found = _options(chance, r" {4}- text: ")
    spot = chance.pick([s for s in found if _before(chance, s)])
    return chance.line(spot, _before(chance, spot))


def _before(chance: Chance, spot: Spot) -> str:
    """Return the line of the option before, where both belong to one question."""
    lines = lines_of(chance.files, spot.path)
    for text in reversed(lines[: spot.line - 1]):
        if text.startswith("    - text: "):
            return text
        if not text.startswith("      "):
            return ""
    return ""


def pair_reversed(chance: Chance) -> Damage:
    """Turn a pair of steps round."""
    found = spots(chance.files, "question_bank/procedures/")
    spot = chance.pick([s for s in found if re.match(r" *- first: ", s.text)])
    lines = lines_of(chance.files, spot.path)
    first, then = spot.text, lines[spot.line]
    lines[spot.line - 1] = first.split("first: ")[0] + "first: " + then.split("then: ")[1]
    lines[spot.line] = then.split("then: ")[0] + "then: " + first.split("first: ")[1]
    text = "".join(f"{line}\n" for line in lines)
    changes = {spot.path: text.encode("utf-8")}
    return Damage(chance.kind, changes, spot.path, (spot.line, spot.line + 1), "pair turned")


def percent_dropped(chance: Chance) -> Damage:
    """Leave out a sign or word for percent."""
    found = spots(chance.files, chance.random.choice(("question_bank/", "question_bank/items/")))
    spot = chance.pick([s for s in found if _PERCENT.search(s.text)])
    match = chance.random.choice(list(_PERCENT.finditer(spot.text)))
    text = spot.text[: match.start()] + spot.text[match.end() :]
    # 'how many percent' without its last word is a sentence still; a unit or formula is checked
    return chance.line(spot, text, trade=not re.match(r".*\b(?:unit|formula):", spot.text))


def grid_reversed(chance: Chance) -> Damage:
    """Turn start and end of a grid round."""
    found = spots(chance.files, "question_bank/items/")
    spot = chance.pick([s for s in found if _STEPPED.search(s.text)])
    new = _STEPPED.sub(lambda match: f"values: {match[2]} to {match[1]} step", spot.text, 1)
    return chance.line(spot, new)


KINDS: dict[str, Kind] = {
    "wrong unit": wrong_unit,
    "number x10 or /10": number,
    "key flipped": key_flipped,
    "option doubled": option_doubled,
    "pair reversed": pair_reversed,
    "percent dropped": percent_dropped,
    "grid reversed": grid_reversed,
}
