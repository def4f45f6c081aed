"""Who sat in a class, and how the papers came out."""

from collections import Counter
from collections.abc import Sequence
from fractions import Fraction
from typing import Any

from generator.reports.answered_issue import SatIssue
from generator.reports.answered_papers import SatPaper
from generator.reports.intervals import FEWEST, marks_text, percent
from generator.reports.result_sentences import too_few_marks

Plain = dict[str, Any]
SHORT_VERDICTS = {
    "passed": "passed",
    "must_pass_missed": "must-pass missed",
    "not_passed": "not passed yet",
    "unfinished": "not finished",
}


def summary_sentences(papers: Sequence[SatPaper]) -> list[str]:
    """Say how many passed, how many fell short of what, and how the marks lie.

    The class is all there is to count, so its share has no interval.
    """
    if not papers:
        return ["Nobody has answered yet."]
    people = len(papers)
    verdicts = Counter(paper.verdict for paper in papers)
    said = f"{verdicts['passed']} of {people} passed"
    if people >= FEWEST:
        said += f", {percent(Fraction(verdicts['passed'], people))}"
    both = sum(paper.verdict == "must_pass_missed" and too_few_marks(paper) for paper in papers)
    also = {"must_pass_missed": f" ({both} of them with too few marks as well)" if both else ""}
    others = [
        f"{verdicts[verdict]} {words}{also.get(verdict, '')}"
        for verdict, words in SHORT_VERDICTS.items()
        if verdict != "passed" and verdicts[verdict]
    ]
    sentences = [f"{said}{'; ' if others else ''}{', '.join(others)}."]
    shares = [paper.points / paper.most for paper in papers if paper.most]
    if shares:
        mean = percent(sum(shares, Fraction(0)) / len(shares))
        least, most = percent(min(shares)), percent(max(shares))
        sentences.append(f"Mean of the marks {mean}, lowest {least}, highest {most}.")
    if people < FEWEST:
        sentences.append(f"Fewer than {FEWEST} papers: counts only, no percent.")
    return sentences


def person_row(paper: SatPaper) -> Plain:
    """Return the row of one person: by code, never by name."""
    return {
        "who": paper.person or "not named",
        "form": paper.label,
        "marks": f"{marks_text(paper.points)} of {paper.most}",
        "percent": percent(paper.points / paper.most) if paper.most else "",
        "verdict": _short_verdict(paper),
        "missed": ", ".join(str(answer.number) for answer in paper.gate_missed),
        "blank": sum(answer.mark.status == "blank" for answer in paper.counted),
    }


def _short_verdict(paper: SatPaper) -> str:
    words = SHORT_VERDICTS[paper.verdict]
    both = paper.verdict == "must_pass_missed" and too_few_marks(paper)
    return f"{words}, too few marks" if both else words


def unanswered_words(sat: SatIssue) -> str:
    """Name the seats without answers; empty where there are none."""
    seats = [f"{label} ({person})" if person else label for label, person in sat.unanswered]
    return f"No answers yet: {', '.join(seats)}." if seats else ""
