"""The words of one question as its template shows them, those of all its variants at once."""

from collections.abc import Callable, Sequence
from functools import partial
from typing import Any, Final, NamedTuple

from markupsafe import Markup, escape

from generator.issued import ByKind
from generator.website.context import PageContext, Question, phrase, rendered
from generator.website.questions.variant_slots import Slots

Words = dict[str, Any]
Text = Callable[[Sequence[Any]], Markup]


class _Writers(NamedTuple):
    """How texts of three kinds are written: whole paragraphs, one line, and no Markdown at all."""

    prose: Text
    phrase: Text
    plain: Text


def question_words(variants: Sequence[Question], draft: PageContext, slots: Slots) -> Words:
    """Write the texts of a question; where its variants differ goes into the slots.

    Variants of another shape are refused by ValueError: they cannot share their words.
    """
    write = _Writers(
        partial(_written, slots, lambda text: rendered(text, draft)),
        partial(_written, slots, lambda text: phrase(text, draft)),
        partial(_written, slots, lambda text: str(escape(text))),
    )
    first = variants[0]
    words: Words = {"stem": write.prose([v["stem"] for v in variants])}
    words["sheet"] = _exhibit([v["sheet"] for v in variants], write)
    words["table"] = _exhibit([v["table"] for v in variants], write)
    keys = [v["key"] for v in variants]
    words.update(_WORDS.of(first["kind"])(keys, write))
    cautions = ["\n\n".join(c["text"] for c in v["cautions"]) for v in variants]
    words["cautions"] = ""
    if first["kind"] != "numeric" and _same(map(bool, cautions)):
        words["cautions"] = write.prose(cautions)
    return words


def _written(slots: Slots, write: Callable[[str], str], texts: Sequence[Any]) -> Markup:
    return slots.text([str(text) for text in texts], write)


def _same(values: Any) -> Any:
    """Return what all values are; ValueError where they differ."""
    found = set(values)
    if len(found) > 1:
        raise ValueError("the variants of a question have different shapes")
    return found.pop()


def _rows(lists: Sequence[Sequence[Any]], write: Callable[[list[Any]], Any]) -> list[Any]:
    """Write entry by entry what is in one place of each list."""
    _same(map(len, lists))
    return [write(list(entries)) for entries in zip(*lists, strict=True)]


def _fields(lists: Sequence[Sequence[Any]], **writers: Text) -> list[Words]:
    def entry(found: list[Any]) -> Words:
        return {name: write([one[name] for one in found]) for name, write in writers.items()}

    return _rows(lists, entry)


def _exhibit(found: Sequence[Any], write: _Writers) -> Words | None:
    if not _same(bool(exhibit) for exhibit in found):
        return None
    _same((exhibit["title"], tuple(exhibit.get("columns", ()))) for exhibit in found)
    return {
        "title": found[0]["title"],
        "columns": [write.phrase([name]) for name in found[0].get("columns", ())],
        "rows": _rows(
            [exhibit["rows"] for exhibit in found], lambda rows: _rows(rows, write.phrase)
        ),
    }


def _numeric(keys: Sequence[Any], write: _Writers) -> Words:
    _same((key["unit_symbol"], bool(key["band_text"]), bool(key["says"])) for key in keys)
    return {
        "shown": write.plain([key["shown"] for key in keys]),
        "band_text": write.plain([key["band_text"] or "" for key in keys]),
        "says": write.phrase([key["says"] or "" for key in keys]),
        "working": _rows([key["working"] for key in keys], write.plain),
        "slips": _fields([key["slips"] for key in keys], shown=write.plain, says=write.phrase),
    }


def _choice(keys: Sequence[Any], write: _Writers) -> Words:
    options = [
        [{**o, "verdict": "Right" if o["right"] else "Not right"} for o in key["options"]]
        for key in keys
    ]
    return {"options": _fields(options, text=write.phrase, verdict=write.plain, says=write.phrase)}


def _order(keys: Sequence[Any], write: _Writers) -> Words:
    texts = [{step["letter"]: step["text"] for step in key["steps"]} for key in keys]
    orders = [
        [{"letter": letter, "text": text[letter]} for letter in key["one_order"]]
        for key, text in zip(keys, texts, strict=True)
    ]
    _same(tuple((p["first"], p["then"], p["class"]) for p in key["pairs"]) for key in keys)
    reasons = _rows([[p["reason"] for p in key["pairs"]] for key in keys], write.phrase)
    return {
        "steps": _fields([key["steps"] for key in keys], text=write.phrase),
        "one_order": _fields(orders, letter=write.plain, text=write.phrase),
        "pairs": [
            {**pair, "reason": reason}
            for pair, reason in zip(keys[0]["pairs"], reasons, strict=True)
        ],
    }


def _match(keys: Sequence[Any], write: _Writers) -> Words:
    lefts = [
        [
            {
                "text": left["text"],
                "letter": key["answers"][left["number"]],
                "says": key["says"][left["number"]],
            }
            for left in key["left"]
        ]
        for key in keys
    ]
    return {
        "right": _fields([key["right"] for key in keys], text=write.phrase),
        "left": _fields(lefts, text=write.phrase, letter=write.plain, says=write.phrase),
    }


def _points(keys: Sequence[Any], write: _Writers) -> Words:
    _same(tuple(point["marks"] for point in key["points"]) for key in keys)
    texts = _rows([[point["text"] for point in key["points"]] for key in keys], write.phrase)
    return {
        "points": [
            {"text": text, "marks": point["marks"]}
            for text, point in zip(texts, keys[0]["points"], strict=True)
        ],
        "model": write.phrase([key["model"] for key in keys]),
    }


_WORDS: Final = ByKind[Callable[[Sequence[Any], _Writers], Words]](
    numeric=_numeric,
    choice=_choice,
    multiple_response=_choice,
    order=_order,
    match=_match,
    written=_points,
)
