"""A form as plain data, the one form that paper, key and records read."""

from generator.assembly.forms.form import Form, FormQuestion
from generator.assembly.forms.form_identity import form_id
from generator.assembly.forms.guessing import guesser_passes
from generator.assembly.forms.mastery import mastery_marks
from generator.questions import Plain, as_plain

CONSTANTS = (
    "1 mil = 0.001 inch = 25.4 µm",
    "1 US gallon = 3.785 L = 231 cubic inches; 1 Imperial gallon = 4.546 L",
    "1 L spread over 1 m² is 1,000 µm wet",
    "1 US gallon of solids covers 1,604 square feet at 1 mil dry",
    "1 mL of a liquid of density 1 g/mL weighs 1 g",
    "pi is 3.1416",
)


def form_as_plain(form: Form) -> Plain:
    """Return a form as JSON-ready data for paper, key and records.

    form_id         eight signs that its papers carry, other ones for every other content
    guesser_passes  chance that somebody who guesses everything passes, 0 to 1
    mastery_marks   fewest marks that show the standard, or nothing where the paper is too short
    cautions        those that stand on the paper, each once; the others come with the feedback
    """
    cautions = dict.fromkeys(q.question.caution for q in form.questions if q.question.caution)
    plain: Plain = {
        "title": form.title,
        "blueprint": form.blueprint,
        "form": form.label,
        "edition": form.edition,
        "seed": form.seed,
        "minutes": form.minutes,
        "marks": form.marks,
        "pass_percent": form.pass_percent,
        "pass_marks": form.pass_marks,
        "gate": list(form.gate),
        "person": form.person,
        "guesser_passes": float(guesser_passes(form)),
        "mastery_marks": mastery_marks([e.marks for e in form.questions], form.pass_percent),
        "questions": [_entry(entry, form) for entry in form.questions],
        "constants": list(CONSTANTS),
        "cautions": list(cautions),
    }
    return {"form_id": form_id(plain), **plain}


def _entry(entry: FormQuestion, form: Form) -> Plain:
    return {
        "number": entry.number,
        "marks": entry.marks,
        "must_pass": entry.number in form.gate,
        "question": as_plain(entry.question),
    }
