"""A question as it is issued: plain JSON that paper, page, marking and records all read."""

from collections.abc import Callable
from dataclasses import dataclass
from typing import Generic, Literal, NotRequired, TypedDict, TypeVar, assert_never

from generator.issued.keys import (
    ChoiceAnswerKey,
    IssuedOption,
    IssuedPoint,
    MatchAnswerKey,
    MultipleResponseAnswerKey,
    NumericAnswerKey,
    OrderAnswerKey,
    WrittenAnswerKey,
)

Value = TypeVar("Value")


class IssuedExhibit(TypedDict):
    """A sheet or a table printed with a question; a sheet has no columns."""

    title: str
    rows: list[list[str]]
    columns: NotRequired[list[str]]


class IssuedSource(TypedDict):
    """Where a key comes from: its tag, its key in sources.yml, and the document in words."""

    tag: Literal["published", "common_practice", "from_memory"]
    key: str
    text: str


class IssuedCaution(TypedDict):
    """What to heed in the work, and the hazard that says it, or empty."""

    hazard: str
    text: str


class IssuedCritical(TypedDict):
    """The hazard that makes a question critical: its name, its words, and the author's reason."""

    hazard: str
    title: str
    reason: str


class Asked(TypedDict):
    """What a question of every kind holds; what may be missing is missing in older issues.

    caution   stands beside the question, or None
    cautions  come with the feedback
    draw      the values drawn, as text
    """

    id: str
    module: str
    objective: str
    level: str
    pool: str
    safety: bool
    stem: str
    caution: str | None
    sheet: IssuedExhibit | None
    table: IssuedExhibit | None
    sources: list[IssuedSource]
    minutes: float
    draw: dict[str, str]
    critical: NotRequired[IssuedCritical | None]
    place: NotRequired[str]
    hands_on: NotRequired[bool]
    cautions: NotRequired[list[IssuedCaution]]


class NumericQuestion(Asked):
    """A number to be worked out."""

    kind: Literal["numeric"]
    key: NumericAnswerKey


class ChoiceQuestion(Asked):
    """One option to be chosen."""

    kind: Literal["choice"]
    key: ChoiceAnswerKey


class MultipleResponseQuestion(Asked):
    """All right options to be marked."""

    kind: Literal["multiple_response"]
    key: MultipleResponseAnswerKey


class OrderQuestion(Asked):
    """Steps to be put in order."""

    kind: Literal["order"]
    key: OrderAnswerKey


class MatchQuestion(Asked):
    """Texts to be paired."""

    kind: Literal["match"]
    key: MatchAnswerKey


class WrittenQuestion(Asked):
    """An answer in words, marked by a person."""

    kind: Literal["written"]
    key: WrittenAnswerKey


IssuedQuestion = (
    NumericQuestion
    | ChoiceQuestion
    | MultipleResponseQuestion
    | OrderQuestion
    | MatchQuestion
    | WrittenQuestion
)


# without slots, as ByKind is
@dataclass(frozen=True)
class ForKey(Generic[Value]):
    """What to do with the answer key of each kind; one that leaves a kind out does not type-check.

    Each function takes the key of its own kind and no other.
    """

    numeric: Callable[[NumericAnswerKey], Value]
    choice: Callable[[ChoiceAnswerKey], Value]
    multiple_response: Callable[[MultipleResponseAnswerKey], Value]
    order: Callable[[OrderAnswerKey], Value]
    match: Callable[[MatchAnswerKey], Value]
    written: Callable[[WrittenAnswerKey], Value]

    def of(self, question: IssuedQuestion) -> Value:
        """Return what the function for the kind of a question makes of its key."""
        if question["kind"] == "numeric":
            return self.numeric(question["key"])
        if question["kind"] == "choice":
            return self.choice(question["key"])
        if question["kind"] == "multiple_response":
            return self.multiple_response(question["key"])
        if question["kind"] == "order":
            return self.order(question["key"])
        if question["kind"] == "match":
            return self.match(question["key"])
        if question["kind"] == "written":
            return self.written(question["key"])
        assert_never(question)


def options_of(question: IssuedQuestion) -> list[IssuedOption]:
    """Return the options of a choice or multiple response; none for any other kind."""
    if question["kind"] == "choice" or question["kind"] == "multiple_response":
        return question["key"]["options"]
    return []


def points_of(question: IssuedQuestion) -> list[IssuedPoint]:
    """Return the marking points of a written question; none for any other kind."""
    return question["key"]["points"] if question["kind"] == "written" else []


def asked_unit(question: IssuedQuestion) -> str:
    """Return the symbol of the unit that a number is asked in; empty without one."""
    return question["key"]["unit_symbol"] if question["kind"] == "numeric" else ""


def objective_name(question: IssuedQuestion) -> str:
    """Return 'module/objective' that a question asks, however its issue spells it."""
    name = question["objective"]
    return name if "/" in name else f"{question['module']}/{name}"
