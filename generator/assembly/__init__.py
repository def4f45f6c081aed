"""From a blueprint to forms: filling cells, building questions, marks.

Imports questions and what lies below. Files: selection (which questions), forms (building them),
form (the records and their JSON form).
"""

from generator.assembly.form import Form, FormQuestion, form_as_plain
from generator.assembly.forms import build_forms, form_labels
from generator.assembly.selection import shortages

__all__ = ["Form", "FormQuestion", "build_forms", "form_as_plain", "form_labels", "shortages"]
