"""Paper and key of one form belong together: the same numbers, and the answer on one side only.

The papers are read back from their PDF by an independent library, and the keys of the sums are
worked again from nothing but the numbers that stand on the paper.
"""

import re
from decimal import ROUND_CEILING, ROUND_FLOOR, ROUND_HALF_UP, Decimal
from fractions import Fraction
from pathlib import Path

import pytest

from generator.assembly import build_forms, form_as_plain
from generator.bank import load_bank
from generator.printing import answer_key, question_paper
from generator.quantities import unit_named
from tests.printing.pdf_reading import FONTS, squeezed, whole_text
from tests.questions.worked_apart import WORKED_APART

BANK = Path(__file__).parents[1] / "question_bank"
FORMS = [("specimen", "A"), ("numbers_only", "A"), ("numbers_only", "B")]
DIRECTIONS = {"half": ROUND_HALF_UP, "up": ROUND_CEILING, "down": ROUND_FLOOR}
LEAST = 12


@pytest.fixture(scope="module")
def bank():
    bank, _ = load_bank(BANK)
    return bank


@pytest.fixture(scope="module")
def papers(bank):
    """Form, text of the paper and text of the key, by blueprint and label."""
    made = {}
    for blueprint, label in FORMS:
        (form,) = build_forms(bank, bank.blueprints[blueprint], "read back", (label,))
        plain = form_as_plain(form)
        texts = [
            whole_text(document(plain, paper="a4", fonts=FONTS))
            for document in (question_paper, answer_key)
        ]
        made[blueprint, label] = (plain, *texts)
    return made


def section(text, number):
    """Cut out what stands under one question's number."""
    parts = re.split(rf"Question {number} ", text)
    return re.split(rf"Question {number + 1} ", parts[-1])[0]


def numeric(plain):
    return [e for e in plain["questions"] if e["question"]["kind"] == "numeric"]


@pytest.mark.parametrize("which", FORMS)
def test_the_values_drawn_stand_under_their_question_on_the_paper(papers, which):
    plain, paper, _ = papers[which]
    asked = numeric(plain)
    assert len(asked) >= (1 if which[0] == "specimen" else 12)
    for entry in asked:
        text = section(paper, entry["number"])
        for shown in entry["question"]["draw"].values():
            words = r"\s*".join(map(re.escape, shown.split()))
            assert re.search(rf"(?<![\d.:]){words}(?![\d:])", text), (shown, text)


def secrets(question):
    """Give every text of a key that a learner must not see on the paper."""
    key = question["key"]
    yield from key.get("working", ())
    for part in (*key.get("slips", ()), *key.get("options", ())):
        yield part["says"]
    for pair in key.get("pairs", ()):
        yield pair["reason"]
    says = key.get("says") or ""
    yield from says.values() if isinstance(says, dict) else [says]
    yield from (key.get(name, "") for name in ("band_text", "model", "rule"))
    yield from (point["text"] for point in key.get("points", ()))


@pytest.mark.parametrize("which", FORMS)
def test_the_paper_holds_no_text_of_the_key(papers, which):
    plain, paper, key = papers[which]
    on_paper, on_key = squeezed(paper), squeezed(key)
    looked_for = 0
    for entry in plain["questions"]:
        for secret in secrets(entry["question"]):
            text = squeezed(secret.replace("*", ""))
            if len(text) < LEAST:
                continue
            looked_for += text in on_key
            assert text not in on_paper, secret
    # the same texts are found on the key, so they would have been found on the paper
    assert looked_for > 20


@pytest.mark.parametrize("which", FORMS)
def test_the_key_shows_the_answer_of_every_sum(papers, which):
    plain, _, key = papers[which]
    for entry in numeric(plain):
        answer = entry["question"]["key"]
        shown = squeezed(f"{answer['shown']}{answer['unit_symbol']}")
        assert shown in squeezed(section(key, entry["number"])), entry


@pytest.mark.parametrize("which", FORMS)
def test_paper_and_key_carry_the_same_foot(papers, which):
    plain, paper, key = papers[which]
    for text in (paper, key):
        assert f"form {plain['form']}".lower() in text.lower()
        assert plain["seed"] in text


NUMBER = r"[-−]?\d+(?:\.\d+)?"


def words_of(unit):
    """Give the pattern of a value in a unit as it stands on paper without spaces."""
    if unit == "ratio":
        return rf"{NUMBER}(?::{NUMBER})+"
    symbols = {unit_named(unit).symbol, unit_named(unit).singular or unit_named(unit).symbol}
    return f"{NUMBER}(?:{'|'.join(re.escape(squeezed(symbol)) for symbol in sorted(symbols))})"


def pattern_of(template, given):
    """Give the pattern of a stem or a row, with a group for each placeholder in it."""
    seen = set()
    pattern = ""
    for piece in re.split(r"(\{\w+\})", squeezed(template.replace("*", ""))):
        name = piece.strip("{}") if piece.startswith("{") else ""
        if not name:
            pattern += re.escape(piece)
        elif name in seen:
            pattern += f"(?P={name})"
        else:
            pattern += f"(?P<{name}>{words_of(given[name].unit)})"
            seen.add(name)
    return pattern


def read_values(item, text):
    """Read the values of an item's placeholders off the paper, by the words around them."""
    page, found = squeezed(text), {}
    rows = item.sheet.rows if item.sheet else ()
    for template in (item.stem, *("".join(row) for row in rows)):
        match = re.search(pattern_of(template, item.given), page)
        assert match, (template, page)
        for name, value in match.groupdict().items():
            assert found.setdefault(name, value) == value
    return found


def number_of(text, unit):
    """Read '60µm', '4:1:1' or '2coats' as a number in its unit."""
    if unit == "ratio":
        return tuple(Fraction(part) for part in text.split(":"))
    digits = re.match(NUMBER, text)
    assert digits, text
    return Fraction(digits[0].replace("−", "-"))


def rounded(exact, answer):
    steps = exact / answer.round_to
    whole = (Decimal(steps.numerator) / Decimal(steps.denominator)).to_integral_value(
        DIRECTIONS[answer.rounding]
    )
    return Fraction(whole) * answer.round_to


@pytest.mark.parametrize("label", ["A", "B"])
def test_the_keys_follow_from_the_numbers_read_on_the_paper(bank, papers, label):
    plain, paper, key = papers["numbers_only", label]
    worked = 0
    for entry in numeric(plain):
        name = entry["question"]["id"]
        if name not in WORKED_APART:
            continue
        item = bank.items[name].record
        read = read_values(item, section(paper, entry["number"]))
        assert read.keys() == item.given.keys()
        numbers = {n: number_of(text, item.given[n].unit) for n, text in read.items()}
        expected = rounded(WORKED_APART[name](numbers), item.answer)
        assert Fraction(entry["question"]["key"]["shown"]) == expected, name
        printed = section(key, entry["number"])
        assert re.search(rf"(?<![\d.]){re.escape(entry['question']['key']['shown'])}\b", printed)
        worked += 1
    # the plan draws from all numeric items; those worked apart in the test are a part of them
    assert worked >= 3
