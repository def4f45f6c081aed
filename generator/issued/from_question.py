"""From a solved question to the plain JSON that is issued."""

from fractions import Fraction
from typing import assert_never

from generator.bank import module_of
from generator.issued.keys import (
    IssuedOption,
    IssuedSlip,
    MatchAnswerKey,
    NumericAnswerKey,
    OptionsAnswerKey,
    OrderAnswerKey,
    WrittenAnswerKey,
)
from generator.issued.kinds import FACTS
from generator.issued.question import Asked, IssuedCritical, IssuedExhibit, IssuedQuestion
from generator.quantities import number_text
from generator.questions import (
    ChoiceKey,
    Exhibit,
    MatchKey,
    NumericKey,
    OrderKey,
    Question,
    ShownCritical,
    ShownOption,
    SolvedSlip,
    WrittenKey,
)

ANY_ORDER = "Any order that keeps these pairs is right."


def issued_question(question: Question) -> IssuedQuestion:
    """Return a question as it is issued; exact numbers are decimal or fraction texts."""
    key, asked, name = question.key, _asked(question), question.name
    match key:
        case NumericKey():
            return {"id": name, "kind": "numeric", **asked, "key": _numeric(key)}
        case ChoiceKey() if question.kind == "choice":
            return {"id": name, "kind": "choice", **asked, "key": _options(key)}
        case ChoiceKey():
            return {"id": name, "kind": "multiple_response", **asked, "key": _options(key)}
        case OrderKey():
            return {"id": name, "kind": "order", **asked, "key": _order(key)}
        case MatchKey():
            return {"id": name, "kind": "match", **asked, "key": _match(key)}
        case WrittenKey():
            return {"id": name, "kind": "written", **asked, "key": _written(key)}
    assert_never(key)


def _asked(question: Question) -> Asked:
    exhibit = question.exhibit
    return {
        "id": question.name,
        "module": module_of(question.objective),
        "objective": question.objective,
        "level": question.level,
        "pool": question.use,
        "safety": question.safety,
        "critical": _critical(question.critical) if question.critical else None,
        "place": question.place,
        "stem": question.stem,
        "hands_on": question.hands_on,
        "caution": question.caution,
        "cautions": [
            {"hazard": caution.hazard, "text": caution.text}
            for caution in question.cautions
            if not question.hands_on
        ],
        "sheet": _exhibit(exhibit) if exhibit and not exhibit.columns else None,
        "table": _exhibit(exhibit) if exhibit and exhibit.columns else None,
        "sources": [
            {"tag": source.tag, "key": source.key, "text": source.text}
            for source in question.sources
        ],
        "minutes": float(FACTS.of(question.kind).minutes),
        "draw": dict(question.draw),
    }


def _critical(critical: ShownCritical) -> IssuedCritical:
    return {"hazard": critical.hazard, "title": critical.title, "reason": critical.reason}


def _exhibit(exhibit: Exhibit) -> IssuedExhibit:
    issued: IssuedExhibit = {"title": exhibit.title, "rows": [list(row) for row in exhibit.rows]}
    if exhibit.columns:
        issued["columns"] = list(exhibit.columns)
    return issued


def _options(key: ChoiceKey) -> OptionsAnswerKey:
    return {"options": [_option(option) for option in key.options]}


def _option(option: ShownOption) -> IssuedOption:
    return {
        "letter": option.letter,
        "text": option.text,
        "right": option.right,
        "says": option.feedback,
    }


def _numeric(key: NumericKey) -> NumericAnswerKey:
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
        "slips": [_slip(slip) for slip in key.slips],
        "says": key.feedback,
    }


def _slip(slip: SolvedSlip) -> IssuedSlip:
    return {
        "shown": slip.shown,
        "low": _number(slip.band.low),
        "high": _number(slip.band.high),
        "says": slip.feedback,
    }


def _number(value: Fraction | None) -> str | None:
    return None if value is None else number_text(value)


def _order(key: OrderKey) -> OrderAnswerKey:
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


def _match(key: MatchKey) -> MatchAnswerKey:
    return {
        "left": [{"number": number, "text": text} for number, text in key.left],
        "right": [{"letter": letter, "text": text} for letter, text in key.right],
        "answers": dict(key.answers),
        "says": dict(key.feedback),
    }


def _written(key: WrittenKey) -> WrittenAnswerKey:
    return {
        "points": [{"text": text, "marks": marks} for text, marks in key.points],
        "model": key.model,
    }
