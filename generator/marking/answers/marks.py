"""What marking gives: the share of the marks, what went wrong, and what is worth knowing."""

from collections.abc import Iterable
from dataclasses import dataclass
from fractions import Fraction
from typing import Any, Literal

Status = Literal["right", "part", "wrong", "blank", "illegible"]
About = Literal[
    "option", "missed", "pair", "step", "match", "slip", "unit", "figures", "point", "reading"
]


@dataclass(frozen=True, slots=True)
class Finding:
    """One thing to say about an answer.

    about  what kind of thing it is about
    place  the letters, number, unit or text that it speaks of
    text   the sentence for the learner
    """

    about: About
    place: str
    text: str


@dataclass(frozen=True, slots=True)
class Mark:
    """An answer marked.

    share       exact share of the question's marks, 0 to 1
    status      blank and illegible are kept apart from wrong; all three have the share 0
    went_wrong  what cost marks, with its reason
    notes       what cost nothing: reasons of right options, the unit, the figures
    """

    share: Fraction
    status: Status
    went_wrong: tuple[Finding, ...] = ()
    notes: tuple[Finding, ...] = ()

    @property
    def needs_a_person(self) -> bool:
        """Say whether somebody must look at the answer before the mark stands."""
        return self.status == "illegible"


def marked(
    share: Fraction, went_wrong: Iterable[Finding] = (), notes: Iterable[Finding] = ()
) -> Mark:
    """Return the mark for an answer that could be read."""
    status: Status = "right" if share == 1 else "part" if share > 0 else "wrong"
    return Mark(share, status, tuple(went_wrong), tuple(notes))


def not_marked(status: Literal["blank", "illegible"], *notes: Finding) -> Mark:
    """Return the mark for no answer, or for one that nobody can read."""
    return Mark(Fraction(0), status, (), notes)


def mark_as_plain(mark: Mark) -> dict[str, Any]:
    """Return the JSON form of a mark; the share is a fraction as text."""
    return {
        "share": str(mark.share),
        "status": mark.status,
        "went_wrong": [_plain(finding) for finding in mark.went_wrong],
        "notes": [_plain(finding) for finding in mark.notes],
    }


def _plain(finding: Finding) -> dict[str, str]:
    return {"about": finding.about, "place": finding.place, "text": finding.text}
