"""Trade knowledge stated once: procedures, faults and published tables."""

from typing import Annotated, Literal

from pydantic import Field

from generator.bank.models.fields import Record, Rows, Sources, Text, YesNo
from generator.bank.models.items import Critical, OrderStep, PairClass

Harm = Literal[
    "contamination",
    "poor_grip",
    "trapped_solvent",
    "corrosion",
    "wrong_cure",
    "wasted_mix",
    "uneven_film",
    "shape_fault",
    "breathing_harm",
    "skin_eye_harm",
    "fire",
    "damage",
    "wrong_choice",
]
Family = Literal["surface", "method", "climate", "equipment", "material"]


class Step(OrderStep):
    """One step of a procedure; an optional step never enters an order question."""

    optional: YesNo = False


class Pair(Record):
    """Which of two steps must come first, why, and what happens the other way round.

    critical  set where taking the two the other way round would hurt somebody
    """

    first: Text
    then: Text
    # 'class' is a reserved word in Python but the plain word for an author
    pair_class: Annotated[PairClass, Field(alias="class")]
    reason: Text
    goes_wrong: Text | None = None
    harm: Harm | None = None
    critical: Critical | None = None

    @property
    def scores(self) -> bool:
        """Say whether a learner is marked on this pair."""
        return self.pair_class != "habit"


class Procedure(Record):
    """A piece of work as steps, with the pairs whose order matters.

    cautions  what to heed besides the cautions of the hazards that its steps meet
    wears     hazards guarded against before the first step; the card says so
    harmless  why no step can hurt anybody, where none meets a hazard
    place     whose rule it follows, a name of places.yml; nothing where it holds anywhere
    """

    title: Text
    objective: Text
    source: Sources
    place: Text | None = None
    wears: tuple[Text, ...] = ()
    harmless: Text | None = None
    cautions: tuple[Text, ...] = ()
    steps: Annotated[tuple[Step, ...], Field(min_length=3)]
    throughout: tuple[Text, ...] = ()
    never: tuple[Text, ...] = ()
    pairs: Annotated[tuple[Pair, ...], Field(min_length=1)]


class Cause(Record):
    """A cause of a fault; keyed only where it belongs to this fault alone."""

    family: Family
    text: Text
    asked: YesNo = False


class LookAlike(Record):
    """Another fault that looks similar, and what tells this one apart."""

    fault: Text
    difference: Text


class Fault(Record):
    """A fault of the film: how it looks, why it comes, what to do."""

    title: Text
    other_names: tuple[Text, ...] = ()
    objective: Text
    source: Sources
    look: Text
    place_and_time: Text
    causes: Annotated[tuple[Cause, ...], Field(min_length=1)]
    prevention: Text
    remedy: Text
    remedy_asked: YesNo = False
    look_alikes: tuple[LookAlike, ...] = ()
    caution: Text | None = None


class Column(Record):
    """A column of a table and the unit of its numbers ('text' for words)."""

    name: Text
    unit: Text


class LookUp(Record):
    """A question the table answers: given one column, read another."""

    from_column: Annotated[Text, Field(alias="from")]
    to_column: Annotated[Text, Field(alias="to")]


class Table(Record):
    """A published table; its rows stand here or in a data file of the relations.

    place  whose rule it is, a name of places.yml; nothing where it holds anywhere
    """

    title: Text
    objective: Text
    source: Sources
    place: Text | None = None
    columns: Annotated[tuple[Column, ...], Field(min_length=2)]
    rows: Rows = ()
    rows_from: Text | None = None
    look_up: tuple[LookUp, ...] = ()
    note: Text | None = None
