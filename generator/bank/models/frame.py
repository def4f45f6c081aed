"""The frame around the knowledge: outline, sources, glossary, blueprints, the bank itself."""

from typing import Annotated, Literal

from pydantic import Field

from generator.bank.models.fields import Decimal, Kind, Record, Rows, Sources, Text, Whole
from generator.bank.models.items import Level


class BankSheet(Record):
    """Title and edition of the whole bank.

    places  where the shop works, names of places.yml; papers ask no other place's rule
    """

    title: Text
    edition: Text
    places: tuple[Text, ...] = ()


class Hazard(Record):
    """Something that can hurt a person at work.

    hurts      what it does
    guards     what usually guards against it
    first_aid  what to do when it got somebody
    caution    the one sentence or two that stand beside the work
    """

    title: Text
    hurts: Text
    guards: Annotated[tuple[Text, ...], Field(min_length=1)]
    first_aid: Text
    caution: Text
    source: Sources


class RulePlace(Record):
    """A country or state whose rules the bank may ask about.

    words  of which a question on its rule names one
    """

    title: Text
    words: Annotated[tuple[Text, ...], Field(min_length=1)]


class Objective(Record):
    """What a learner will be able to do, and to what standard."""

    objective: Text
    text: Text
    standard: Text


class Module(Record):
    """One module of the course; `lesson` is named only where a lesson exists."""

    module: Text
    title: Text
    code: Text
    lesson: Text | None = None
    codes: tuple[Text, ...] = ()
    objectives: Annotated[tuple[Objective, ...], Field(min_length=1)]


class Outline(Record):
    """The modules in the order the work goes on the panel."""

    modules: Annotated[tuple[Module, ...], Field(min_length=1)]


class Source(Record):
    """A published document and whether it was read for this bank.

    kind  rule for law and what an authority says of it, task_list for an occupational standard or
          a curriculum, which proves that a task belongs to the job and no fact
    """

    document: Text
    title: Text
    author: Text | None = None
    publisher: Text | None = None
    kind: Literal["document", "rule", "task_list"] = "document"
    year: Text | None = None
    status: Literal["read", "restated", "from_memory"]
    jurisdiction: Text | None = None
    note: Text | None = None


class Term(Record):
    """A word of the trade in plain words."""

    term: Text
    other_names: tuple[Text, ...] = ()
    meaning: Text
    see: tuple[Text, ...] = ()


class FoundGiveaway(Record):
    """A question that tells the answer of another one, and the words that do it."""

    question: Text
    gives_away: Text
    words: Text


class ClearedGiveaway(Record):
    """A giveaway that somebody judged harmless, with the reason."""

    question: Text
    gives_away: Text
    reason: Text


class Giveaways(Record):
    """Questions that never share a paper, since one tells the answer of the other.

    found    written by a command
    cleared  kept by hand; these may share a paper
    """

    found: tuple[FoundGiveaway, ...] = ()
    cleared: tuple[ClearedGiveaway, ...] = ()


class Cell(Record):
    """How many questions a paper takes from one module or objective.

    count     a number of questions, or
    share     a percent of those that the cells with a count leave
    topic     what the cell stands for, where a rule or a job names it
    critical  a hazard: only questions marked critical for it, and they must be right to pass
    """

    topic: Text | None = None
    module: Text | None = None
    objective: Text | None = None
    kinds: tuple[Kind, ...] = ()
    levels: tuple[Level, ...] = ()
    critical: Text | None = None
    count: Whole | None = None
    share: Decimal | None = None


class Blueprint(Record):
    """The plan of a paper.

    questions     length of the paper; needed where a cell has a share
    must_include  items that stand on every form
    places        whose rules it may ask besides those of the bank's own places
    apart         sets of questions of which a form takes one at most
    words         most words that the questions of a form may hold
    new_percent   least percent of a form that was never issued before
    certificate   the training certificate for which a pass on this paper is asked
    """

    title: Text
    minutes: Whole
    pass_percent: Whole
    questions: Whole | None = None
    cells: Annotated[tuple[Cell, ...], Field(min_length=1)]
    must_include: tuple[Text, ...] = ()
    places: tuple[Text, ...] = ()
    not_together: Rows = ()
    max_words: Whole | None = None
    new_percent: Whole = 0
    certificate: Literal["painter_training"] | None = None
    note: Text | None = None
