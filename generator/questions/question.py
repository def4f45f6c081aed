"""A solved question: what the learner sees, and the key that goes with it."""

from dataclasses import dataclass
from fractions import Fraction
from typing import Literal

from generator.quantities import Band, Unit

LETTERS = "ABCDEFGHIJKLMNOPQRSTUVWXYZ"
MINUTES = {
    "numeric": Fraction(5, 2),
    "choice": Fraction(1),
    "multiple_response": Fraction(3, 2),
    "order": Fraction(2),
    "match": Fraction(2),
    "written": Fraction(4),
}


@dataclass(frozen=True, slots=True)
class ShownSource:
    """A source as a reader sees it.

    tag   published, common_practice or from_memory
    key   key of sources.yml, or empty
    text  document and clause in words
    """

    tag: Literal["published", "common_practice", "from_memory"]
    key: str
    text: str


@dataclass(frozen=True, slots=True)
class Exhibit:
    """A sheet or table printed with the question; `columns` is empty for a sheet."""

    title: str
    columns: tuple[str, ...]
    rows: tuple[tuple[str, ...], ...]


@dataclass(frozen=True, slots=True)
class SolvedSlip:
    """Where a known wrong way lands, and what to say to the learner who took it."""

    shown: str
    band: Band
    feedback: str


@dataclass(frozen=True, slots=True)
class NumericKey:
    """A computed answer.

    exact    unrounded, in `unit`
    shown    as rounded and printed
    band     what passes, in `unit`; both ends pass
    working  lines of working
    """

    exact: Fraction
    shown: str
    unit: Unit
    step: Fraction
    band: Band
    band_text: str
    working: tuple[str, ...]
    slips: tuple[SolvedSlip, ...]
    feedback: str


@dataclass(frozen=True, slots=True)
class ShownOption:
    """A lettered option with the reason it is right or wrong."""

    letter: str
    text: str
    right: bool
    feedback: str


@dataclass(frozen=True, slots=True)
class ChoiceKey:
    """The options of a choice or multiple-response question."""

    options: tuple[ShownOption, ...]


@dataclass(frozen=True, slots=True)
class ShownPair:
    """Two lettered steps of which the first must come first, and why."""

    first: str
    then: str
    pair_class: str
    reason: str


@dataclass(frozen=True, slots=True)
class OrderKey:
    """Lettered steps and the pairs that score; every order that keeps them is right.

    orders     how many orders of these steps are right
    one_order  one right order, as letters
    """

    steps: tuple[tuple[str, str], ...]
    pairs: tuple[ShownPair, ...]
    orders: int
    one_order: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class MatchKey:
    """Numbered left texts, lettered right texts, and which goes with which."""

    left: tuple[tuple[str, str], ...]
    right: tuple[tuple[str, str], ...]
    answers: tuple[tuple[str, str], ...]
    feedback: tuple[tuple[str, str], ...]


@dataclass(frozen=True, slots=True)
class WrittenKey:
    """Marking points with their marks, and a model answer."""

    points: tuple[tuple[str, int], ...]
    model: str


Key = NumericKey | ChoiceKey | OrderKey | MatchKey | WrittenKey


@dataclass(frozen=True, slots=True)
class Derived:
    """A question that a record gives, before sources and cautions are put to it."""

    kind: str
    level: str
    stem: str
    key: Key


@dataclass(frozen=True, slots=True)
class ShownCritical:
    """The hazard that makes a question critical: its name, its words, and the author's reason."""

    hazard: str
    title: str
    reason: str


@dataclass(frozen=True, slots=True)
class ShownCaution:
    """What to heed in the work: the name of the hazard that says it, or empty, and the words."""

    hazard: str
    text: str


@dataclass(frozen=True, slots=True)
class Question:
    """One question as issued.

    name      the item's id, or the id of a question derived from a record
    cautions  what to heed in the work that is asked about
    hands_on  whether answering means touching the thing itself, so that the cautions stand
              beside the question; otherwise they come with the feedback, where they tell no key
    draw      the values drawn, as text, for the record of what was asked
    minutes   expected time
    place     title of the place whose rule is asked, or empty
    """

    name: str
    kind: str
    objective: str
    level: str
    use: str
    safety: bool
    stem: str
    sources: tuple[ShownSource, ...]
    key: Key
    cautions: tuple[ShownCaution, ...] = ()
    hands_on: bool = False
    exhibit: Exhibit | None = None
    draw: tuple[tuple[str, str], ...] = ()
    minutes: Fraction = Fraction(1)
    critical: ShownCritical | None = None
    place: str = ""

    @property
    def caution(self) -> str | None:
        """Return what stands beside the question before it is answered, or nothing."""
        words = " ".join(caution.text for caution in self.cautions)
        return words if self.hands_on and words else None
