"""Sums read back: the numbers off the paper, worked apart, beside what the key states."""

import re
from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from fractions import Fraction

from tests.printing.pdf_reading import squeezed
from tests.questions.worked_apart import WITH_A_ROUNDED_FACTOR, WORKED_APART
from tests.read_back.accepted import band_disagreements, only_disagreements
from tests.read_back.pages import Part
from tests.read_back.plain_bank import PlainBank, Record, inside, templates
from tests.read_back.values import NUMBER, NotOnPaper, number_of, read_values, rounded

STATED = re.compile(rf" Key ({NUMBER})(.*?) Accept (.*?) Working ")
# a float where a root, a logarithm or the circle comes in
FLOAT = Fraction(1, 10**9)
SPACE = re.compile(r"Working Answer ?(.*)$")


@dataclass(frozen=True, slots=True)
class Stated:
    """What a key states for a sum: number, unit and the numbers that pass, as printed."""

    shown: str
    unit: str
    accept: str

    @property
    def short(self) -> str:
        """Return answer and numbers that pass as the list at the top of the key has them."""
        return f"{self.shown} {self.unit} {self.accept}"


def stated_number(key: Part) -> Stated | None:
    """Read what a key states for a sum."""
    found = STATED.search(key.body)
    return Stated(found[1], found[2].strip(), found[3]) if found else None


def values_on_paper(bank: PlainBank, name: str, paper: Part) -> Mapping[str, str]:
    """Read the drawn values of a sum off its paper; raises NotOnPaper."""
    item = bank.items[name]
    return read_values(templates(item), _units(item), paper.body)


def number_disagreements(bank: PlainBank, name: str, stated: Stated, paper: Part) -> Iterator[str]:
    """Answer a sum from its paper alone; say where number, unit or what passes do not agree.

    Raises NotOnPaper.
    """
    if name.startswith("tables/"):
        expected = _looked_up(bank.tables[name.split("/")[1]], paper)
        yield from only_disagreements(expected, stated.accept)
    else:
        answer = bank.items[name]["answer"]
        step = Fraction(answer["round_to"])
        exact = _worked(bank, name, paper)
        expected = rounded(exact, step, answer.get("rounding", "half"))
        slack = step if name in WITH_A_ROUNDED_FACTOR else abs(exact) * FLOAT
        yield from band_disagreements(answer, exact, stated.accept, slack)
    if Fraction(stated.shown.replace("−", "-")) != expected:
        yield f"worked from the paper {float(expected):g}, the key says {stated.shown}"
    space = SPACE.search(paper.body)
    if space is None or squeezed(space[1]) != squeezed(stated.unit):
        yield f"the paper leaves room for another unit than '{stated.unit}'"


def _worked(bank: PlainBank, name: str, paper: Part) -> Fraction:
    """Work a sum from the numbers on its paper, not rounded."""
    units = _units(bank.items[name])
    read = values_on_paper(bank, name, paper)
    numbers = {n: number_of(text, units[n]) for n, text in read.items()}
    try:
        return Fraction(WORKED_APART[name](numbers))
    except (ArithmeticError, LookupError, ValueError) as error:
        raise NotOnPaper(f"{read} cannot be worked: {error!r}") from error


def _units(item: Record) -> dict[str, str]:
    return {name: given["unit"] for name, given in item["given"].items()}


def _looked_up(table: Record, paper: Part) -> Fraction:
    """Read along the row of the printed table; a table of the bank's own rows is read there."""
    names = [column["name"] for column in table["columns"]]
    question = paper.tight.casefold().split("whatisthe")[1].split("?")[0]
    (asked,) = [
        look
        for look in table["look_up"]
        if question.startswith(inside(look["to"]))
        and (question.endswith("'") or f"for{inside(look['from'])}" in question)
    ]
    # a word stands in quotes, a figure behind the name of its column
    quoted = question.endswith("'")
    named = question.rsplit("for'" if quoted else f"for{inside(asked['from'])}", 1)[1]
    given = named.removesuffix("'") if quoted else named
    start, end = names.index(asked["from"]), names.index(asked["to"])
    rows = table.get("rows") or _printed_rows(paper.body, len(names))
    (cell,) = [row[end] for row in rows if inside(row[start]) == given]
    return Fraction(cell)


def _printed_rows(body: str, columns: int) -> list[list[str]]:
    """Cut the numbers that stand between the heads of a table and the room for the working."""
    above = body.split(" Working Answer")[0]
    cells = re.search(rf"(?:{NUMBER} )*{NUMBER}$", above)[0].split()
    return [cells[place : place + columns] for place in range(0, len(cells), columns)]
