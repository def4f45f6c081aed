"""The six kinds of question: the time and marks of each, and what paper and screen call it."""

from dataclasses import dataclass
from fractions import Fraction
from typing import Final, Generic, TypeVar, assert_never, get_args

from generator.bank.models import Kind

Value = TypeVar("Value")
KINDS: Final[tuple[Kind, ...]] = get_args(Kind)


# without slots: a generic class with them cannot be called as ByKind[int](...)
@dataclass(frozen=True)
class ByKind(Generic[Value]):
    """One value for each kind of question; a table that leaves a kind out does not type-check."""

    numeric: Value
    choice: Value
    multiple_response: Value
    order: Value
    match: Value
    written: Value

    def of(self, kind: Kind) -> Value:
        """Return the value of one kind."""
        match kind:
            case "numeric":
                return self.numeric
            case "choice":
                return self.choice
            case "multiple_response":
                return self.multiple_response
            case "order":
                return self.order
            case "match":
                return self.match
            case "written":
                return self.written
        assert_never(kind)


@dataclass(frozen=True, slots=True)
class KindFacts:
    """What every question of a kind has in common.

    minutes      expected time
    marks        of a question; None where each pair or point brings its own
    on_paper     the task, as the question paper names it
    on_screen    the task, as a page names it
    at_terminal  what to type when answers are entered by hand
    """

    minutes: Fraction
    marks: int | None
    on_paper: str
    on_screen: str
    at_terminal: str


FACTS: Final = ByKind(
    numeric=KindFacts(Fraction(5, 2), 2, "number and unit", "Work it out", "a number"),
    choice=KindFacts(Fraction(1), 1, "one answer", "Choose one", "one letter"),
    multiple_response=KindFacts(
        Fraction(3, 2), 2, "one or more answers", "Choose all that apply", "letters"
    ),
    order=KindFacts(Fraction(2), 2, "put in order", "Put in order", "letters in order"),
    match=KindFacts(Fraction(2), None, "match", "Pair them up", "pairs such as 1C 2A"),
    written=KindFacts(Fraction(4), None, "written answer", "Write it down", "marks for each point"),
)
