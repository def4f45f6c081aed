"""What marks mean: for a person, for a class, for a new hire, and for the questions themselves.

Imports records and what lies below; gives plain data that paper and page lay out. Files:
sat_papers with sat_issue (what was answered), course_names, intervals, fixed_words;
person_report over result_sentences, slip_sentences, module_counts, panel_strip, study;
class_report over class_people, reteach, class_slips, looks_bad;
profile over tasks with guessing_odds, paperwork, placement;
pooled_analysis over pooled_answers and pooled_options; pooled_plain.
"""

from generator.reports.answered_issue import SatIssue, sat_issue
from generator.reports.answered_papers import SatPaper
from generator.reports.classes import class_report
from generator.reports.combined import Pool, PooledAnalysis, analyse_pool, pooled, pooled_as_plain
from generator.reports.course_names import CourseNames, course_names
from generator.reports.person import paperwork_of, person_report, procedure_names, profile

__all__ = [
    "CourseNames",
    "Pool",
    "PooledAnalysis",
    "SatIssue",
    "SatPaper",
    "analyse_pool",
    "class_report",
    "course_names",
    "paperwork_of",
    "person_report",
    "pooled",
    "pooled_as_plain",
    "procedure_names",
    "profile",
    "sat_issue",
]
