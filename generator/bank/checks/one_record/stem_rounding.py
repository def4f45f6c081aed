"""The stem asks for what the key is: the same last figure, the same direction, the same unit."""

import re
from collections.abc import Iterator
from typing import cast

from generator.bank.bank import Bank, Entry
from generator.bank.checks.rule import Rule
from generator.bank.models import NumericItem, decimal
from generator.diagnostics import Problem
from generator.quantities import UNITS, number_text

_FIGURE = r"(?P<step>\d+(?:\.\d+)?)"
_NEAREST = re.compile(rf"\bto the nearest {_FIGURE}(?!\d)")
_DIRECTED = re.compile(
    rf"\brounded (?P<way>up|down)(?: to (?:a |the )?(?:whole |next |full )?{_FIGURE}(?!\d))?"
)
_WHOLE = re.compile(r"\bwhole (?:number|minutes|hours|seconds|days|millilitres|milliliters)\b")
_SYMBOLS = sorted({unit.symbol for unit in UNITS.values() if unit.symbol}, key=len, reverse=True)
_SYMBOL = f"(?P<symbol>{'|'.join(map(re.escape, _SYMBOLS))})"
_ASKED_IN = re.compile(
    rf"\bin {_SYMBOL}(?=\?|,? (?:to the nearest|rounded|to {_FIGURE}))", re.UNICODE
)
_AFTER_FIGURE = re.compile(rf"[ \u00a0]{_SYMBOL}(?=[\s,.?;)]|$)")
_TELLS = re.compile(
    r"(?:^|[.?!:;] )(?:Give|Work|Write|Change|Choose|Name|Find|Pick|Say|State|Put|Turn|Reckon|Tell|"
    r"Calculate|Convert|Read|Show|Mark|Select|List|Explain|Describe)\b"
)
_ANSWERED_BY_MACHINE = ("numeric", "choice", "multiple_response")


def stem_rounding(bank: Bank) -> Iterator[Problem]:
    """Return stems that ask for another last figure, direction or unit than the key has."""
    for entry in bank.items.values():
        if isinstance(entry.record, NumericItem):
            yield from _figures(cast("Entry[NumericItem]", entry))
            yield from _units(cast("Entry[NumericItem]", entry))


def _figures(entry: Entry[NumericItem]) -> Iterator[Problem]:
    stem, answer = entry.record.stem, entry.record.answer
    for match in (*_NEAREST.finditer(stem), *_DIRECTED.finditer(stem)):
        way = match.groupdict().get("way") or "half"
        step = decimal(match["step"]) if match["step"] else None
        if step is not None and step != answer.round_to:
            asked = number_text(answer.round_to)
            message = f"the stem asks for '{match[0]}' and the key is rounded to {asked}"
            hint = f"write {asked} in the stem, or 'round_to: {match['step']}'"
            yield _in_stem(entry, match.start(), message, hint)
        elif way != answer.rounding:
            message = f"the stem asks for '{match[0]}' and the key rounds {answer.rounding}"
            yield _in_stem(entry, match.start(), message, "ask for what the key gives")
    whole = _WHOLE.search(stem)
    if whole and answer.round_to.denominator != 1:
        asked = number_text(answer.round_to)
        message = f"the stem asks for '{whole[0]}' and the key is rounded to {asked}"
        yield _in_stem(entry, whole.start(), message, f"ask for {asked}, or write 'round_to: 1'")


def _units(entry: Entry[NumericItem]) -> Iterator[Problem]:
    stem, unit = entry.record.stem, UNITS.get(entry.record.answer.unit)
    if unit is None:
        return
    figures = (*_NEAREST.finditer(stem), *_DIRECTED.finditer(stem))
    after = (_AFTER_FIGURE.match(stem, figure.end()) for figure in figures if figure["step"])
    for match in (*_ASKED_IN.finditer(stem), *filter(None, after)):
        # '1 ft² per gallon' and '1 °F' say the first word of a longer symbol
        if match["symbol"] not in (unit.symbol, unit.singular, re.split(r"[ /]", unit.symbol)[0]):
            shown = unit.symbol or entry.record.answer.unit
            message = f"the stem asks for {match['symbol']} and the key is in {shown}"
            yield _in_stem(entry, match.start("symbol"), message, "ask in the unit of the key")
            return


def _in_stem(entry: Entry[NumericItem], start: int, message: str, hint: str) -> Problem:
    return entry.problem_inside("stem-rounding", message, start + 1, "stem", hint=hint)


def stem_asks_nothing(bank: Bank) -> Iterator[Problem]:
    """Return stems without a question and without a request."""
    for entry in bank.items.values():
        stem = entry.record.stem
        kind = getattr(entry.record, "kind", "")
        if kind in _ANSWERED_BY_MACHINE and "?" not in stem and not _TELLS.search(stem):
            message = "the stem asks nothing: it has no question mark and no 'Give ...'"
            hint = "end it with the question"
            yield entry.problem("error", "stem-asks-nothing", message, "stem", hint=hint)


RULES = (
    Rule(
        "stem-rounding",
        "error",
        "A learner who rounds as the stem asks must meet the key, in the unit that was asked for.",
        "stem: ... in µm to the nearest 1 µm?\nanswer: {unit: um, round_to: 0.1, ...}",
        "stem: ... in µm to the nearest 0.1 µm?\nanswer: {unit: um, round_to: 0.1, ...}",
        stem_rounding,
    ),
    Rule(
        "stem-asks-nothing",
        "error",
        "A stem that lost its last line leaves the learner to guess what is wanted.",
        "stem: The sheet says 3 parts base to 1 part hardener.",
        "stem: The sheet says 3 parts base to 1 part hardener. How much hardener goes with 300 mL?",
        stem_asks_nothing,
    ),
)
