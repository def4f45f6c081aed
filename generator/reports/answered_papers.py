"""Papers that were sat: the answers, the marks that stand and the questions they belong to."""

from collections.abc import Mapping
from dataclasses import dataclass
from fractions import Fraction
from typing import Any

from generator.records.sittings import KeptMark

Plain = Mapping[str, Any]


@dataclass(frozen=True, slots=True)
class Answer:
    """One question of a paper with its answer and mark.

    marks     what the question is worth
    question  its plain JSON, with the key as corrected
    response  plain JSON of the answer; empty where none was entered
    left_out  taken out of the marks by a correction
    """

    number: int
    marks: int
    must_pass: bool
    question: Plain
    response: Plain
    mark: KeptMark
    left_out: bool = False

    @property
    def waits(self) -> bool:
        """Say whether a person must still look before the mark stands."""
        return self.mark.status == "illegible"

    @property
    def lost(self) -> bool:
        """Say whether the answer is known not to be fully right."""
        return not self.waits and self.mark.share < 1

    @property
    def objective(self) -> str:
        """Return 'module/objective' that the question asks."""
        name = str(self.question["objective"])
        return name if "/" in name else f"{self.question['module']}/{name}"

    @property
    def hazard(self) -> str:
        """Return the hazard that makes the question critical, in words; older issues name none."""
        return str((self.question.get("critical") or {}).get("title", ""))

    @property
    def module(self) -> str:
        """Return the module that the question belongs to."""
        return self.objective.partition("/")[0]


@dataclass(frozen=True, slots=True)
class SatPaper:
    """One paper of one person, or of somebody unnamed.

    person   code, or empty
    sat      when the answers were entered, as text
    verdict  a key of `records.marked.VERDICT_WORDS`
    answers  every question, in order, those left out among them
    """

    issue: int
    blueprint: str
    title: str
    label: str
    form_id: str
    edition: str
    person: str
    sat: str
    verdict: str
    points: Fraction
    most: int
    pass_marks: int
    pass_percent: int
    answers: tuple[Answer, ...]

    @property
    def counted(self) -> tuple[Answer, ...]:
        """Return the answers that count."""
        return tuple(answer for answer in self.answers if not answer.left_out)

    @property
    def gate(self) -> tuple[Answer, ...]:
        """Return the must-pass questions that count."""
        return tuple(answer for answer in self.counted if answer.must_pass)

    @property
    def gate_missed(self) -> tuple[Answer, ...]:
        """Return the must-pass questions that are not fully right."""
        return tuple(answer for answer in self.gate if answer.lost)


def pass_marks(form: Plain, most: int) -> int:
    """Return the marks from which a form is passed; fewer where questions were left out.

    most  marks of the questions that count
    """
    if most == form["marks"]:
        return int(form["pass_marks"])
    return -(-most * int(form["pass_percent"]) // 100)
