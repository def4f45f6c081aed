"""One paper that somebody answered: its questions, answers and marks, whoever looks at it."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from fractions import Fraction

from generator.issued import IssuedQuestion, objective_name
from generator.marking import Response
from generator.marking.answers import Status, Verdict
from generator.records.sittings.stored_marks import StoredFinding, StoredFindings
from generator.records.store import unpacked


class PaperFindings:
    """What is said about the answers of one paper; unpacked when somebody first asks for it."""

    __slots__ = ("_found", "_packed")

    def __init__(self, packed: bytes) -> None:
        self._packed = packed
        self._found: Mapping[str, StoredFindings] | None = None

    def about(self, number: int) -> StoredFindings:
        """Return what is said about the answer to one question."""
        if self._found is None:
            self._found = unpacked(self._packed)
        return self._found.get(str(number), {})


@dataclass(frozen=True, slots=True)
class PrintedQuestion:
    """A question where a form prints it, one object however many people answered the form.

    marks     what the question is worth
    left_out  taken out of the marks by a correction
    version   of the item
    question  with the key as corrected; one object however many forms print it uncorrected
    """

    number: int
    marks: int
    must_pass: bool
    left_out: bool
    item: str
    version: str
    question: IssuedQuestion


@dataclass(frozen=True, slots=True)
class AnsweredQuestion:
    """One question of a paper with its answer and mark.

    response  None where none was entered
    share     exact share of the question's marks
    findings  of the whole paper
    """

    printed: PrintedQuestion
    response: Response | None
    share: Fraction
    status: Status
    findings: PaperFindings

    @property
    def number(self) -> int:
        """Return the number of the question on its form."""
        return self.printed.number

    @property
    def marks(self) -> int:
        """Return what the question is worth."""
        return self.printed.marks

    @property
    def must_pass(self) -> bool:
        """Return whether it must be right, whatever the marks."""
        return self.printed.must_pass

    @property
    def left_out(self) -> bool:
        """Return whether a correction took it out of the marks."""
        return self.printed.left_out

    @property
    def question(self) -> IssuedQuestion:
        """Return the question with the key as corrected."""
        return self.printed.question

    @property
    def went_wrong(self) -> Sequence[StoredFinding]:
        """Return what cost marks."""
        return self.findings.about(self.number).get("went_wrong", ())

    @property
    def notes(self) -> Sequence[StoredFinding]:
        """Return what is worth saying and cost nothing."""
        return self.findings.about(self.number).get("notes", ())

    @property
    def waits(self) -> bool:
        """Return whether a person must still look before the mark counts."""
        return self.status == "illegible"

    @property
    def lost(self) -> bool:
        """Return whether the answer is known not to be fully right."""
        return not self.waits and self.share < 1

    @property
    def objective(self) -> str:
        """Return 'module/objective' that the question asks."""
        return objective_name(self.question)

    @property
    def hazard(self) -> str:
        """Return the hazard that makes the question critical, in words; older issues name none."""
        critical = self.question.get("critical")
        return critical["title"] if critical else ""

    @property
    def module(self) -> str:
        """Return the module that the question belongs to."""
        return self.objective.partition("/")[0]


@dataclass(frozen=True, slots=True)
class AnsweredPaper:
    """One paper of one person, or of somebody unnamed.

    person   code, or empty
    sat      day of the sitting where it was given, else when the answers were entered, as text
    points   marks gained, exact
    most     marks of the questions that count
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
    verdict: Verdict
    points: Fraction
    most: int
    pass_marks: int
    pass_percent: int
    answers: tuple[AnsweredQuestion, ...]

    @property
    def counted(self) -> tuple[AnsweredQuestion, ...]:
        """Return the answers that count."""
        return tuple(answer for answer in self.answers if not answer.printed.left_out)

    @property
    def gate(self) -> tuple[AnsweredQuestion, ...]:
        """Return the must-pass questions that count."""
        return tuple(answer for answer in self.counted if answer.must_pass)

    @property
    def gate_missed(self) -> tuple[AnsweredQuestion, ...]:
        """Return the must-pass questions that are not fully right."""
        return tuple(answer for answer in self.gate if answer.lost)
