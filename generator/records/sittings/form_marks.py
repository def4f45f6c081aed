"""A form as it was marked, in the shape in which its marks are kept."""

from typing import Any

from generator.marking import FormMark, mark_as_plain
from generator.marking.answers import LEFT_OUT, QuestionMark
from generator.records.sittings.stored_marks import KeptMark, Marked


def as_marked(mark: FormMark) -> Marked:
    """Return the marking of a form as the records keep it."""
    return Marked(mark.verdict, mark.points, mark.most, tuple(map(_kept, mark.questions)))


def _kept(entry: QuestionMark) -> KeptMark:
    plain = mark_as_plain(entry.mark)
    findings: dict[str, Any] = {
        name: plain[name] for name in ("went_wrong", "notes") if plain[name]
    }
    if entry.left_out:
        findings[LEFT_OUT] = True
    return KeptMark(entry.number, entry.mark.share, entry.mark.status, findings)
