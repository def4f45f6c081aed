"""Reports on one person."""

from generator.reports.person.paperwork import paperwork_of, procedure_names
from generator.reports.person.person_report import person_report
from generator.reports.person.profile import profile

__all__ = ["paperwork_of", "person_report", "procedure_names", "profile"]
