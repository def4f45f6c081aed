"""Which numbers a key lets pass, beside the ones that follow from the paper."""

import re
from collections.abc import Iterator
from fractions import Fraction

from tests.printing.pdf_reading import squeezed
from tests.read_back.plain_bank import Record
from tests.read_back.values import NUMBER, number_of, rounded

BAND = re.compile(rf"({NUMBER}) to ({NUMBER})(.*)$")
# whole things: half a coat does not pass
COUNTED = {"coats", "passes", "fills", "layers", "grades"}
SIDES = {"maximum": ",nothingabove", "minimum": ",nothingbelow", "none": ""}

Ends = tuple[Fraction, Fraction]


def ends_of(answer: Record, exact: Fraction) -> Ends:
    """Return the least and the greatest number that pass.

    Within half a step of the unrounded answer, or within the item's own tolerance, and always the
    rounded answer. Past a stated limit nothing passes; nor on the wrong side of what is rounded
    up or down, unless the tolerance is wider than the step.
    """
    step, direction = Fraction(answer["round_to"]), answer.get("rounding", "half")
    reach = number_of(answer["tolerance"], "") if "tolerance" in answer else step / 2
    key = rounded(exact, step, direction)
    limit = answer.get("limit", "none")
    if limit != "none":
        return (key - reach, exact) if limit == "maximum" else (exact, key + reach)
    low, high = min(exact - reach, key), max(exact + reach, key)
    strict = reach < step
    return (exact if direction == "up" and strict else low), (
        exact if direction == "down" and strict else high
    )


def band_disagreements(
    answer: Record, exact: Fraction, accept: str, slack: Fraction
) -> Iterator[str]:
    """Say where the printed numbers that pass are not those that follow from the paper.

    exact   worked from the paper, not rounded
    accept  as the key prints it
    slack   how far the unrounded answer may be off, where a question states a rounded factor
    The printed ends have one place more than the answer, so each may lie a tenth of a step inside.
    """
    step = Fraction(answer["round_to"])
    if answer["unit"] in COUNTED:
        yield from only_disagreements(rounded(exact, step, answer.get("rounding", "half")), accept)
        return
    band = BAND.match(accept)
    if band is None:
        yield f"'{accept}' does not say from where to where"
        return
    told = re.search(r",nothing\w+$", squeezed(band[3]))
    if (told[0] if told else "") != SIDES[answer.get("limit", "none")]:
        yield f"'{accept}' does not tell on which side nothing passes"
    low, high = (number_of(end, "") for end in band.groups()[:2])
    least, greatest = ends_of(answer, exact)
    inside, outside = step / 10 + slack, slack
    if not -outside <= low - least < inside or not -outside <= greatest - high < inside:
        yield f"{float(least):g} to {float(greatest):g} may pass, the key says '{accept}'"


def only_disagreements(expected: Fraction, accept: str) -> Iterator[str]:
    """Say where a key lets more or another number pass than the one that is right."""
    only = re.match(rf"({NUMBER})\b.*\bonly$", accept)
    if only is None or number_of(only[1], "") != expected:
        yield f"only {float(expected):g} may pass, the key says '{accept}'"
