"""The answer keys of issued questions: plain JSON, one shape for each kind."""

from typing import NotRequired, TypedDict


class LetteredText(TypedDict):
    """A step or a right-hand text with the letter that stands before it."""

    letter: str
    text: str


class NumberedText(TypedDict):
    """A left-hand text with the number that stands before it."""

    number: str
    text: str


class AcceptedBand(TypedDict):
    """Numbers that pass, as decimals in the asked unit; both ends pass, None is no end."""

    low: str | None
    high: str | None


class IssuedSlip(AcceptedBand):
    """Where a known wrong way lands, and what to say to the learner who took it."""

    shown: str
    says: str


class NumericAnswerKey(AcceptedBand):
    """A computed answer.

    shown      as rounded and printed
    exact      unrounded, a decimal or a fraction
    step       to which it is rounded
    band_text  what passes, in words
    also       further bands that a correction accepts
    """

    shown: str
    exact: str
    unit: str
    unit_symbol: str
    step: str
    band_text: str
    working: list[str]
    slips: list[IssuedSlip]
    says: str
    also: NotRequired[list[AcceptedBand]]


class IssuedOption(LetteredText):
    """An option with the reason it is right or wrong."""

    right: bool
    says: str


class OptionsAnswerKey(TypedDict):
    """Lettered options, each right or wrong."""

    options: list[IssuedOption]


class ChoiceAnswerKey(OptionsAnswerKey):
    """Options of which one is chosen."""


class MultipleResponseAnswerKey(OptionsAnswerKey):
    """Options of which every right one is marked."""


# 'class' and 'then' are words of the frozen JSON, and 'class' cannot name a field
IssuedPair = TypedDict("IssuedPair", {"first": str, "then": str, "class": str, "reason": str})


class OrderAnswerKey(TypedDict):
    """Steps and the pairs that score; every order that keeps the pairs is right.

    orders     how many orders are right
    one_order  one of them, as letters
    """

    steps: list[LetteredText]
    pairs: list[IssuedPair]
    orders: int
    one_order: list[str]
    rule: str


class MatchAnswerKey(TypedDict):
    """Which letter goes with which number, and what to say about each number."""

    left: list[NumberedText]
    right: list[LetteredText]
    answers: dict[str, str]
    says: dict[str, str]


class IssuedPoint(TypedDict):
    """A marking point and the marks it is worth."""

    text: str
    marks: int


class WrittenAnswerKey(TypedDict):
    """Marking points and a model answer."""

    points: list[IssuedPoint]
    model: str
