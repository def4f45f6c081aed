"""Problems: each once, in the order of the files, and what stops a build."""

from hypothesis import given
from hypothesis import strategies as st

from generator.diagnostics import Place, Problem, Severity, has_errors, sorted_problems

SEVERITIES: tuple[Severity, ...] = ("error", "warning", "note")
problems = st.builds(
    Problem,
    st.builds(Place, st.sampled_from(["a.yml", "b.yml"]), st.integers(1, 12), st.integers(1, 12)),
    st.sampled_from(SEVERITIES),
    st.sampled_from(["key-count", "yaml-form"]),
    st.sampled_from(["this", "that"]),
)


@given(st.lists(problems))
def test_sorting_keeps_every_different_message_once(found: list[Problem]) -> None:
    kept = sorted_problems(found)
    said = [(p.place, p.rule, p.message) for p in kept]
    assert set(said) == {(p.place, p.rule, p.message) for p in found}
    assert len(said) == len(set(said))


@given(st.lists(problems))
def test_sorting_follows_the_files_whatever_order_they_were_found_in(found: list[Problem]) -> None:
    places = [p.place for p in sorted_problems(found)]
    assert places == sorted(places)
    turned = [(p.place, p.rule, p.message) for p in sorted_problems(reversed(found))]
    assert turned == [(p.place, p.rule, p.message) for p in sorted_problems(found)]


def test_only_an_error_stops_the_build() -> None:
    place = Place("a.yml", 1, 1)
    light = [Problem(place, severity, "r", "m") for severity in ("warning", "note")]
    assert not has_errors(light)
    assert has_errors([*light, Problem(place, "error", "r", "m")])
    assert not has_errors([])
