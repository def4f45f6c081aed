"""Two candidates of one exam get the same rules, whether on paper or on a screen."""

from typing import Any

import pytest

from generator.printing.content.paper_rules import paper_rules
from generator.website.exam.exam_content import sitting_content
from generator.wording import gate_in_words, gate_rule, time_and_marks, ways
from generator.wording.exam_rules import DIFFERS, FORMER_CAUTIONS
from tests.printing.form_for_tests import CHOICE, form_of, issued_form

WHERE = ("paper", "screen")


def forms() -> list[dict[str, Any]]:
    """Return forms without a gate, with one and with several must-pass questions."""
    whole = issued_form()
    return [whole | {"gate": gate} for gate in ((), (1,), (1, 2, 3))]


@pytest.mark.parametrize("form", forms())
def test_paper_and_screen_differ_only_in_the_lines_that_are_named(form: dict[str, Any]) -> None:
    minutes = {"time": f"{form['minutes']} minutes"}
    named = {where: {text[where].format(**minutes) for text in DIFFERS.values()} for where in WHERE}
    on_paper, on_screen = set(paper_rules(form)), sitting_content(form)
    shown = {*on_screen["rules"], on_screen["gate"], *on_screen["ways"]} - {""}
    assert on_paper - shown == named["paper"]
    assert shown - on_paper == named["screen"]


@pytest.mark.parametrize(
    ("gate", "told"),
    [
        ((), ""),
        ((4,), "Question 4 must be right. Missing it means not passed, whatever the marks."),
        ((9, 4), "Questions 4 and 9 must be right. Missing one means not passed, whatever the m"),
    ],
)
def test_the_gate_is_named_with_what_missing_it_means(gate: tuple[int, ...], told: str) -> None:
    form = form_of(CHOICE, gate=gate)
    assert gate_in_words(form).startswith(told)
    assert bool(gate_rule(form)) == bool(gate)
    if gate:
        assert "Part of the marks is not enough." in gate_rule(form)


def test_one_question_and_one_mark_are_told_in_the_singular() -> None:
    (_, told) = time_and_marks(form_of(CHOICE, minutes=1, pass_marks=1, pass_percent=80), "paper")
    assert told.startswith("There is 1 question worth 1 mark together. You pass with 1 mark (80 %)")


def test_a_form_from_before_keeps_its_words_about_cautions() -> None:
    former = CHOICE | {"caution": "Wear gloves."}
    assert FORMER_CAUTIONS in ways(form_of(former), "paper")
    by_hand = CHOICE | {"caution": "Wear gloves.", "hands_on": True}
    assert any(rule.startswith("There is a caution") for rule in ways(form_of(by_hand), "screen"))
    assert not any("caution" in rule for rule in ways(form_of(CHOICE | {"caution": ""}), "paper"))
