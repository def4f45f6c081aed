"""Damage to single characters: bytes, signs nobody sees, tabs, quotes, ends of lines and files."""

import re

from tests.damage.damage import Chance, Damage, Kind
from tests.damage.papers import Spot, lines_of, spots

ODD = {"VT": "\v", "FF": "\f", "ZWSP": "\u200b", "SHY": "\u00ad", "NEL": "\u0085", "LS": "\u2028"}
ALIKE = {"a": "а", "c": "с", "e": "е", "o": "о", "p": "р", "x": "х"}
LONG = 20_000
_NAME = re.compile(r"[a-z]+(?:_[a-z]+)+|(?<=: )[a-z_]{4,}$")


def _written(chance: Chance) -> Spot:
    return chance.pick([s for s in spots(chance.files, chance.group()) if len(s.text.strip()) > 8])


def _inside(chance: Chance, spot: Spot) -> int:
    start = len(spot.text) - len(spot.text.lstrip())
    return chance.random.randrange(start, len(spot.text))


def _put_in(chance: Chance, sign: str, what: str) -> Damage:
    spot = _written(chance)
    at = _inside(chance, spot)
    new = spot.text[:at] + sign + spot.text[at:]
    return chance.line(spot, new, what=f"{what} at column {at + 1} of {spot.text.strip()!r}")


def bad_byte(chance: Chance) -> Damage:
    """Put a byte that is no UTF-8 into a line."""
    spot = _written(chance)
    at = _inside(chance, spot)
    lines = [line.encode("utf-8") for line in lines_of(chance.files, spot.path)]
    lines[spot.line - 1] = spot.text[:at].encode() + b"\xff" + spot.text[at:].encode()
    return chance.raw(spot, b"".join(line + b"\n" for line in lines), "byte FF")


def nul(chance: Chance) -> Damage:
    """Put a NUL into a line."""
    return _put_in(chance, "\0", "NUL")


def odd_sign(chance: Chance) -> Damage:
    """Put a sign into a line that nobody sees."""
    name = chance.random.choice(sorted(ODD))
    return _put_in(chance, ODD[name], name)


def byte_order_mark(chance: Chance) -> Damage:
    """Put the mark of some editors at the start of a file."""
    spot = _written(chance)
    return chance.raw(Spot(spot.path, 1, ""), b"\xef\xbb\xbf" + chance.files[spot.path], "BOM")


def line_ends(chance: Chance) -> Damage:
    """End the lines of a file as other systems do."""
    spot = _written(chance)
    end = chance.random.choice((b"\r\n", b"\r"))
    data = chance.files[spot.path].replace(b"\n", end)
    return chance.raw(Spot(spot.path, 1, ""), data, f"lines end in {end!r}")


def tab(chance: Chance) -> Damage:
    """Put a tab in the place of a line's spaces, or between two words."""
    found = [s for s in spots(chance.files, "question_bank/") if "  " in s.text or " " in s.text]
    spot = chance.pick(found)
    if chance.random.random() < 0.5 and spot.text.startswith("  "):
        return chance.line(spot, "\t" + spot.text[2:], what=f"tab for spaces: {spot.text!r}")
    return chance.line(spot, spot.text.replace(" ", "\t", 1), what=f"a tab in {spot.text!r}")


def long_line(chance: Chance) -> Damage:
    """Write one word of a line twenty thousand letters long."""
    spot = _written(chance)
    at = _inside(chance, spot)
    new = spot.text[:at] + "x" * LONG + spot.text[at:]
    return chance.line(spot, new, what=f"{LONG} letters in {spot.text.strip()!r}")


def quote_dropped(chance: Chance) -> Damage:
    """Take away one quotation mark."""
    spot = chance.pick([s for s in spots(chance.files, chance.group()) if '"' in s.text])
    at = chance.random.choice([match.start() for match in re.finditer('"', spot.text)])
    return chance.line(spot, spot.text[:at] + spot.text[at + 1 :])


def alike_letter(chance: Chance) -> Damage:
    """Write a letter of a name in another alphabet, where it looks the same."""
    found = [s for s in spots(chance.files, chance.group()) if _NAME.search(s.text)]
    spot = chance.pick([s for s in found if set(_NAME.search(s.text)[0]) & set(ALIKE)])  # type: ignore[index]
    match = _NAME.search(spot.text)
    assert match is not None
    at = chance.random.choice([n for n in range(*match.span()) if spot.text[n] in ALIKE])
    return chance.line(spot, spot.text[:at] + ALIKE[spot.text[at]] + spot.text[at + 1 :])


def cut_off(chance: Chance) -> Damage:
    """End a file somewhere in its second half, as a full disk does."""
    spot = _written(chance)
    data = chance.files[spot.path]
    at = chance.random.randrange(len(data) // 2, len(data) - 1)
    kept = data[:at]
    last = kept.count(b"\n") + (not kept.endswith(b"\n"))
    # a file cut exactly between two lines is as whole as a shorter one
    trade = kept.endswith(b"\n")
    changes = {spot.path: kept}
    what = f"cut after {kept[-30:].decode('utf-8', 'replace')!r}"
    return Damage(chance.kind, changes, spot.path, (last,), what, trade)


KINDS: dict[str, Kind] = {
    "bad byte": bad_byte,
    "NUL": nul,
    "odd sign": odd_sign,
    "BOM": byte_order_mark,
    "CR / CRLF": line_ends,
    "tab": tab,
    "very long line": long_line,
    "look-alike letter": alike_letter,
    "quote dropped": quote_dropped,
    "file cut off": cut_off,
}
