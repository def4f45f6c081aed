"""Choose what a marking guide shows: how written answers of a form get their marks."""

from collections.abc import Mapping
from typing import Any

from generator.printing.content.cautions import told_cautions
from generator.printing.content.form_facts import counted, form_facts, marks_text, must_pass
from generator.printing.content.key_content import source_of
from generator.printing.content.markup import block_nodes, inline_nodes
from generator.printing.content.paper_content import shown_question

RULES = (
    "Read the whole answer first. Then go through the points one by one.",
    "A point is made when the answer says it, in any words and in any order. Spelling and "
    "handwriting take no marks.",
    "Part answers: a point of 1 mark is made or not made. A point of 2 marks or more may get part "
    "of them, in whole marks, for a part of what it asks.",
    "Each point counts once. A good sentence that is on no point gets no marks; write it down as "
    "something to talk about.",
    "If an answer says something that could hurt somebody, note it on the feedback sheet and talk "
    "about it before the person's next job, whatever the marks.",
    "Enter the marks of the points in this order, such as 2\u00a00\u00a01.",
)
GATE = "This question must be right: only all of its marks pass it."


def marking_guide_content(form: Mapping[str, Any]) -> dict[str, Any] | None:
    """Choose the content of a marking guide, or give nothing where no answer is written."""
    written = [entry for entry in form["questions"] if entry["question"]["kind"] == "written"]
    if not written:
        return None
    marks = marks_text(sum(int(entry["marks"]) for entry in written))
    return form_facts(form) | {
        "summary": f"{counted(len(written), 'written question', 'written questions')}, "
        f"{marks} together.",
        "rules": list(RULES),
        "questions": [
            _question(entry, must_pass(form)) | told
            for entry, told in zip(written, told_cautions(written), strict=True)
        ],
    }


def _question(entry: Mapping[str, Any], gate: frozenset[int]) -> dict[str, Any]:
    question, must = entry["question"], int(entry["number"]) in gate
    return shown_question(question) | {
        "number": str(entry["number"]),
        "marks": marks_text(int(entry["marks"])),
        "must_pass": must,
        "gate": GATE if must else "",
        "points": [
            {"marks": str(point["marks"]), "text": inline_nodes(point["text"])}
            for point in question["key"]["points"]
        ],
        "model": block_nodes(question["key"]["model"]),
        "sources": [source_of(source) for source in question["sources"]],
    }
