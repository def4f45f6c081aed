"""The page gives the same share of the marks as the marker of papers, answer by answer."""

from collections import Counter
from fractions import Fraction
from typing import Any

import pytest

from generator.marking import mark_response, response_as_plain, response_from_plain
from generator.website.questions.marking_data import marking_data
from tests.browser.conftest import Visit
from tests.browser.test_answering import QUESTIONS
from tests.marking.vectors import Vector, marking_vectors

BATCH = 2000
LEAST = 2000
SHARES = "cases => cases.map(([data, answer]) => Guidecoat.share(data, answer).join('/'))"

Case = tuple[dict[str, Any], dict[str, Any]]


@pytest.fixture(scope="module")
def vectors() -> tuple[Vector, ...]:
    """Return the shared vectors once."""
    return marking_vectors()


def page_shares(visit: Visit, cases: list[Case]) -> list[Fraction]:
    """Let the page's own script mark answers."""
    page = visit.open(QUESTIONS)
    found: list[Fraction] = []
    for start in range(0, len(cases), BATCH):
        texts = page.evaluate(SHARES, cases[start : start + BATCH])
        found.extend(Fraction(text) for text in texts)
    return found


def case(question: dict[str, Any], answer: dict[str, Any]) -> Case:
    """Return what the page knows of a question, with an answer to it."""
    (data,) = marking_data((question,))["variants"]
    return data, answer


def test_every_shared_vector_has_the_same_share_in_the_page(
    phone: Visit, vectors: tuple[Vector, ...]
) -> None:
    cases = [case(vector.question, response_as_plain(vector.response)) for vector in vectors]
    differ = [
        (vector.question["id"], answer, str(vector.expected), str(share))
        for vector, (_, answer), share in zip(
            vectors, cases, page_shares(phone, cases), strict=True
        )
        if share != vector.expected
    ]
    assert differ == []


def test_the_vectors_are_many_of_every_kind_and_not_all_right_or_wrong(
    vectors: tuple[Vector, ...],
) -> None:
    kinds = Counter(vector.question["kind"] for vector in vectors)
    assert len(vectors) >= LEAST
    assert set(kinds) == {"numeric", "choice", "multiple_response", "order", "match", "written"}
    for kind in kinds:
        shares = {vector.expected for vector in vectors if vector.question["kind"] == kind}
        assert {Fraction(0), Fraction(1)} <= shares, kind


# closure of the pairs, worked by hand: P before Q, R, S, T; Q and R before S and T; S before T
PAIRS = [("P", "Q"), ("P", "R"), ("Q", "S"), ("R", "S"), ("S", "T")]


@pytest.mark.parametrize(
    ("letters", "share"),
    [
        ("PQRST", "1"),
        ("PRQST", "1"),
        ("PQSRT", "8/9"),
        ("TPQRS", "5/9"),
        ("TSRQP", "0"),
        ("PQRS", "5/9"),
        ("PQRSTT", "5/9"),
    ],
)
def test_an_order_earns_the_share_of_precedences_it_keeps(
    phone: Visit, letters: str, share: str
) -> None:
    pairs = [{"first": a, "then": b, "danger": False} for a, b in PAIRS]
    data = {"kind": "order", "steps": "PQRST", "pairs": pairs}
    answer = {"form": "ordered", "letters": list(letters)}
    assert page_shares(phone, [(data, answer)]) == [Fraction(share)]


def test_a_dangerous_pair_turned_round_takes_everything(phone: Visit) -> None:
    pairs = [{"first": a, "then": b, "danger": (a, b) == ("R", "S")} for a, b in PAIRS]
    data = {"kind": "order", "steps": "PQRST", "pairs": pairs}
    answer = {"form": "ordered", "letters": list("PQSRT")}
    assert page_shares(phone, [(data, answer)]) == [Fraction(0)]


def test_several_choices_earn_right_less_wrong_and_never_less_than_nothing(phone: Visit) -> None:
    data = {"kind": "multiple_response", "right": ["A", "C"]}
    expected = {"AC": "1", "A": "1/2", "ACD": "1/2", "AB": "0", "ABCDE": "0", "BD": "0"}
    cases = [(data, {"form": "chosen", "letters": list(letters)}) for letters in expected]
    assert page_shares(phone, cases) == [Fraction(share) for share in expected.values()]


def test_units_that_convert_are_marked_as_on_paper(phone: Visit) -> None:
    """Sizes of units: NIST SP 811, Appendix B."""
    asked = {
        ("um", "µm", "127.5", "128.5"): ("0.128 mm", "128 microns", "5.04 mil", "128 g", "128 mm"),
        ("degC", "°C", "19.5", "20.5"): ("68 °F", "68 f", "293.15 K", "20"),
        ("K", "K", "9.5", "10.5"): ("18 °F", "10 °C", "18 °F difference", "10"),
        ("us_gal", "US gal", "1", "2"): ("4 L", "1.5 gallons", "1 imp gal", "192 US fl oz"),
    }
    cases, expected = [], []
    for (unit, symbol, low, high), texts in asked.items():
        for text in texts:
            key = {"unit": unit, "unit_symbol": symbol, "low": low, "high": high, "slips": []}
            key |= {"shown": low, "step": "1", "says": ""}
            question = {"id": "bench/unit", "kind": "numeric", "stem": "?", "key": key}
            answer = {"form": "typed", "text": text}
            cases.append(case(question, answer))
            expected.append(mark_response(question, response_from_plain(answer)).share)
    assert {Fraction(0), Fraction(1)} == set(expected)
    assert page_shares(phone, cases) == expected
