"""The marking guide says how written answers get their marks, point by point."""

from generator.printing import marking_guide
from tests.printing.form_for_tests import CHOICE, SECRETS, WRITTEN, form_of, full_form
from tests.printing.pdf_reading import FONTS, squeezed, whole_text


def _guide(*questions, **more):
    document = marking_guide(form_of(*questions, **more), paper="a4", fonts=FONTS)
    assert document is not None
    return whole_text(document)


def test_a_form_without_written_questions_has_no_guide():
    assert marking_guide(form_of(CHOICE), paper="a4", fonts=FONTS) is None


def test_a_written_question_has_stem_points_marks_model_and_source():
    text = _guide(CHOICE, WRITTEN)
    assert "1 written question, 2 marks together." in text
    assert "Question 2 2 marks" in text
    assert "The booth gauge reads twice its usual value." in text
    assert "Point Most Given" in text
    assert "Names the exhaust filter and its pressure drop 1" in text
    assert "Model answer The exhaust filter is loaded." in text
    assert "Source From memory, not checked against a document" in text
    assert "Question 1" not in text


def test_part_answers_and_unsafe_answers_have_a_rule():
    text = _guide(WRITTEN)
    assert "a point of 1 mark is made or not made" in text
    assert "in whole marks" in text
    assert "talk about it before the person's next job" in text
    assert "Enter the marks of the points in this order, such as 2 0 1." in text


def test_a_must_pass_question_says_that_part_marks_do_not_pass_it():
    text = _guide(WRITTEN, WRITTEN, gate=[2])
    assert text.count("only all of its marks pass it") == 1
    assert "Question 2 MUST BE RIGHT" in text


def test_the_guide_holds_nothing_of_other_keys():
    guide = marking_guide(full_form(), paper="a4", fonts=FONTS)
    text = squeezed(whole_text(guide))
    others = [secret for secret in SECRETS if secret[0] not in "Nif" and secret != "From memory"]
    assert len(others) > 8
    assert [secret for secret in others if squeezed(secret) in text] == []
