"""Paper and key of one form belong together: the same numbers, and the answer on one side only.

The papers are read back from their PDF by an independent library, and the keys of the sums are
worked again from nothing but the numbers that stand on the paper.
"""

import re
from fractions import Fraction
from pathlib import Path

import pytest

from generator.assembly import build_forms, form_as_plain
from generator.bank import load_bank
from generator.printing import answer_key, question_paper
from tests.printing.pdf_reading import FONTS, squeezed, whole_text
from tests.questions.worked_apart import WORKED_APART
from tests.read_back.values import number_of, read_values, rounded

BANK = Path(__file__).parents[1] / "question_bank"
FORMS = [("specimen", "A"), ("numbers_only", "A"), ("numbers_only", "B")]
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
            # a line of the paper may end behind a stroke, as in g/L
            words = r"\s*".join(map(re.escape, shown.split())).replace("/", r"/\s*")
            assert re.search(rf"(?<![\d.:]){words}(?![\d:])", text), (shown, text)


def secrets(question):
    """Return every text of a key that a learner must not see on the paper."""
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


@pytest.mark.parametrize("label", ["A", "B"])
def test_the_keys_follow_from_the_numbers_read_on_the_paper(bank, papers, label):
    plain, paper, key = papers["numbers_only", label]
    worked = 0
    for entry in numeric(plain):
        name = entry["question"]["id"]
        if name not in WORKED_APART:
            continue
        item = bank.items[name].record
        rows = item.sheet.rows if item.sheet else ()
        units = {given: wanted.unit for given, wanted in item.given.items()}
        templates = (item.stem, *("".join(row) for row in rows))
        read = read_values(templates, units, section(paper, entry["number"]))
        numbers = {n: number_of(text, units[n]) for n, text in read.items()}
        exact = Fraction(WORKED_APART[name](numbers))
        expected = rounded(exact, item.answer.round_to, item.answer.rounding)
        assert Fraction(entry["question"]["key"]["shown"]) == expected, name
        printed = section(key, entry["number"])
        assert re.search(rf"(?<![\d.]){re.escape(entry['question']['key']['shown'])}\b", printed)
        worked += 1
    # only questions on a table are left out
    assert worked >= 15
