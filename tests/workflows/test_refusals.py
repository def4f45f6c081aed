"""A refusal is data: what it says, what it lists, and what a terminal makes of it."""

import click
import pytest
from hypothesis import given
from hypothesis import strategies as st

from generator.command_line.terminal import accepted
from generator.diagnostics import Place, Problem
from generator.workflows import Refused, refused_with
from generator.workflows.refusals import refusing

PLACE = Place("people.csv", 2, 1)
FOUND = Problem(PLACE, "error", "person-code", "no code", "write one")


class Said(Exception):
    """Something that is meant for a person."""


@refusing(Said)
def halved(number: int) -> int:
    """Return half of an even number."""
    if number % 2:
        raise Said(f"{number} is odd")
    return number // 2


@given(st.integers())
def test_a_workflow_gives_its_result_or_the_one_sentence(number: int) -> None:
    expected = Refused(f"{number} is odd") if number % 2 else number // 2
    assert halved(number) == expected


def test_what_is_not_meant_for_a_person_is_not_hidden() -> None:
    with pytest.raises(TypeError):
        halved("two")  # type: ignore[arg-type]
    assert halved.__name__ == "halved"


def test_problems_are_counted_and_kept() -> None:
    refused = refused_with([FOUND, FOUND])
    assert refused == Refused("2 errors; nothing was written", (FOUND, FOUND))
    assert refused_with(iter([FOUND]), "nothing was marked").sentence == (
        "1 error; nothing was marked"
    )


def test_a_result_goes_on_whatever_it_is() -> None:
    for result in (0, "", (), None):
        assert accepted(result) is result


def test_a_terminal_shows_the_sentence_or_the_misuse() -> None:
    with pytest.raises(click.ClickException) as said:
        accepted(Refused("no such issue"))
    assert (said.value.message, said.value.exit_code) == ("no such issue", 1)
    with pytest.raises(click.UsageError) as misused:
        accepted(Refused("no such paper", misuse=True))
    assert (misused.value.message, misused.value.exit_code) == ("no such paper", 2)


def test_a_terminal_shows_every_problem_with_its_line(capsys: pytest.CaptureFixture[str]) -> None:
    with pytest.raises(SystemExit) as stopped:
        accepted(refused_with([FOUND]), lambda path, line: f"line {line} of {path}")
    assert stopped.value.code == 1
    shown = capsys.readouterr()
    assert shown.out == ""
    assert "people.csv:2:1: error: no code [person-code]" in shown.err
    assert "line 2 of people.csv" in shown.err
    assert shown.err.endswith("1 error; nothing was written\n")


def test_problems_can_say_it_all(capsys: pytest.CaptureFixture[str]) -> None:
    with pytest.raises(SystemExit):
        accepted(Refused("", (FOUND,)))
    assert "nothing was written" not in capsys.readouterr().err
