"""One study question, whole for a reader without script; the script makes a form of it."""

from collections.abc import Callable, Sequence

from markupsafe import Markup

from generator.issued import FACTS, objective_name
from generator.website.context import (
    PageContext,
    Question,
    SiteContext,
    Variants,
    cited_of_question,
)
from generator.website.questions.followed_words import bands_of, followed
from generator.website.questions.marking_data import asks_unit, marking_data
from generator.website.questions.methods import method_of
from generator.website.questions.question_words import question_words
from generator.website.questions.variant_slots import Slots


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
        kind_words=FACTS.of(question["kind"]).on_screen,
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
        objective=objective_name(question),
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


def question_anchor(question: Question) -> str:
    """Return the place of a question on its page."""
    return "q-" + str(question["id"]).replace("/", "-").replace("#", "-")
