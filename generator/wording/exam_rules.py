"""The rules of an exam: the same on paper and on a screen, but for the lines named in DIFFERS."""

from collections.abc import Mapping
from typing import Literal

from generator.issued import IssuedForm, IssuedQuestion
from generator.wording.counting import counted, listed
from generator.wording.marks import marks_text, total_marks

Where = Literal["paper", "screen"]

# the only lines that paper and screen do not share
DIFFERS: Mapping[str, Mapping[Where, str]] = {
    "time": {
        "paper": "Time: {time}.",
        "screen": "You have {time}. When they are over you can still answer and hand in; the "
        "file says how long it took.",
    },
    "where to work": {
        "paper": "Work on this paper. If you have an answer sheet, copy your answers to the answer "
        "sheet. Only the sheet is marked then. Written answers stay on this paper.",
        "screen": "Each answer is kept on this device at once, so a reload or a flat battery loses "
        "nothing. At the end you save one file and hand it in.",
    },
}
CALCULATOR = "A calculator is allowed. Round only your last figure, the way the question says."
ANSWER_ALL = "Answer every question. A wrong answer takes no marks from another question."
CANCELS = (
    "Where more than one answer can be right, each wrong one you mark cancels a right one. No "
    "question goes below 0."
)
CAUTIONS = "There is a caution where you handle the thing itself. Read it before you touch it."
# forms issued before cautions moved to the feedback are printed again word for word
FORMER_CAUTIONS = "A caution stands with the question it belongs to. Heed it when you do the work."
RESULT = (
    "The result says what these answers show. It never says that a person is fit or allowed to do "
    "hazardous work."
)


def must_pass(form: IssuedForm) -> frozenset[int]:
    """Return the numbers of the questions that must be right, whatever the marks."""
    return frozenset(int(number) for number in form.get("gate", ()))


def gate_in_words(form: IssuedForm) -> str:
    """Return which questions must be right and what missing one means; empty without a gate."""
    numbers = [str(number) for number in sorted(must_pass(form))]
    if not numbers:
        return ""
    if len(numbers) == 1:
        return (
            f"Question {numbers[0]} must be right. Missing it means not passed, whatever the marks."
        )
    return (
        f"Questions {listed(numbers)} must be right. "
        "Missing one means not passed, whatever the marks."
    )


def time_and_marks(form: IssuedForm, where: Where) -> list[str]:
    """Return how long a form takes, what it is worth and when it is passed."""
    count = len(form["questions"])
    return [
        DIFFERS["time"][where].format(time=counted(int(form["minutes"]), "minute")),
        f"There {'is' if count == 1 else 'are'} {counted(count, 'question')} worth "
        f"{marks_text(total_marks(form))} together. You pass with "
        f"{marks_text(int(form['pass_marks']))} ({form['pass_percent']} %).",
    ]


def gate_rule(form: IssuedForm) -> str:
    """Return the rule for must-pass questions and how to know them; empty without a gate."""
    gate = gate_in_words(form)
    known = "They are" if len(must_pass(form)) > 1 else "It is"
    return f"{gate} Part of the marks is not enough. {known} marked MUST BE RIGHT." if gate else ""


def ways(form: IssuedForm, where: Where) -> list[str]:
    """Return how to answer, and what the result says and does not say."""
    questions = [entry["question"] for entry in form["questions"]]
    several = any(question["kind"] == "multiple_response" for question in questions)
    rules = (
        CALCULATOR,
        ANSWER_ALL,
        CANCELS if several else "",
        _caution_rule(questions),
        DIFFERS["where to work"][where],
        RESULT,
    )
    return [rule for rule in rules if rule]


def _caution_rule(questions: list[IssuedQuestion]) -> str:
    """Return what to do with the cautions beside questions; empty where no question has one."""
    cautioned = [question for question in questions if question.get("caution")]
    if any(question.get("hands_on") for question in cautioned):
        return CAUTIONS
    return FORMER_CAUTIONS if cautioned else ""
