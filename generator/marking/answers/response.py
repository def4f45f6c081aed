"""What a learner answered, in the few forms that every kind of question needs."""

from collections.abc import Callable, Mapping
from dataclasses import dataclass
from typing import Any


class CannotMark(ValueError):
    """An answer or question that does not let itself be marked; the text is one clear sentence."""


@dataclass(frozen=True, slots=True)
class Chosen:
    """The letters of the options that are marked."""

    letters: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class Typed:
    """A number as written, with or without its unit."""

    text: str


@dataclass(frozen=True, slots=True)
class Ordered:
    """The letters of the steps, first to last; steps may be left out or written twice."""

    letters: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class Matched:
    """Pairs of a left-hand number and the letter put to it; an empty letter is no answer."""

    answers: tuple[tuple[str, str], ...]


@dataclass(frozen=True, slots=True)
class Awarded:
    """The marks that a marker gave for each marking point, in the order of the key."""

    marks: tuple[int, ...]


@dataclass(frozen=True, slots=True)
class Blank:
    """Nothing was answered."""


@dataclass(frozen=True, slots=True)
class Illegible:
    """Something was answered that nobody can read."""


Response = Chosen | Typed | Ordered | Matched | Awarded | Blank | Illegible

WORDS: Mapping[type[Response], str] = {
    Chosen: "marked options",
    Typed: "a written number",
    Ordered: "an order of steps",
    Matched: "pairs of number and letter",
    Awarded: "marks for marking points",
    Blank: "nothing",
    Illegible: "something illegible",
}


def is_empty(response: Response) -> bool:
    """Say whether an answer holds nothing, in whatever form it came."""
    if isinstance(response, Chosen | Ordered):
        return not any(letter.strip() for letter in response.letters)
    if isinstance(response, Matched):
        return not any(letter.strip() for _, letter in response.answers)
    if isinstance(response, Typed):
        return not response.text.strip()
    return isinstance(response, Blank)


def response_as_plain(response: Response) -> dict[str, Any]:
    """Return the JSON form of an answer."""
    if isinstance(response, Chosen):
        return {"form": "chosen", "letters": list(response.letters)}
    if isinstance(response, Ordered):
        return {"form": "ordered", "letters": list(response.letters)}
    if isinstance(response, Matched):
        return {"form": "matched", "answers": dict(response.answers)}
    if isinstance(response, Typed):
        return {"form": "typed", "text": response.text}
    if isinstance(response, Awarded):
        return {"form": "awarded", "marks": list(response.marks)}
    return {"form": "blank" if isinstance(response, Blank) else "illegible"}


def response_from_plain(plain: Mapping[str, Any]) -> Response:
    """Read the JSON form of an answer; raises CannotMark where it is not one."""
    try:
        return _FORMS[plain["form"]](plain)
    except (KeyError, TypeError, ValueError, AttributeError) as error:
        raise CannotMark(f"this is not an answer in a known form: {dict(plain)}") from error


_FORMS: Mapping[str, Callable[[Mapping[str, Any]], Response]] = {
    "chosen": lambda plain: Chosen(tuple(map(_text, plain["letters"]))),
    "ordered": lambda plain: Ordered(tuple(map(_text, plain["letters"]))),
    "matched": lambda plain: Matched(
        tuple((_text(number), _text(letter)) for number, letter in plain["answers"].items())
    ),
    "typed": lambda plain: Typed(_text(plain["text"])),
    "awarded": lambda plain: Awarded(tuple(map(_whole, plain["marks"]))),
    "blank": lambda plain: Blank(),
    "illegible": lambda plain: Illegible(),
}


def _text(value: object) -> str:
    if not isinstance(value, str):
        raise TypeError("not a text")
    return value


def _whole(value: object) -> int:
    if not isinstance(value, int) or isinstance(value, bool):
        raise TypeError("not a whole number")
    return value
