"""What page, paper and terminal say alike: marks, rules, labels, counts and the bank's markup."""

from generator.wording.counting import counted, listed, odds, percent, questions_named, rough_odds
from generator.wording.exam_rules import gate_in_words, gate_rule, must_pass, time_and_marks, ways
from generator.wording.labels import SHORT_VERDICT_WORDS, TAG_WORDS, VERDICT_WORDS, status_words
from generator.wording.marks import marks_text, points_of_marks, points_text, total_marks
from generator.wording.markup import (
    Node,
    TypstNode,
    blocks_in,
    html_of,
    html_of_line,
    html_of_text,
    line_nodes,
    text_nodes,
    typst_of_line,
    typst_of_text,
)

__all__ = [
    "Node",
    "SHORT_VERDICT_WORDS",
    "TAG_WORDS",
    "TypstNode",
    "VERDICT_WORDS",
    "blocks_in",
    "counted",
    "gate_in_words",
    "gate_rule",
    "html_of",
    "html_of_line",
    "html_of_text",
    "line_nodes",
    "listed",
    "marks_text",
    "must_pass",
    "odds",
    "percent",
    "points_of_marks",
    "points_text",
    "questions_named",
    "rough_odds",
    "status_words",
    "text_nodes",
    "time_and_marks",
    "total_marks",
    "typst_of_line",
    "typst_of_text",
    "ways",
]
