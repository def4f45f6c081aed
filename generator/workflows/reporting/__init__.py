"""Reporting: what marks mean for people and a class, and how the questions did."""

from generator.workflows.reporting.issued_analysis import analyse_issues
from generator.workflows.reporting.report_files import Wanted, write_reports
from generator.workflows.reporting.table_analysis import analyse_table

__all__ = ["Wanted", "analyse_issues", "analyse_table", "write_reports"]
