"""A form as it was marked, in the shape in which its marks are kept."""

from collections.abc import Iterable

from generator.marking import FormMark
from generator.marking.answers import Finding, QuestionMark
from generator.records.sittings.stored_marks import (
    KeptMark,
    Marked,
    StoredFinding,
    StoredFindings,
)


def as_marked(mark: FormMark) -> Marked:
    """Return the marking of a form as the records keep it."""
    return Marked(mark.verdict, mark.points, mark.most, tuple(map(_kept, mark.questions)))


def _kept(entry: QuestionMark) -> KeptMark:
    findings: StoredFindings = {}
    if entry.mark.went_wrong:
        findings["went_wrong"] = _stored(entry.mark.went_wrong)
    if entry.mark.notes:
        findings["notes"] = _stored(entry.mark.notes)
    if entry.left_out:
        findings["left_out"] = True
    return KeptMark(entry.number, entry.mark.share, entry.mark.status, findings)


def _stored(found: Iterable[Finding]) -> list[StoredFinding]:
    return [
        {"about": each.about, "code": each.code, "place": each.subject, "text": each.text}
        for each in found
    ]
