"""The six kinds of hand-written item."""

from typing import Annotated, Literal

from pydantic import Field

from generator.bank.models.fields import (
    Decimal,
    Kind,
    Record,
    Rows,
    Sources,
    Text,
    ValueGrid,
    Whole,
    YesNo,
)

Level = Literal["recall", "apply", "diagnose"]
Use = Literal["study", "exam", "both"]
PairClass = Literal["danger", "ruins", "habit"]


class Sheet(Record):
    """An extract of a made-up data sheet that is printed with the item.

    rows      pairs of cells; a row of one cell is a heading, in a whole document only
    document  name of the whole document that is printed, in data_sheets
    """

    title: Text
    rows: Rows
    document: Annotated[Text | None, Field(repr=False)] = None


class Critical(Record):
    """Why a wrong answer here means that somebody gets hurt; only such a question can be must-pass.

    hazard  name in hazards.yml of what would hurt them
    """

    hazard: Text
    reason: Text


class Waiver(Record):
    """A rule that does not hold for one item, and why."""

    rule: Text
    reason: Text


class Item(Record):
    """What every kind of item has.

    meets       hazards of the work asked about; their cautions are drawn from hazards.yml
    caution     what a learner must heed besides, in the author's words
    hands_on    whether answering means touching the thing itself, so that a paper warns first
    critical    set where a wrong answer would hurt somebody
    place       whose rule is asked, a name of places.yml; None where it holds anywhere
    apart_from  items that never share a paper with this one
    twin_of     items or records that ask the same thing; together they count as one
    sheet       an extract written here, or the name of a whole document in data_sheets
    waived      warnings that do not hold here
    scenario    whether it tells a situation in which somebody has to decide
    reads_sheet whether it is answered by finding the lines of a whole document
    confronts   beliefs that a learner who holds them answers it by
    No learner sees the last four, so a version leaves them out.
    """

    level: Level
    use: Use
    source: Sources
    stem: Text
    safety: YesNo = False
    meets: tuple[Text, ...] = ()
    caution: Text | None = None
    hands_on: YesNo = False
    critical: Critical | None = None
    place: Text | None = None
    sheet: Sheet | None = None
    feedback: Text | None = None
    not_with: tuple[Text, ...] = ()
    twin_of: tuple[Text, ...] = ()
    waived: Annotated[tuple[Waiver, ...], Field(repr=False)] = ()
    scenario: Annotated[YesNo, Field(repr=False)] = False
    reads_sheet: Annotated[YesNo, Field(repr=False)] = False
    confronts: Annotated[tuple[Text, ...], Field(repr=False)] = ()


class Given(Record):
    """A quantity that a draw chooses: its unit (or 'ratio') and the values allowed."""

    unit: Text
    values: ValueGrid


class Answer(Record):
    """How the key is computed, rounded and accepted."""

    formula: Text
    unit: Text
    round_to: Decimal
    rounding: Literal["half", "up", "down"] = "half"
    tolerance: Text | None = None
    limit: Literal["none", "maximum", "minimum"] = "none"


class Slip(Record):
    """A known wrong way to work it, with what to tell the learner who took it."""

    formula: Text
    feedback: Text


class NumericItem(Item):
    """A question with drawn values and a computed key."""

    kind: Literal["numeric"]
    given: dict[str, Given]
    require: tuple[Text, ...] = ()
    answer: Answer
    slips: Annotated[tuple[Slip, ...], Field(min_length=1)]


class Option(Record):
    """One option and why it is right or wrong."""

    text: Text
    right: YesNo = False
    feedback: Text


class ChoiceItem(Item):
    """A question with one right option."""

    kind: Literal["choice"]
    options: Annotated[tuple[Option, ...], Field(min_length=2, max_length=6)]


class MultipleResponseItem(Item):
    """A question with two or more right options."""

    kind: Literal["multiple_response"]
    options: Annotated[tuple[Option, ...], Field(min_length=3, max_length=8)]


class OrderStep(Record):
    """A step to be put in order.

    meets, guards, ends  hazards that the step brings, guards against, and stops guarding against
    """

    step: Text
    action: Text
    meets: tuple[Text, ...] = ()
    guards: tuple[Text, ...] = ()
    ends: tuple[Text, ...] = ()


class OrderPair(Record):
    """Two steps of which one must come first, and why."""

    first: Text
    then: Text
    # 'class' is a reserved word in Python but the plain word for an author
    pair_class: Annotated[PairClass, Field(alias="class")]
    reason: Text


class OrderItem(Item):
    """Steps to be put in order; every order that keeps the scoring pairs is right.

    wears     hazards guarded against before the first step; the stem says so
    harmless  why no step can hurt anybody, where none meets a hazard
    """

    kind: Literal["order"]
    wears: tuple[Text, ...] = ()
    harmless: Text | None = None
    # counting the legal orders doubles with each step, and nobody sorts more than ten lines
    steps: Annotated[tuple[OrderStep, ...], Field(min_length=3, max_length=10)]
    pairs: Annotated[tuple[OrderPair, ...], Field(min_length=1)]


class MatchPair(Record):
    """Two texts that belong together, and why."""

    left: Text
    right: Text
    feedback: Text


class MatchItem(Item):
    """Left-hand texts to be joined to right-hand texts, with some to spare."""

    kind: Literal["match"]
    pairs: Annotated[tuple[MatchPair, ...], Field(min_length=2, max_length=10)]
    spare: tuple[Text, ...] = ()


class MarkingPoint(Record):
    """One thing that a marker looks for."""

    text: Text
    marks: Whole


class WrittenItem(Item):
    """A question answered in words and marked by hand against points."""

    kind: Literal["written"]
    points: Annotated[tuple[MarkingPoint, ...], Field(min_length=1)]
    model: Text


ITEM_KINDS: dict[Kind, type[Item]] = {
    "numeric": NumericItem,
    "choice": ChoiceItem,
    "multiple_response": MultipleResponseItem,
    "order": OrderItem,
    "match": MatchItem,
    "written": WrittenItem,
}
