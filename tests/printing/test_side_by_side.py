"""Papers set side by side are those that are set one by one, in the order asked for."""

from functools import partial
from pathlib import Path
from threading import Event, get_ident
from time import sleep

import pytest

from generator.printing import PrintingRefused, answer_key, question_paper
from generator.printing.side_by_side import MOST_AT_ONCE, side_by_side
from tests.printing.form_for_tests import issued_form

FONTS = Path(__file__).parents[2] / "site_theme" / "fonts_print"


def jobs():
    forms = [issued_form() | {"form": f"C{number}"} for number in range(4)]
    return [
        partial(make, form, paper="a4", fonts=FONTS)
        for form in forms
        for make in (question_paper, answer_key)
    ]


def test_the_bytes_and_their_order_are_those_of_one_by_one() -> None:
    alone = [job() for job in jobs()]
    assert list(side_by_side(jobs())) == alone
    assert len(set(alone)) == len(alone)


def test_what_a_job_raises_ends_it_and_the_rest_is_left() -> None:
    begun = []

    def refused() -> int:
        raise PrintingRefused("no")

    def noted(number: int) -> int:
        begun.append(number)
        if number:
            sleep(0.02)
        return number

    given = side_by_side([partial(noted, 0), refused, *(partial(noted, n) for n in range(1, 200))])
    assert next(given) == 0
    with pytest.raises(PrintingRefused, match="no"):
        next(given)
    assert len(begun) < 150


def test_two_jobs_run_at_the_same_time(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr("os.cpu_count", lambda: 2)
    first, second = Event(), Event()

    def one() -> int:
        first.set()
        assert second.wait(20)
        return get_ident()

    def other() -> int:
        second.set()
        assert first.wait(20)
        return get_ident()

    assert len(set(side_by_side([one, other]))) == 2


def test_there_is_a_bound_to_how_many_run_at_once(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr("os.cpu_count", lambda: 64)
    assert len(set(side_by_side([get_ident] * 100))) <= MOST_AT_ONCE
