"""The report for a class: who, what to teach again, commonest slips, questions to look at."""

from typing import Any

from generator.records.sittings import AnsweredPaper
from generator.reports.answered_issue import AnsweredIssue
from generator.reports.classes.class_people import person_row, summary_sentences, unanswered_words
from generator.reports.classes.class_slips import commonest_slips, gate_misses
from generator.reports.classes.flagged_questions import items_to_look_at
from generator.reports.classes.reteach import Objective, objectives_to_reteach
from generator.reports.combined import PooledAnalysis
from generator.reports.course_names import CourseNames
from generator.reports.fixed_words import NOT_SAID_CLASS
from generator.reports.intervals import FEWEST, METHOD
from generator.wording import counted, percent

Plain = dict[str, Any]
MOST_MISSES = 5
# how many objectives and slips a page has room for, beside so many people
SMALL_CLASS, BESIDE_A_SMALL_CLASS, BESIDE_A_LARGE_ONE = 25, (7, 5), (6, 4)
PART_MARKS = (
    "A share counts part marks; its interval takes every answer as one and as independent of the "
    "others, so it is a little too narrow where one person answered several."
)


def class_report(sat: AnsweredIssue, names: CourseNames, analysis: PooledAnalysis) -> Plain:
    """Return the plain JSON of a class's report.

    analysis  of these papers, or of these pooled with earlier ones
    """
    papers = sat.papers
    most_objectives, most_slips = (
        BESIDE_A_SMALL_CLASS if len(papers) <= SMALL_CLASS else BESIDE_A_LARGE_ONE
    )
    issue = sat.issue
    looks, looks_note = items_to_look_at(analysis, _stems(papers))
    objectives = objectives_to_reteach(papers, names)
    slips = commonest_slips(papers)
    misses = gate_misses(papers)
    return {
        "kind": "class",
        "title": f"{issue.title}: the class",
        "corner": f"Issue {issue.number}",
        "edition": issue.edition,
        "foot": [f"Issue {issue.number}", f"Issued {issue.issued[:10]}"],
        "facts": [
            ["Papers", f"{issue.blueprint}, issue {issue.number}, {_counted(sat)}"],
            ["Issued", issue.issued[:10]],
        ],
        "summary": summary_sentences(papers),
        "people": [person_row(paper) for paper in papers],
        "unanswered": unanswered_words(sat),
        "objectives": [_objective(o, names) for o in objectives[:most_objectives]],
        "objectives_note": _objectives_note(objectives, most_objectives),
        "slips": [
            {
                "made": f"{slip.made} of {slip.asked}",
                "took": slip.slip.took,
                "text": slip.slip.text,
                "about": names.objective(slip.objective),
            }
            for slip in slips[:most_slips]
        ],
        "slips_note": _slips_note(len(slips), most_slips),
        "misses": [
            {
                "about": miss.hazard or names.objective(miss.objective),
                "missed": f"{miss.missed} of {miss.asked}",
            }
            for miss in misses[:MOST_MISSES]
        ],
        "misses_note": _misses_note(papers, len(misses)),
        "looks": looks,
        "looks_note": f"{looks_note} {_pooled_words(analysis)}".strip(),
        "notes": [NOT_SAID_CLASS, f"{METHOD} {PART_MARKS}"],
    }


def _stems(papers: tuple[AnsweredPaper, ...]) -> dict[str, str]:
    """Return the stem of each item as the first form that has it printed it."""
    stems: dict[str, str] = {}
    for answer in (answer for paper in papers for answer in paper.answers):
        stems.setdefault(str(answer.question["id"]), str(answer.question["stem"]))
    return stems


def _counted(sat: AnsweredIssue) -> str:
    return f"{len(sat.papers)} answered, {len(sat.unanswered)} not"


def _objective(objective: Objective, names: CourseNames) -> Plain:
    share = objective.share
    low, high = share.interval
    return {
        "text": names.objective(objective.name),
        "share": percent(share.share) if objective.is_ranked else "",
        "interval": f"{percent(low)} to {percent(high)}" if objective.is_ranked else "",
        "answers": f"{objective.answers - objective.lost} of {objective.answers} right",
        "people": objective.people,
        "module": objective.name.partition("/")[0],
        "lesson": objective.name.partition("/")[0] in names.lessons,
    }


def _objectives_note(objectives: tuple[Objective, ...], most: int) -> str:
    if not objectives:
        return "No objective lost marks."
    left = len(objectives) - most
    said = [f"{counted(left, 'more objective', 'more objectives')} lost marks."] if left > 0 else []
    if any(not objective.is_ranked for objective in objectives[:most]):
        said.append(f"Fewer than {FEWEST} answers: too few to say, so only counts are shown.")
    return " ".join(said)


def _pooled_words(analysis: PooledAnalysis) -> str:
    issues = ", ".join(map(str, analysis.issues))
    many = f"Pooled over issues {issues}, by the version of each question."
    return many if len(analysis.issues) > 1 else ""


def _slips_note(slips: int, most: int) -> str:
    if not slips:
        return "No slip was made twice."
    return _more_slips(slips - most)


def _more_slips(left: int) -> str:
    if left <= 0:
        return ""
    return f"{counted(left, 'more slip was', 'more slips were')} made at least twice."


def _misses_note(papers: tuple[AnsweredPaper, ...], misses: int) -> str:
    if not any(paper.gate for paper in papers):
        return "These papers have no must-pass question."
    if not misses:
        return "Nobody missed a must-pass question."
    left = misses - MOST_MISSES
    return f"Must-pass questions on {left} more hazards were missed." if left > 0 else ""
