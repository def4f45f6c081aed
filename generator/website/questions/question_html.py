"""One study question, whole for a reader without script; the script makes a form of it."""

import re
from collections.abc import Callable, Mapping, Sequence
from fractions import Fraction
from math import floor
from typing import Any

from markupsafe import Markup

from generator.quantities import number_text
from generator.website.context import (
    PageContext,
    Question,
    SiteContext,
    Variants,
    cited_of_question,
    objective_of,
)
from generator.website.followed_words import bands_of, followed
from generator.website.question_words import question_words
from generator.website.questions.methods import method_of
from generator.website.variant_slots import Slots

# the author's words that make the unit part of the answer
_WITH_UNIT = re.compile(r"\b(?:with|and) (?:its|the) unit\b")
KIND_WORDS = {
    "numeric": "Work it out",
    "choice": "Choose one",
    "multiple_response": "Choose all that apply",
    "order": "Put in order",
    "match": "Pair them up",
    "written": "Write it down",
}


def question_html(
    variants: Variants, draft: PageContext, desk: SiteContext, label: str, level: int = 3
) -> str:
    """Write one item with all its variants; the page's script makes a form of it.

    label  what the item is called on its page, such as "Question 7"
    level  level of its heading
    """
    question = variants[0]
    slots = Slots()
    data = marking_data(variants)
    try:
        words = question_words(variants, draft, slots)
    except ValueError:
        # variants of another shape share no words, so each brings its own
        slots = Slots()
        words = question_words(variants[:1], draft, slots)
        data["whole"] = [_whole(variant, draft, desk) for variant in variants[1:]]
    marked = desk.fill(
        "questions/question_body.html",
        draft,
        q=question,
        w=words,
        kind_words=KIND_WORDS[question["kind"]],
        asks_unit=asks_unit(question),
        is_theirs=draft.course.is_theirs(question),
        label=label,
        level=level,
        source_tags=cited_of_question(draft.course, question["sources"]),
    )
    if slots.are_used:
        data.update(slots.data(marked, _following(variants)))
    return desk.fill(
        "questions/question.html",
        draft,
        q=question,
        body=Markup(slots.filled(marked)),
        data=data,
        anchor=question_anchor(question),
        objective=objective_of(question),
        method=method_of(question, draft.course.relations),
        is_theirs=draft.course.is_theirs(question),
    )


def _following(variants: Variants) -> Callable[[Sequence[str]], str]:
    """Return how words of this question can follow from its bands."""
    if variants[0]["kind"] != "numeric":
        return lambda words: ""
    bands = [bands_of(variant["key"]) for variant in variants]
    return lambda words: followed(words, bands)


def _whole(variant: Question, draft: PageContext, desk: SiteContext) -> dict[str, str]:
    slots = Slots()
    words = question_words((variant,), draft, slots)
    unit = asks_unit(variant)
    parts = {"ask": "questions/study_ask.html", "reasons": "questions/study_reasons.html"}
    return {
        name: desk.fill(part, draft, q=variant, w=words, asks_unit=unit)
        for name, part in parts.items()
    }


def asks_unit(question: Question) -> bool:
    """Say whether a number is wanted with its unit, as the words of the question say."""
    return question["kind"] == "numeric" and bool(_WITH_UNIT.search(question["stem"]))


def question_anchor(question: Question) -> str:
    """Return the place of a question on its page."""
    return "q-" + str(question["id"]).replace("/", "-").replace("#", "-")


def marking_data(variants: Variants) -> dict[str, Any]:
    """Return what the page's script needs to mark: no words that the page holds already.

    The first variant has it all, and each other one what differs from the first.
    """
    first, *others = ({"kind": one["kind"], **_marking(one, one["key"])} for one in variants)
    changed = [
        {name: value for name, value in other.items() if value != first[name]} for other in others
    ]
    return {"variants": [first, *changed]}


def _marking(question: Question, key: Mapping[str, Any]) -> dict[str, Any]:
    kind = question["kind"]
    if kind == "numeric":
        return {**_numeric(key), "asks_unit": asks_unit(question)}
    if kind in ("choice", "multiple_response"):
        return {"right": [option["letter"] for option in key["options"] if option["right"]]}
    if kind == "order":
        return _order(key)
    if kind == "match":
        return {"answers": key["answers"]}
    return {"marks": [point["marks"] for point in key["points"]]}


def _order(key: Mapping[str, Any]) -> dict[str, Any]:
    return {
        "steps": "".join(step["letter"] for step in key["steps"]),
        "pairs": [
            {"first": pair["first"], "then": pair["then"], "danger": pair["class"] == "danger"}
            for pair in key["pairs"]
        ],
    }


def _numeric(key: Mapping[str, Any]) -> dict[str, Any]:
    return {
        "band": band_text(key["low"], key["high"]),
        "unit": key["unit"],
        "symbol": key["unit_symbol"],
        "step": key["step"],
        "slips": [slip_text(slip, Fraction(key["step"])) for slip in key["slips"]],
    }


def band_text(low: str | None, high: str | None) -> str:
    """Write a band for the script: its middle and half its width, or its two ends if shorter.

    low, high  exact decimals or fractions; None is an open end
    """
    ends = f"{low or ''}..{high or ''}"
    if low is None or high is None:
        return ends
    middle, half = (Fraction(low) + Fraction(high)) / 2, (Fraction(high) - Fraction(low)) / 2
    return min(f"{number_text(middle)}~{number_text(half)}", ends, key=len)


def slip_text(slip: Mapping[str, Any], step: Fraction) -> str:
    """Write the band of a known wrong way as the exact number it leads to, where that tells it.

    The band then is half a step around that number and the one it rounds to.
    """
    if slip["low"] is not None and slip["high"] is not None:
        low, high = Fraction(slip["low"]), Fraction(slip["high"])
        for exact in (low + step / 2, high - step / 2):
            rounded = floor(exact / step + Fraction(1, 2)) * step
            if exact >= 0 and (low, high) == (
                min(exact, rounded) - step / 2,
                max(exact, rounded) + step / 2,
            ):
                return f"@{number_text(exact)}"
    return band_text(slip["low"], slip["high"])
