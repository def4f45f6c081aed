"""What marking gives: the share of the marks, what went wrong, and what is worth knowing."""

from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from fractions import Fraction
from typing import Any, Literal

Status = Literal["right", "part", "wrong", "blank", "illegible"]
About = Literal[
    "option", "missed", "pair", "step", "match", "slip", "unit", "figures", "point", "reading"
]


Code = Literal[
    "right_option",
    "wrong_option",
    "two_options",
    "missed_option",
    "pair_turned",
    "step_left_out",
    "step_twice",
    "wrong_row",
    "point_short",
    "point_not_marked",
    "slip",
    "unit_missing",
    "unit_converted",
    "unit_of_another_kind",
    "unit_mixed_up",
    "too_few_digits",
    "too_many_digits",
    "no_number",
    "unknown_unit",
]
_ABOUT: Mapping[Code, About] = {
    "right_option": "option",
    "wrong_option": "option",
    "two_options": "option",
    "missed_option": "missed",
    "pair_turned": "pair",
    "step_left_out": "step",
    "step_twice": "step",
    "wrong_row": "match",
    "point_short": "point",
    "point_not_marked": "point",
    "slip": "slip",
    "unit_missing": "unit",
    "unit_converted": "unit",
    "unit_of_another_kind": "unit",
    "unit_mixed_up": "unit",
    "too_few_digits": "figures",
    "too_many_digits": "figures",
    "no_number": "reading",
    "unknown_unit": "reading",
}


@dataclass(frozen=True, slots=True)
class Finding:
    """One thing to say about an answer.

    code     what was found, for whoever decides by it; no one reads that out of the text
    subject  the letters, number, unit or text that it speaks of
    text     the sentence for the learner
    """

    code: Code
    subject: str
    text: str

    @property
    def about(self) -> About:
        """Return what kind of thing it is about."""
        return _ABOUT[self.code]


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
        """Return whether somebody must look at the answer before the mark stands."""
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
    return {"about": finding.about, "place": finding.subject, "text": finding.text}
