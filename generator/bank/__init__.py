"""From text files to trustworthy records: reading, typing, checking.

Imports formulas, refinishing, quantities and diagnostics. Files: nodes and yaml_source (text with
places), records (the classes), record_version, typing (nodes to records), bank, loader, lessons,
checks, schemas, figures. PyYAML stays in yaml_source.
"""

from generator.bank.bank import Bank, Entry, Lesson, module_of, objective_of
from generator.bank.loader import load_bank
from generator.bank.record_version import record_version

__all__ = ["Bank", "Entry", "Lesson", "load_bank", "module_of", "objective_of", "record_version"]
