"""Observation sheets: every procedure of the bank, stars on danger steps, boxes for each step."""

from io import BytesIO

import pytest
from pypdf import PdfReader

from generator.bank.models import Procedure
from generator.bank.orders.guarding import hazards_met
from generator.printing import observation_sheet
from generator.printing.observation_sheet import NO_STAR, SAYS, STARRED
from generator.records.practice.observed_steps import sheet_steps
from tests.printing.pdf_reading import (
    FONTS,
    font_descriptors,
    page_texts,
    squeezed,
    tags,
    whole_text,
)
from tests.real import real_bank

HAZARDS = real_bank().hazards
PROCEDURES = {name: entry.record for name, entry in sorted(real_bank().procedures.items())}


def sheet(name="mix_two_pack", procedure=None, **more):
    """Set the sheet of a procedure."""
    record = procedure or PROCEDURES[name]
    met = [HAZARDS[hazard].record.title for hazard in hazards_met(record)]
    worn = [HAZARDS[hazard].record.title for hazard in record.wears]
    settings = {"edition": "7", "paper": "a4", "fonts": FONTS, "hazards": met, "worn": worn} | more
    return observation_sheet(name, record, **settings)


@pytest.mark.parametrize("name", PROCEDURES)
def test_a_sheet_has_the_steps_cautions_and_never_lines_of_its_procedure(name):
    procedure = PROCEDURES[name]
    text = squeezed(whole_text(sheet(name)))
    said = (procedure.title, *procedure.cautions, *procedure.throughout, *procedure.never, SAYS)
    for sentence in (*said, *(step.action for step in procedure.steps)):
        assert squeezed(sentence) in text
    for hazard in hazards_met(procedure):
        assert squeezed(HAZARDS[hazard].record.title).lower() in text.lower()
    for label in ("Person", "Observer", "Signature", "Date", "Yes", "No", "Notseen"):
        assert label in text


@pytest.mark.parametrize("name", PROCEDURES)
def test_a_sheet_stars_its_danger_steps_and_no_others(name):
    steps = sheet_steps(PROCEDURES[name])
    text = squeezed(whole_text(sheet(name)))
    for number, step in enumerate(steps, start=1):
        star = "*" if step.critical else ""
        assert squeezed(f"{number} {star} {step.action} {step.step}") in text
    starred = any(step.critical for step in steps)
    assert (squeezed(STARRED) in text, squeezed(NO_STAR) in text) == (starred, not starred)


def test_there_are_fourteen_sheets_at_least():
    assert len(PROCEDURES) >= 14


@pytest.mark.parametrize("name", PROCEDURES)
@pytest.mark.parametrize("paper", ["a4", "letter"])
def test_a_sheet_of_the_bank_fits_one_leaf_and_its_steps_the_front(name, paper):
    pages = page_texts(sheet(name, paper=paper))
    assert len(pages) <= 2
    assert squeezed(PROCEDURES[name].steps[-1].action) in squeezed(pages[0])


def test_a_long_procedure_goes_on_with_its_heading_row_and_numbers():
    steps = [{"step": f"step_{n}", "action": f"Do the thing number {n}"} for n in range(1, 61)]
    pair = {"first": "step_1", "then": "step_2", "class": "habit", "reason": "It is easier."}
    long = Procedure.model_validate(
        {"title": "A long day", "objective": "a/b", "source": "common_practice"}
        | {"steps": steps, "pairs": [pair]}
    )
    pages = page_texts(sheet("long_day", long))
    assert len(pages) > 1
    assert all("Not seen" in page for page in pages[:2])
    assert "60 Do the thing number 60 step_60" in " ".join(pages)


def test_every_page_has_the_same_foot_with_sheet_and_edition():
    (page,) = page_texts(sheet())
    assert page.endswith("Sheet mix_two_pack Edition 7 Observation Page 1 of 1")


@pytest.mark.parametrize("large", [False, True])
def test_a_sheet_is_tagged_accessible_and_the_same_every_time(large):
    made = sheet(large_print=large)
    reader = PdfReader(BytesIO(made))
    root = reader.trailer["/Root"]
    assert root["/MarkInfo"]["/Marked"] and root["/Lang"] == "en"
    assert b"pdfuaid" in root["/Metadata"].get_data()
    assert reader.metadata.title == "Mix a two-pack primer by volume, observation sheet"
    kinds = [kind for kind, _ in tags(made)]
    assert {"/H1", "/H2", "/Table", "/TH", "/TD"} <= set(kinds)
    assert font_descriptors(made)
    assert all("/FontFile2" in d or "/FontFile3" in d for d in font_descriptors(made))
    assert sheet(large_print=large) == made


def test_markup_in_a_step_is_set_as_text():
    known = PROCEDURES["mix_two_pack"]
    odd = known.steps[0].model_copy(update={"action": "Read #panic() and $x$ aloud"})
    text = whole_text(sheet("odd", known.model_copy(update={"steps": (odd, *known.steps[1:])})))
    assert "Read #panic() and $x$ aloud" in text
