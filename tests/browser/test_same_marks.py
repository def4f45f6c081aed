"""The built page gives the same share of the marks as the marker of papers, answer by answer.

The rules are tried one by one in tests/scripts; here the shipped script runs in a real browser.
"""

import json
from fractions import Fraction
from typing import Any

import pytest

from generator.marking import response_as_plain
from generator.website.questions.marking_data import marking_data
from tests.browser.conftest import Visit
from tests.browser.test_answering import QUESTIONS
from tests.marking.vectors import Vector, marking_vectors

BATCH = 2000
# as one text: handed over part by part, the cases take longer than their marking
SHARES = """text => JSON.parse(text).map(
  ([data, answer]) => Guidecoat.share(data, answer).join('/'))"""

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
        texts = page.evaluate(SHARES, json.dumps(cases[start : start + BATCH]))
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
