"""Read the numbers of a question off its paper, by the words around them."""

import re
from collections.abc import Iterable, Mapping
from decimal import ROUND_CEILING, ROUND_FLOOR, ROUND_HALF_UP, Decimal
from fractions import Fraction

from generator.quantities import unit_named
from tests.printing.pdf_reading import squeezed

NUMBER = r"[-−]?\d+(?:\.\d+)?"
ARTICLE = "\u24dd"
DIRECTIONS = {"half": ROUND_HALF_UP, "up": ROUND_CEILING, "down": ROUND_FLOOR}


class NotOnPaper(ValueError):
    """The words of a question, or a number in them, do not stand on its paper."""


def words_of(unit: str) -> str:
    """Return the pattern of a value in a unit as it stands on paper without spaces."""
    if unit == "ratio":
        return rf"{NUMBER}(?::{NUMBER})+"
    symbols = {unit_named(unit).symbol, unit_named(unit).singular or unit_named(unit).symbol}
    return f"{NUMBER}(?:{'|'.join(re.escape(squeezed(symbol)) for symbol in sorted(symbols))})"


def pattern_of(template: str, units: Mapping[str, str]) -> str:
    """Return the pattern of a stem or a row, with a group for each placeholder in it."""
    seen = set()
    pattern = ""
    # the article in front of a number follows the number: a 5 in disc, an 8 in disc
    told = re.sub(r"\b([Aa]) (?=\{)", rf"\1{ARTICLE}", template.replace("*", ""))
    for piece in re.split(r"(\{\w+\})", squeezed(told)):
        name = piece.strip("{}") if piece.startswith("{") else ""
        if not name:
            pattern += re.escape(piece).replace(ARTICLE, "n?")
        elif name in seen:
            pattern += f"(?P={name})"
        else:
            pattern += f"(?P<{name}>{words_of(units[name])})"
            seen.add(name)
    return pattern


def read_values(templates: Iterable[str], units: Mapping[str, str], text: str) -> dict[str, str]:
    """Read the values of the placeholders of some templates, each as text like '60µm'.

    Raises NotOnPaper where the words of a template or one of its values are missing.
    """
    page, found = squeezed(text), {}
    for template in templates:
        match = re.search(pattern_of(template, units), page)
        if match is None:
            raise NotOnPaper(f"'{template}' does not stand on the paper")
        for name, value in match.groupdict().items():
            if found.setdefault(name, value) != value:
                raise NotOnPaper(f"{name} stands on the paper as {found[name]} and as {value}")
    if found.keys() != units.keys():
        raise NotOnPaper(f"only {sorted(found)} stand on the paper")
    return found


def number_of(text: str, unit: str) -> Fraction | tuple[Fraction, ...]:
    """Read '60µm', '4:1:1' or '2coats' as a number in its unit."""
    if unit == "ratio":
        return tuple(Fraction(part) for part in text.split(":"))
    digits = re.match(NUMBER, text)
    if digits is None:
        raise NotOnPaper(f"'{text}' is no number")
    return Fraction(digits[0].replace("−", "-"))


def rounded(exact: Fraction, step: Fraction, direction: str) -> Fraction:
    """Round to a step; half goes away from zero."""
    steps = exact / step
    whole = (Decimal(steps.numerator) / Decimal(steps.denominator)).to_integral_value(
        DIRECTIONS[direction]
    )
    return Fraction(whole) * step
