"""The id of a form stands for what is printed on it, whoever it is for."""

from hypothesis import given
from hypothesis import strategies as st

from generator.assembly.forms.form_identity import LENGTH, SIGNS, form_id

plain = st.fixed_dictionaries(
    {"title": st.text(), "form": st.text(), "seed": st.text(), "gate": st.lists(st.integers())}
)


@given(plain)
def test_an_id_is_eight_signs_that_are_not_misread(form):
    name = form_id(form)
    assert len(name) == LENGTH
    assert set(name) <= set(SIGNS)
    assert not set(SIGNS) & set("ILOU")


@given(plain, st.text(), st.text())
def test_the_person_leaves_the_id_as_it_is(form, one, other):
    assert form_id(form | {"person": one}) == form_id(form | {"person": other}) == form_id(form)


@given(plain, plain)
def test_another_content_has_another_id(one, other):
    # two of a few hundred equal ids would be a chance of one in a million million
    assert (form_id(one) == form_id(other)) == (one == other)


def test_an_id_does_not_change_from_run_to_run():
    # worked apart with sha256sum: the lowest eight groups of five bits, lowest first
    assert form_id({"title": "Cup check", "form": "A", "seed": "spring"}) == "TYH19QC7"
