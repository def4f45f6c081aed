"""All papers are tagged, named, self-contained and the same on every run (PDF/UA-1)."""

from collections import Counter
from io import BytesIO

import pytest
from pypdf import PdfReader

from generator.printing import (
    answer_key,
    answer_sheet,
    class_key,
    feedback_sheet,
    marking_guide,
    question_paper,
)
from tests.printing.form_for_tests import full_form, issued_form
from tests.printing.pdf_reading import FONTS, font_descriptors, page_texts, tags
from tests.some import some


def class_key_of_one(form, **more):
    return class_key([form], **more)


PAPERS = (
    *(question_paper, answer_sheet, answer_key),
    *(class_key_of_one, marking_guide, feedback_sheet),
)
EVERY = pytest.mark.parametrize("paper", PAPERS, ids=lambda paper: paper.__name__)


@EVERY
def test_a_paper_is_marked_as_tagged_with_language_and_shown_title(paper):
    reader = PdfReader(BytesIO(paper(full_form(), paper="a4", fonts=FONTS)))
    root = reader.trailer["/Root"]
    assert root["/MarkInfo"]["/Marked"]
    assert root["/Lang"] == "en"
    assert "Film build and filler check" in reader.metadata.title
    assert ("form A" in reader.metadata.title) == (paper is not class_key_of_one)
    assert root["/ViewerPreferences"]["/DisplayDocTitle"]


@EVERY
def test_a_paper_claims_the_accessible_pdf_standard(paper):
    reader = PdfReader(BytesIO(paper(full_form(), paper="a4", fonts=FONTS)))
    assert b"pdfuaid" in reader.trailer["/Root"]["/Metadata"].get_data()


@EVERY
def test_every_font_is_embedded(paper):
    descriptors = font_descriptors(paper(full_form(), paper="a4", fonts=FONTS))
    assert descriptors
    for descriptor in descriptors:
        assert "/FontFile2" in descriptor or "/FontFile3" in descriptor, descriptor["/FontName"]


@EVERY
def test_papers_use_only_the_course_fonts(paper):
    names = {
        str(descriptor["/FontName"]).split("+")[1].split("-")[0]
        for descriptor in font_descriptors(paper(full_form(), paper="a4", fonts=FONTS))
    }
    assert names <= {"HeptaSlab", "FamiljenGrotesk", "SometypeMono", "GuidecoatSymbols"}


@EVERY
@pytest.mark.parametrize("large", [False, True])
def test_the_same_form_gives_the_same_bytes(paper, large):
    first = paper(full_form(), paper="a4", fonts=FONTS, large_print=large)
    # Another paper in between: nothing of it may linger in the engine.
    paper(full_form() | {"form": "B"}, paper="letter", fonts=FONTS)
    assert paper(full_form(), paper="a4", fonts=FONTS, large_print=large) == first


@EVERY
@pytest.mark.parametrize(
    ("size", "width", "height"),
    [("a4", 210 / 25.4 * 72, 297 / 25.4 * 72), ("letter", 8.5 * 72, 11 * 72)],
)
def test_pages_have_the_size_of_the_paper(paper, size, width, height):
    """A4 by ISO 216; US Letter is 8.5 by 11 inches."""
    for page in some(PdfReader(BytesIO(paper(full_form(), paper=size, fonts=FONTS))).pages):
        sides = sorted(float(side) for side in (page.mediabox.width, page.mediabox.height))
        assert sides == pytest.approx([width, height], abs=0.1)


@EVERY
@pytest.mark.parametrize("large", [False, True])
def test_every_page_has_form_edition_seed_and_its_own_number(paper, large):
    pages = page_texts(paper(full_form(), paper="a4", fonts=FONTS, large_print=large))
    for number, text in some(enumerate(pages, 1)):
        assert "Form A Edition 1 Seed 2026-spec" in text
        assert f"Page {number} of {len(pages)}" in text


@pytest.mark.parametrize("paper", [p for p in PAPERS if p is not class_key_of_one])
@pytest.mark.parametrize("large", [False, True])
def test_every_page_of_an_issued_form_carries_its_id(paper, large):
    document = paper(issued_form(), paper="letter", fonts=FONTS, large_print=large)
    for text in some(page_texts(document)):
        assert "Id 3F7KQ2MZ" in text


@pytest.mark.parametrize("paper", [question_paper, answer_key])
def test_every_question_is_a_heading_to_jump_to(paper):
    kinds = Counter(kind for kind, _ in tags(paper(full_form(), paper="a4", fonts=FONTS)))
    assert kinds["/H1"] == 1
    # One more on each: the rules of the paper and its units, or the list of answers of the key.
    assert kinds["/H2"] == {question_paper: 22, answer_key: 21}[paper]


def test_options_are_list_items_and_sheets_are_tables():
    kinds = Counter(kind for kind, _ in tags(question_paper(full_form(), paper="a4", fonts=FONTS)))
    assert kinds["/LBody"] >= 3 * 5 + 4 * 3 + 5 * 3 + 7 * 3
    assert kinds["/Table"] == 4 + 3
    assert kinds["/TH"] >= 7


def test_the_code_of_the_form_has_words_for_those_who_cannot_see_it():
    figures = [
        element
        for kind, element in tags(answer_sheet(full_form(), paper="a4", fonts=FONTS))
        if kind == "/Figure"
    ]
    assert [figure["/Alt"] for figure in figures] == ["Code of form A"]


def test_large_print_is_set_in_eighteen_points():
    def sizes(large):
        document = question_paper(full_form(), paper="a4", fonts=FONTS, large_print=large)
        seen = Counter()

        def note(text, _matrix, text_matrix, _font, size):
            seen[round(abs(text_matrix[0]) * size if text_matrix[0] else size)] += len(text)

        PdfReader(BytesIO(document)).pages[1].extract_text(visitor_text=note)
        return seen.most_common(1)[0][0]

    assert (sizes(False), sizes(True)) == (12, 18)
