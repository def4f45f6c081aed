"""What marks mean: for a person, for a class, for a new hire, and for the questions themselves.

Imports records and what lies below; gives plain data that paper and page lay out.
"""

from generator.records.sittings import AnsweredPaper
from generator.reports.answered_issue import AnsweredIssue, answered_issue
from generator.reports.classes import class_report
from generator.reports.combined import Pool, PooledAnalysis, analyse_pool, pooled, pooled_as_plain
from generator.reports.course_names import CourseNames, course_names
from generator.reports.person import paperwork_of, person_report, procedure_names, profile

__all__ = [
    "CourseNames",
    "Pool",
    "PooledAnalysis",
    "AnsweredIssue",
    "AnsweredPaper",
    "analyse_pool",
    "class_report",
    "course_names",
    "paperwork_of",
    "person_report",
    "pooled",
    "pooled_as_plain",
    "procedure_names",
    "profile",
    "answered_issue",
]
