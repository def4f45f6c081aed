"""Reports on a class."""

from generator.reports.classes.class_report import class_report

__all__ = ["class_report"]
