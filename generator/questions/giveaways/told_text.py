"""The texts of a question: what it wants to know, and what a reader learns from it."""

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Asked:
    """One answer that a question may want.

    key    the answer
    topic  what it is asked about
    wrong  the options beside it
    plain  whether many texts show such an answer, so that only one that states it tells it
    """

    key: str
    topic: str
    wrong: tuple[str, ...] = ()
    plain: bool = False


@dataclass(frozen=True, slots=True)
class PaperText:
    """All that a question may print on a paper.

    record  the record it was made from
    asked   answers that it may want
    facts   what it states: sentences of its stem, rows of its sheet or table
    title   names the work, and so tells no single step of it
    shown   what it shows without saying that it holds: right options, steps, sides of a match
    wrong   its wrong options, whose numbers may be true all the same
    orders  pairs of steps of which it wants the first to come first
    """

    name: str
    record: str
    asked: tuple[Asked, ...] = ()
    facts: tuple[str, ...] = ()
    title: str = ""
    shown: tuple[str, ...] = ()
    wrong: tuple[str, ...] = ()
    orders: tuple[tuple[str, str], ...] = ()
