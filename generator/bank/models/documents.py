"""What the trade reads and what it says: made-up documents, and beliefs about the work."""

from typing import Annotated, Literal

from pydantic import Field

from generator.bank.models.fields import Record, Rows, Sources, Text


class Section(Record):
    """A part of a document: its heading, and lines of a name and a value."""

    title: Text
    rows: Annotated[Rows, Field(min_length=1)]


class DataSheet(Record):
    """A made-up document as a whole, such as the data sheet of a surfacer.

    kind  what sort of paper it is in the shop
    """

    title: Text
    kind: Literal["technical", "safety", "label", "job_card", "manifest", "card"]
    sections: Annotated[tuple[Section, ...], Field(min_length=1)]


class Belief(Record):
    """Something that people in the trade say, and what is true of it.

    kind  misconception where a learner gets it wrong, folklore where shops hand it on against the
          rule or the sheet
    """

    belief: Text
    truth: Text
    why: Text
    kind: Literal["misconception", "folklore"]
    source: Sources
