"""Questions as plain data, the one form that page, paper and command line read."""

from dataclasses import asdict
from fractions import Fraction
from typing import Any

from generator.bank import module_of
from generator.quantities import number_text
from generator.questions.question import (
    ChoiceKey,
    Exhibit,
    MatchKey,
    NumericKey,
    OrderKey,
    Question,
    ShownOption,
)

Plain = dict[str, Any]
ANY_ORDER = "Any order that keeps these pairs is right."


def as_plain(question: Question) -> Plain:
    """Return a question as JSON-ready data; exact numbers are decimal or fraction texts.

    caution   stands beside the question, or nothing
    cautions  come with the feedback
    """
    exhibit = question.exhibit
    return {
        "id": question.name,
        "kind": question.kind,
        "module": module_of(question.objective),
        "objective": question.objective,
        "level": question.level,
        "pool": question.use,
        "safety": question.safety,
        "critical": asdict(question.critical) if question.critical else None,
        "place": question.place,
        "stem": question.stem,
        "hands_on": question.hands_on,
        "caution": question.caution,
        "cautions": [asdict(caution) for caution in question.cautions if not question.hands_on],
        "sheet": _exhibit(exhibit) if exhibit and not exhibit.columns else None,
        "table": _exhibit(exhibit) if exhibit and exhibit.columns else None,
        "sources": [asdict(source) for source in question.sources],
        "minutes": float(question.minutes),
        "draw": dict(question.draw),
        "key": _key(question),
    }


def _exhibit(exhibit: Exhibit) -> Plain:
    plain: Plain = {"title": exhibit.title, "rows": [list(row) for row in exhibit.rows]}
    if exhibit.columns:
        plain["columns"] = list(exhibit.columns)
    return plain


def _key(question: Question) -> Plain:
    key = question.key
    if isinstance(key, NumericKey):
        return _numeric(key)
    if isinstance(key, ChoiceKey):
        return {"options": [_option(option) for option in key.options]}
    if isinstance(key, OrderKey):
        return _order(key)
    if isinstance(key, MatchKey):
        return {
            "left": [{"number": number, "text": text} for number, text in key.left],
            "right": [{"letter": letter, "text": text} for letter, text in key.right],
            "answers": dict(key.answers),
            "says": dict(key.feedback),
        }
    points = [{"text": text, "marks": marks} for text, marks in key.points]
    return {"points": points, "model": key.model}


def _option(option: ShownOption) -> Plain:
    return {
        "letter": option.letter,
        "text": option.text,
        "right": option.right,
        "says": option.feedback,
    }


def _numeric(key: NumericKey) -> Plain:
    return {
        "shown": key.shown,
        "exact": str(key.exact),
        "unit": key.unit.name,
        "unit_symbol": key.unit.symbol,
        "step": number_text(key.step),
        "low": _number(key.band.low),
        "high": _number(key.band.high),
        "band_text": key.band_text,
        "working": list(key.working),
        "slips": [
            {
                "shown": slip.shown,
                "low": _number(slip.band.low),
                "high": _number(slip.band.high),
                "says": slip.feedback,
            }
            for slip in key.slips
        ],
        "says": key.feedback,
    }


def _number(value: Fraction | None) -> str | None:
    return None if value is None else number_text(value)


def _order(key: OrderKey) -> Plain:
    return {
        "steps": [{"letter": letter, "text": text} for letter, text in key.steps],
        "pairs": [
            {"first": p.first, "then": p.then, "class": p.pair_class, "reason": p.reason}
            for p in key.pairs
        ],
        "orders": key.orders,
        "one_order": list(key.one_order),
        "rule": ANY_ORDER,
    }
