"""What papers, keys and guides say, as data for the typesetter."""

from generator.printing.content.class_key_content import class_key_content
from generator.printing.content.class_key_layout import Sheet
from generator.printing.content.feedback_content import feedback_sheet_content
from generator.printing.content.form_facts import form_facts, listed
from generator.printing.content.guide_content import marking_guide_content
from generator.printing.content.key_content import answer_key_content
from generator.printing.content.markup import block_nodes, inline_nodes
from generator.printing.content.paper_content import question_paper_content

__all__ = [
    "Sheet",
    "answer_key_content",
    "block_nodes",
    "class_key_content",
    "feedback_sheet_content",
    "form_facts",
    "inline_nodes",
    "listed",
    "marking_guide_content",
    "question_paper_content",
]
