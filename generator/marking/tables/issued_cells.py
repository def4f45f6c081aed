"""One cell of a filled-in table as an answer, and an answer as the cell that says it.

Choice `B`, several options `A C`, a number `12,5 µm`, an order `C A B D`, pairs `1C 2A 3B`, marks
for the points of a written answer `2 0 1`. Empty is blank, `?` is what nobody can read.
"""

import re
import unicodedata
from collections.abc import Callable, Mapping
from typing import Any

from generator.marking.answers import (
    Awarded,
    Blank,
    CannotMark,
    Chosen,
    Illegible,
    Matched,
    Ordered,
    Response,
    Typed,
    mark_response,
)

ILLEGIBLE, BLANK = "?", "blank"
# two options marked where one answer is asked for: said on purpose, not typed by mistake
BOTH = "+"
LONGEST_CELL = 200
# what people type where nothing was answered; read letter by letter it would be options
_NO_ANSWER = ("NONE", "NA", "NIL", "NULL", "NO", "NOANSWER")
_MONTH = "(?:jan|feb|mar|apr|may|jun|jul|aug|sep|oct|nov|dec)[a-z]*"
# what spreadsheets show in place of answers such as 1-2, 1/2 or 3.4
_DATE = re.compile(
    rf"[0-9]{{1,2}}[-/. ]+{_MONTH}(?:[-/. ]+[0-9]{{2,4}})?|{_MONTH}[-/. ]+[0-9]{{2,4}}"
    r"|[0-9]{4}-[0-9]{2}-[0-9]{2}.*|[0-9]{1,2}[/.][0-9]{1,2}[/.][0-9]{4}",
    re.IGNORECASE,
)
_JOINING = ("or", "and")
_BETWEEN = re.compile(r"[\s,;.+&/()>\u2192\u2013\-]+")
_PAIR = re.compile(r"([0-9]+)\s*[-=:.)]?\s*([A-Z])")
_PAIRS = re.compile(rf"(?:{_PAIR.pattern}[\s,;]*)+")
_MARKS = re.compile(r"[0-9]{1,3}(?:[\s,;+]+[0-9]{1,3})*")


class CellRefused(ValueError):
    """A cell that is no answer to its question.

    rule  the name of the rule page
    hint  what to write instead, or empty
    """

    def __init__(self, rule: str, message: str, hint: str = "") -> None:
        super().__init__(message)
        self.rule, self.hint = rule, hint


def read_answer(question: Mapping[str, Any], text: str) -> Response | None:
    """Read a cell as the answer to a question of its kind; letters may be small or capital.

    Gives nothing for a written answer that no marker has marked yet. Raises CellRefused.
    """
    plain = text.strip()
    if len(plain) > LONGEST_CELL:
        raise CellRefused("answer-length", f"an answer has at most {LONGEST_CELL} characters")
    if not plain:
        return None if question["kind"] == "written" else Blank()
    if plain == ILLEGIBLE:
        return Illegible()
    if plain.casefold() == BLANK:
        return Blank()
    response = _READERS[question["kind"]](plain)
    try:
        mark_response(question, response)
    except CannotMark as error:
        rule = "answer-marks" if isinstance(response, Awarded) else "answer-letters"
        raise CellRefused(rule, str(error)) from error
    return response


def answer_cell(kind: str, response: Response) -> str:
    """Write an answer as the cell that is read back as the same answer."""
    match response:
        case Chosen(letters):
            return (BOTH if kind == "choice" else " ").join(letters)
        case Ordered(letters):
            return " ".join(letters)
        case Matched(answers):
            return " ".join(f"{number}{letter}" for number, letter in answers if letter.strip())
        case Awarded(marks):
            return " ".join(map(str, marks))
        case Typed(text):
            return text
        case Illegible():
            return ILLEGIBLE
    return BLANK if kind == "written" else ""


def doubts_about(question: Mapping[str, Any], response: Response) -> str:
    """Return a sentence where an order is not whole; it is marked as it was written, or nothing."""
    if not isinstance(response, Ordered):
        return ""
    steps = [step["letter"] for step in question["key"]["steps"]]
    missing = [letter for letter in steps if letter not in response.letters]
    twice = [letter for letter in steps if response.letters.count(letter) > 1]
    said = [f"{', '.join(missing)} missing"] if missing else []
    said += [f"{', '.join(twice)} more than once"] if twice else []
    return " and ".join(said)


def _letters(text: str) -> tuple[str, ...]:
    plain = _BETWEEN.sub("", unicodedata.normalize("NFKC", text)).upper()
    if plain in _NO_ANSWER:
        raise CellRefused(
            "answer-letters",
            f"'{text}' is no letter of the paper",
            "leave the cell empty where nothing was answered, or write ? where nobody can read it",
        )
    if not (plain.isascii() and plain.isalpha()):
        raise CellRefused(
            "answer-letters",
            f"'{text}' is not made of letters",
            "write the letters that are marked on the paper, such as B, or A C",
        )
    return tuple(plain)


def _choice(text: str) -> Response:
    either = [word for word in re.split(r"[\s,;/&+]+", text) if word.casefold() not in _JOINING]
    letters = _letters(" ".join(either))
    marked = tuple(dict.fromkeys(letters))
    if len(letters) > 1 and BOTH not in text:
        raise CellRefused(
            "two-letters", f"this question takes one letter, not '{text}'", _one_of(marked, text)
        )
    return Chosen(_each_once(letters))


def _one_of(marked: tuple[str, ...], text: str) -> str:
    """Say what to write for a cell with several letters; nothing is guessed from a word."""
    if len(marked) == 1:
        return f"write {marked[0]}"
    if len(marked) == 2 and len(_BETWEEN.sub("", text)) <= len("AorB"):
        return f"where the paper itself has two options marked, write {BOTH.join(marked)}"
    return "write the one letter that is marked on the paper, or ? where nobody can read it"


def _several(text: str) -> Response:
    return Chosen(_each_once(_letters(text)))


def _each_once(letters: tuple[str, ...]) -> tuple[str, ...]:
    if twice := sorted({letter for letter in letters if letters.count(letter) > 1}):
        raise CellRefused("answer-letters", f"'{twice[0]}' is there more than once")
    return letters


def _order(text: str) -> Response:
    return Ordered(_letters(text))


def _match(text: str) -> Response:
    plain = unicodedata.normalize("NFKC", text).upper()
    if _PAIRS.fullmatch(plain) is None:
        raise CellRefused("answer-pairs", f"'{text}' is not pairs", "write pairs such as 1C 2A 3B")
    pairs = tuple((str(int(number)), letter) for number, letter in _PAIR.findall(plain))
    numbers = [number for number, _ in pairs]
    if twice := sorted({number for number in numbers if numbers.count(number) > 1}):
        raise CellRefused("answer-pairs", f"number {twice[0]} is there more than once")
    return Matched(pairs)


def _written(text: str) -> Response:
    if _MARKS.fullmatch(text) is None:
        raise CellRefused(
            "answer-marks",
            f"'{text}' is not marks for the marking points",
            "write a whole number for each point, such as 2 0 1",
        )
    return Awarded(tuple(int(number) for number in re.findall("[0-9]+", text)))


def _number(text: str) -> Response:
    if _DATE.fullmatch(text):
        raise CellRefused(
            "spreadsheet-date",
            f"'{text}' is a date that the spreadsheet made of a number",
            "set the column to Text and type the answer again",
        )
    return Typed(text)


_READERS: Mapping[str, Callable[[str], Response]] = {
    "choice": _choice,
    "multiple_response": _several,
    "numeric": _number,
    "order": _order,
    "match": _match,
    "written": _written,
}
