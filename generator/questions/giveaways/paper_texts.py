"""What a question asks and what it tells, over everything that it may print on a paper."""

import re
from collections.abc import Iterator, Sequence

from generator.bank import Bank, Entry, table_rows
from generator.bank.models import (
    ChoiceItem,
    Item,
    MatchItem,
    MultipleResponseItem,
    NumericItem,
    OrderItem,
    Table,
    WrittenItem,
)
from generator.questions.drawing import Scored, scored_item
from generator.questions.giveaways.record_texts import fault_text, procedure_text
from generator.questions.giveaways.told_text import Asked, PaperText
from generator.questions.pool import Askable
from generator.questions.question import NumericKey

_SENTENCE = re.compile(r"(?<=[.?!;])\s+")
# a drawn value stands here, another one on each paper
_DRAWN = re.compile(r"\{\w+\}")


def paper_texts(bank: Bank, known: Sequence[Askable]) -> tuple[PaperText, ...]:
    """Return the texts of some questions, in their order; drawn numbers are left out."""
    return tuple(_text(bank, askable) for askable in known)


def _text(bank: Bank, askable: Askable) -> PaperText:
    group, _, name = askable.record.partition("/")
    if not askable.is_derived:
        return _of_item(bank.items[askable.name].record, askable)
    if group == "procedures":
        return procedure_text(bank.procedures[name].record, askable.name, askable.record)
    if group == "faults":
        return fault_text(bank, bank.faults[name], askable.name, askable.record)
    return _of_table(bank.tables[name], askable)


def _of_table(entry: Entry[Table], askable: Askable) -> PaperText:
    """Return the rows; a look-up prints its own answer, so that no other question can tell it."""
    names = [column.name for column in entry.record.columns]
    rows = (
        "; ".join(f"{name} {cell}" for name, cell in zip(names, row, strict=True))
        for row in table_rows(entry)
    )
    return PaperText(askable.name, askable.record, facts=(entry.record.title, *rows))


def _of_item(item: Item, askable: Askable) -> PaperText:
    facts = tuple(_facts(item))
    asked: tuple[Asked, ...] = ()
    shown: tuple[str, ...] = ()
    wrong: tuple[str, ...] = ()
    orders: tuple[tuple[str, str], ...] = ()
    match item:
        case NumericItem():
            asked = tuple(_fixed_number(item, askable, facts))
        case ChoiceItem() | MultipleResponseItem():
            wrong = tuple(option.text for option in item.options if not option.right)
            shown = tuple(option.text for option in item.options if option.right)
            asked = tuple(Asked(text, item.stem, wrong) for text in shown)
        case OrderItem():
            scored = scored_item(item)
            shown, orders = tuple(scored.steps.values()), orders_of(scored)
        case MatchItem():
            rights = tuple(dict.fromkeys(pair.right for pair in item.pairs))
            asked = tuple(Asked(p.right, p.left, _others(rights, p.right)) for p in item.pairs)
            shown = (*(pair.left for pair in item.pairs), *rights)
        case WrittenItem():
            asked = tuple(Asked(point.text, item.stem) for point in item.points)
    return PaperText(askable.name, askable.record, asked, facts, "", shown, wrong, orders)


def _facts(item: Item) -> Iterator[str]:
    yield from _SENTENCE.split(_DRAWN.sub("", item.stem).strip())
    if item.sheet:
        yield _DRAWN.sub("", item.sheet.title)
        yield from (_DRAWN.sub("", " ".join(row)) for row in item.sheet.rows)


def _others(texts: Sequence[str], text: str) -> tuple[str, ...]:
    return tuple(other for other in texts if other != text)


def _fixed_number(item: NumericItem, askable: Askable, facts: Sequence[str]) -> Iterator[Asked]:
    """Return the answer where it is the same on every paper and not printed with the question."""
    if askable.variants > 1:
        return
    question = askable.make("fixed", ())
    if question is not None and isinstance(question.key, NumericKey):
        number = f"{question.key.shown} {question.key.unit.symbol}".strip()
        if number not in " ".join(facts).replace("\u00a0", " "):
            yield Asked(number, item.stem)


def orders_of(scored: Scored) -> tuple[tuple[str, str], ...]:
    """Return the texts of the pairs that score."""
    return tuple((scored.steps[first], scored.steps[then]) for first, then in scored.reasons)
