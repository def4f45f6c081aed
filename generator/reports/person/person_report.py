"""The report for a person: the gate first, the marks, the panel, what went wrong, what to study."""

from collections.abc import Sequence
from typing import Any

from generator.reports.answered_papers import SatPaper
from generator.reports.course_names import CourseNames
from generator.reports.fixed_words import NOT_SAID_PERSON
from generator.reports.intervals import FEWEST, METHOD
from generator.reports.person.module_counts import ModuleCount, by_module
from generator.reports.person.panel_strip import panel_in_words, panel_strip
from generator.reports.person.study import numbers_of, study_rows
from generator.reports.result_sentences import gate_sentences, marks_sentences, verdict_sentence
from generator.reports.slip_sentences import KINDS, SlipGroup, grouped_slips, worth_knowing

Plain = dict[str, Any]
PANEL_WORDS = (
    "One patch a question: blocked clean where it was right, under mist where it was not, thin "
    "mist for part of the marks."
)
NOTHING_WRONG = "Nothing went wrong that cost marks."
NOTHING_TO_STUDY = "No objective lost marks on this paper. Keep them fresh on the course site."
SLIPS_LEGEND = "The number of the question stands first; * marks a must-pass question."
SAMPLE = (
    "They take the questions for a random draw of equal ones from the subject; heavy questions "
    "count by their marks."
)
KEY_KEPT = "The right answers are not printed here, since the questions may be asked again."


def person_report(paper: SatPaper, names: CourseNames) -> Plain:
    """Return the plain JSON of a person's report; every sentence of it stands there.

    slips    groups of rows: the question numbers and why; `*` marks a must-pass question
    study    objectives that lost marks; `module` and `objective` say where the course has them
    modules  each with its strip as SVG and the same in words
    """
    groups = grouped_slips(paper.counted)
    return {
        "kind": "person",
        "title": f"{paper.title}: report",
        "corner": f"Issue {paper.issue}, form {paper.label}",
        "edition": paper.edition,
        "foot": [f"Issue {paper.issue} form {paper.label}", f"Taken on {paper.sat[:10]}"],
        "facts": _facts(paper),
        "verdict": verdict_sentence(paper),
        "passed": paper.verdict == "passed",
        "gate": gate_sentences(paper, names),
        "marks": marks_sentences(paper),
        "panel_words": PANEL_WORDS,
        "modules": [_module(count, names) for count in _counts(paper, names)],
        "modules_note": _modules_note(paper, names),
        "slips": _slips(groups),
        "slips_legend": SLIPS_LEGEND,
        "slips_none": "" if groups else NOTHING_WRONG,
        "worth": [{"number": str(number), "text": text} for number, text in _worth(paper)],
        "study": study_rows(paper.counted, names),
        "study_none": "" if any(a.lost for a in paper.counted) else NOTHING_TO_STUDY,
        "notes": [NOT_SAID_PERSON, f"{METHOD} {SAMPLE} {KEY_KEPT}"],
    }


def _facts(paper: SatPaper) -> list[list[str]]:
    return [
        ["Person", paper.person or "not named"],
        ["Paper", f"{paper.blueprint}, form {paper.label}, id {paper.form_id or 'none'}"],
        ["Taken on", paper.sat[:10]],
    ]


def _counts(paper: SatPaper, names: CourseNames) -> tuple[ModuleCount, ...]:
    return by_module(paper.answers, names, paper.pass_percent)


def _module(count: ModuleCount, names: CourseNames) -> Plain:
    return {
        "title": names.module(count.module),
        "count": f"{count.right} of {count.asked} right",
        "says": count.standing,
        "questions": len(count.answers),
        "strip": panel_strip(count.answers),
        "in_words": panel_in_words(count.answers),
    }


def _modules_note(paper: SatPaper, names: CourseNames) -> str:
    if all(count.asked >= FEWEST for count in _counts(paper, names)):
        return ""
    return f"A module with fewer than {FEWEST} questions gets no verdict."


def _slips(groups: Sequence[SlipGroup]) -> list[Plain]:
    return [
        {
            "title": title,
            "rows": [
                {"numbers": numbers_of(group.answers)}
                | {"took": group.slip.took, "text": group.slip.text}
                for group in groups
                if group.slip.kind == kind
            ],
        }
        for kind, title in KINDS.items()
        if any(group.slip.kind == kind for group in groups)
    ]


def _worth(paper: SatPaper) -> tuple[tuple[int, str], ...]:
    return worth_knowing(paper.counted)
