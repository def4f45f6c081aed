"""The certificate shows what the records hold, what it does not say, and where people sign."""

from io import BytesIO

import pytest
from pypdf import PdfReader

from generator.printing import certificate
from generator.printing.certificate import SIGNING, TOPICS_FROM
from generator.records.certificates.certificate_content import NOT_SAID
from generator.records.certificates.painter_topics import TOPICS
from tests.printing.pdf_reading import FONTS, font_descriptors, page_texts, squeezed, tags
from tests.printing.pdf_reading import whole_text as text_of

CONTENT = {
    "person": {"code": "Apprentice 01", "name": "Ann Example"},
    "trainer": {"code": "Trainer 1", "name": ""},
    "issued": "2026-11-25",
    "edition": "7",
    "dates": {
        "first": "2024-02-29",
        "refresher": "",
        "due": "2029-02-28",
        "overdue": False,
        "leap": True,
    },
    "papers": [
        {
            "title": "Filler check",
            "date": "2026-10-01",
            "paper": "issue 4, form B, edition 7",
            "result": "passed, 34 of 40 marks",
        }
    ],
    "practice": [
        {
            "procedure": "set_the_gun",
            "title": "Set the gun before a primer coat",
            "date": "2026-10-02",
            "job": "Van door, job 12",
            "observer": "Trainer 1",
            "result": "starred steps yes 3 of 3; other steps yes 8 of 9, 1 not seen",
        }
    ],
    "sign_offs": [{"subject": "whole training", "done": "2026-11-20"}],
    "topics": [
        {
            "clause": topic.clause,
            "text": topic.text,
            "knowledge": "3 of 4 questions right",
            "practice": "not observed here",
        }
        for topic in TOPICS
    ],
    "not_said": list(NOT_SAID),
}


SEEN = "Safety steps 3 of 3. Other steps 5 of 6. Not seen: 1 step"


def made(content=CONTENT, **more):
    """Set a certificate."""
    return certificate(12, content, **({"paper": "a4", "fonts": FONTS} | more))


def test_a_certificate_shows_both_parts_the_topics_the_dates_and_the_trainer():
    text = squeezed(text_of(made()))
    for row in (*CONTENT["papers"], *CONTENT["practice"], *CONTENT["topics"]):
        for shown in (value for name, value in row.items() if name != "procedure"):
            assert squeezed(shown) in text
    for shown in (
        "Person Ann Example (Apprentice 01)",
        "Trainer Trainer 1",
        "First training 2024-02-29",
        "Latest refresher none yet",
        "Next refresher by 2029-02-28, as 29 February counts as 28 February",
        "whole training 2026-11-20",
        TOPICS_FROM,
    ):
        assert squeezed(shown) in text


def test_a_certificate_says_what_it_does_not_say_and_who_certifies():
    text = squeezed(text_of(made()))
    for sentence in (*NOT_SAID, SIGNING):
        assert squeezed(sentence) in text
    for line in ("Trainer", "Owneroroperator", "Person"):
        assert line in text
    assert "qualified" not in text.lower()


def test_a_refresher_that_is_overdue_says_so():
    late = CONTENT | {"dates": CONTENT["dates"] | {"overdue": True, "leap": False}}
    said = "this day had gone by when the certificate was issued"
    assert squeezed(said) in squeezed(text_of(made(late)))


def test_what_is_overdue_stands_on_it_and_an_earlier_certificate_has_no_such_line():
    said = "OVERDUE: fit test of the respirator, last on 2025-11-24, was due again by 2026-11-24."
    assert squeezed(said) in squeezed(text_of(made(CONTENT | {"reminders": [said]})))
    assert "OVERDUE" not in text_of(made())


@pytest.mark.parametrize("paper", ["a4", "letter"])
def test_names_and_signatures_of_a_full_certificate_stand_on_one_page(paper):
    work = [
        {**CONTENT["practice"][0], "title": title, "job": "", "result": SEEN}
        for title in (
            "Set the gun before a primer coat",
            "Check viscosity with a flow cup",
            "Spray one coat and the next on a flat panel",
            "Change the exhaust filters of the booth",
            "Strip and clean the gun",
        )
    ]
    (page,) = page_texts(made(CONTENT | {"practice": work, "sign_offs": []}, paper=paper))
    assert "Ann Example (Apprentice 01)" in page and "Signatures" in page


def test_the_page_that_is_signed_names_the_person():
    pages = page_texts(made(CONTENT | {"papers": CONTENT["papers"] * 60}))
    assert len(pages) > 1
    signed = squeezed("This is certificate 12, for Ann Example (Apprentice 01).")
    assert signed in squeezed(pages[-1])


def test_an_erased_trainer_is_not_named_twice():
    erased = CONTENT | {"trainer": {"code": "(erased)", "name": "(erased)"}}
    assert squeezed("Trainer (erased) First") in squeezed(text_of(made(erased)))


def test_the_foot_names_certificate_edition_and_day_on_every_page():
    many = CONTENT | {"papers": CONTENT["papers"] * 40}
    pages = page_texts(made(many))
    assert len(pages) > 1
    for number, page in enumerate(pages, start=1):
        foot = f"Certificate 12 Edition 7 Issued 2026-11-25 Page {number} of {len(pages)}"
        assert page.endswith(foot)


@pytest.mark.parametrize("papers", range(1, 30, 4))
def test_nobody_signs_a_page_that_lacks_what_the_certificate_does_not_say(papers):
    *_, last = page_texts(made(CONTENT | {"papers": CONTENT["papers"] * papers}))
    assert "Signatures" in last
    assert all(sentence in last for sentence in NOT_SAID[:3])


@pytest.mark.parametrize("large", [False, True])
def test_a_certificate_is_tagged_accessible_and_the_same_every_time(large):
    pdf = made(large_print=large)
    reader = PdfReader(BytesIO(pdf))
    root = reader.trailer["/Root"]
    assert root["/MarkInfo"]["/Marked"] and root["/Lang"] == "en"
    assert b"pdfuaid" in root["/Metadata"].get_data()
    assert [kind for kind, _ in tags(pdf)].count("/Table") >= 3
    assert all("/FontFile2" in d or "/FontFile3" in d for d in font_descriptors(pdf))
    assert made(large_print=large) == pdf


def test_the_title_of_the_file_names_nobody():
    title = PdfReader(BytesIO(made())).metadata.title
    assert title == "Record of painter training, certificate"


def test_markup_in_a_name_is_set_as_text():
    odd = CONTENT | {"person": {"code": "P1", "name": "#panic() $x$ *Ann*"}}
    assert "#panic() $x$ *Ann* (P1)" in text_of(made(odd))
