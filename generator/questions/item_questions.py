"""The question that a hand-written item makes."""

from collections.abc import Collection
from dataclasses import replace
from typing import cast

from generator.bank import Bank, Entry, objective_of
from generator.bank.models import (
    ChoiceItem,
    Item,
    MatchItem,
    MultipleResponseItem,
    NumericItem,
    OrderItem,
    WrittenItem,
)
from generator.questions.cautions import item_cautions
from generator.questions.drawing import (
    Draw,
    HandedOut,
    SeededRandom,
    draw_apart,
    draw_of,
    draw_solution,
    item_options,
    matched,
    numeric_key,
    order_key,
    prepared,
    scored_item,
)
from generator.questions.question import MINUTES, Exhibit, Key, Question, WrittenKey
from generator.questions.sources import place_title, shown_critical, shown_sources
from generator.questions.wording import with_articles
from generator.questions.worn import worn_words

Taken = Collection[Draw] | HandedOut


def salt(bank: Bank) -> str:
    """Return what sets one edition's draws apart from another's."""
    return f"{bank.sheet.title}|{bank.sheet.edition}"


def question_of_item(bank: Bank, entry: Entry[Item], form: str, taken: Taken = ()) -> Question:
    """Return the question that an item makes for a form's label.

    taken  draws to pass over, or what a class had so far
    """
    item = entry.record
    kind = kind_of(item)
    stream = SeededRandom(salt(bank), form, entry.name, "layout")
    question = Question(
        name=entry.name,
        kind=kind,
        objective=objective_of(entry.name),
        level=item.level,
        use=item.use,
        safety=item.safety,
        stem=item.stem + worn_words(bank, getattr(item, "wears", ())),
        sources=shown_sources(bank, item.source),
        key=WrittenKey((), ""),
        cautions=item_cautions(bank, item),
        hands_on=item.hands_on,
        exhibit=Exhibit(item.sheet.title, (), item.sheet.rows) if item.sheet else None,
        minutes=MINUTES[kind],
        critical=shown_critical(bank, item.critical),
        place=place_title(bank, item.place or ""),
    )
    if isinstance(item, NumericItem):
        return _numeric(bank, cast("Entry[NumericItem]", entry), question, form, taken)
    return replace(question, key=_key(item, stream))


def kind_of(item: Item) -> str:
    """Return the item's kind as its author wrote it."""
    return str(getattr(item, "kind", ""))


def _key(item: Item, stream: SeededRandom) -> Key:
    if isinstance(item, ChoiceItem | MultipleResponseItem):
        return item_options(item, stream)
    if isinstance(item, OrderItem):
        scored = scored_item(item)
        return order_key(scored, tuple(scored.steps), stream)
    if isinstance(item, MatchItem):
        return matched(item, stream)
    if isinstance(item, WrittenItem):
        return WrittenKey(tuple((p.text, p.marks) for p in item.points), item.model)
    raise TypeError(f"no key can be made for {type(item).__name__}")


def _numeric(
    bank: Bank, entry: Entry[NumericItem], question: Question, form: str, taken: Taken
) -> Question:
    item = prepared(entry)
    if isinstance(taken, HandedOut):
        solution = draw_apart(item, salt(bank), form, taken)
    else:
        solution = draw_solution(item, salt(bank), form, taken)
    draw = draw_of(solution.values)
    exhibit = question.exhibit
    if exhibit:
        rows = tuple(tuple(_filled(cell, draw) for cell in row) for row in exhibit.rows)
        exhibit = Exhibit(_filled(exhibit.title, draw), (), rows)
    return replace(
        question,
        stem=_filled(question.stem, draw),
        key=numeric_key(item, solution, entry.record.feedback or ""),
        exhibit=exhibit,
        draw=draw,
    )


def _filled(text: str, draw: Draw) -> str:
    for name, shown in draw:
        text = text.replace("{" + name + "}", shown)
    return with_articles(text) if draw else text
