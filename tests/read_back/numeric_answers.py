"""Sums read back: the numbers off the paper, worked apart, beside what the key states."""

import re
from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from fractions import Fraction

from tests.printing.pdf_reading import squeezed
from tests.questions.worked_apart import WORKED_APART
from tests.read_back.pages import Part
from tests.read_back.plain_bank import PlainBank, Record, inside, templates
from tests.read_back.values import NUMBER, NotOnPaper, number_of, read_values, rounded

STATED = re.compile(rf" Key ({NUMBER})(.*?) Accept (.*?) Working ")
BAND = re.compile(rf"({NUMBER}) to ({NUMBER})")
SPACE = re.compile(r"Working Answer ?(.*)$")


@dataclass(frozen=True, slots=True)
class Stated:
    """What a key states for a sum: number, unit and the numbers that pass, as printed."""

    shown: str
    unit: str
    accept: str

    @property
    def short(self) -> str:
        """Give answer and numbers that pass as the list at the top of the key has them."""
        return f"{self.shown} {self.unit} {self.accept}"


def stated_number(key: Part) -> Stated | None:
    """Read what a key states for a sum."""
    found = STATED.search(key.body)
    return Stated(found[1], found[2].strip(), found[3]) if found else None


def values_on_paper(bank: PlainBank, name: str, paper: Part) -> Mapping[str, str]:
    """Read the drawn values of a sum off its paper; raises NotOnPaper."""
    item = bank.items[name]
    return read_values(templates(item), _units(item), paper.body)


def worked_number(bank: PlainBank, name: str, paper: Part) -> Fraction:
    """Answer a sum from its paper alone, rounded as the item says; raises NotOnPaper."""
    if name.startswith("tables/"):
        return _looked_up(bank.tables[name.split("/")[1]], paper)
    item, units = bank.items[name], _units(bank.items[name])
    read = values_on_paper(bank, name, paper)
    numbers = {n: number_of(text, units[n]) for n, text in read.items()}
    try:
        exact = WORKED_APART[name](numbers)
    except (ArithmeticError, LookupError, ValueError) as error:
        raise NotOnPaper(f"{read} cannot be worked: {error!r}") from error
    answer = item["answer"]
    return rounded(Fraction(exact), Fraction(answer["round_to"]), answer.get("rounding", "half"))


def number_disagreements(expected: Fraction, stated: Stated, paper: Part) -> Iterator[str]:
    """Say where the number, the unit or the numbers that pass do not agree."""
    if Fraction(stated.shown.replace("−", "-")) != expected:
        yield f"worked from the paper {float(expected):g}, the key says {stated.shown}"
    space = SPACE.search(paper.body)
    if space is None or squeezed(space[1]) != squeezed(stated.unit):
        yield f"the paper leaves room for another unit than '{stated.unit}'"
    if band := BAND.search(stated.accept):
        low, high = (Fraction(end.replace("−", "-")) for end in band.groups())
        if not low <= expected <= high:
            yield f"{float(expected):g} would not pass: {stated.accept}"


def _units(item: Record) -> dict[str, str]:
    return {name: given["unit"] for name, given in item["given"].items()}


def _looked_up(table: Record, paper: Part) -> Fraction:
    """Read along the row of the printed table; a table of the bank's own rows is read there."""
    names = [column["name"] for column in table["columns"]]
    question = paper.tight.casefold().split("whatisthe")[1].split("?")[0]
    (asked,) = [
        look
        for look in table["look_up"]
        if question.startswith(inside(look["to"])) and f"for{inside(look['from'])}" in question
    ]
    given = question.rsplit(f"for{inside(asked['from'])}", 1)[1]
    if "rows" in table:
        start, end = names.index(asked["from"]), names.index(asked["to"])
        (cell,) = [row[end] for row in table["rows"] if inside(row[start]) == given]
        return Fraction(cell)
    printed = paper.body.rsplit("?", 1)[1]
    (cell,) = re.findall(rf"(?<!\S){re.escape(given)} ({NUMBER})(?!\S)", printed)
    return Fraction(cell)
