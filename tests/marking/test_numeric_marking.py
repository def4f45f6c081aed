"""A number is marked exactly, in the accepted band, with its unit."""

from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from generator.marking import Mark, Typed, mark_response, significant_figures
from generator.marking.answers.unit_words import plain_spelling, unit_of_text
from generator.quantities import BARE, TEMPERATURE, UNITS, Unit, number_text, unit_named
from tests.marking.issued import Plain, numeric

WET = numeric(
    "128", "127.5", "128.5", slips=[("41.5", "42.5", "You multiplied."), ("35", "36", "Thinner.")]
)


def marked(question: Plain, text: str) -> Mark:
    return mark_response(question, Typed(text))


# binary floating point gets each of these wrong: |0.8 - 0.7| > 0.1 there
@pytest.mark.parametrize(
    ("low", "high", "text"),
    [("0.6", "0.8", "0.8"), ("0.9", "1.1", "1.1"), ("10.1", "10.3", "10.3")],
)
def test_an_answer_on_the_edge_of_the_band_passes_exactly(low: str, high: str, text: str) -> None:
    assert marked(numeric("1", low, high, step="0.1"), text).share == 1
    assert marked(numeric("1", low, high, step="0.1"), text + "0000001").share == 0


@pytest.mark.parametrize("text", ["45.4", "45.5"])
def test_either_side_of_a_tie_passes(text: str) -> None:
    # ASTM E29 rounds 45.45 to 45.4, common practice to 45.5
    assert marked(numeric("45.5", "45.4", "45.5", step="0.1"), text).share == 1


@pytest.mark.parametrize(
    "text",
    ["128", "128.5", "127,5", " 128 µm", "128um", "128 μm", "128 microns", "256/2", "127 1/2"]
    + ["128½", "\ufeff128\t", "0.128 mm", "0,0128 cm", "128 µm.", "5.04 mil"],
)
def test_the_ways_to_write_a_right_answer_are_right(text: str) -> None:
    assert marked(WET, text).status == "right"


@pytest.mark.parametrize(
    "text", ["127.4999", "128.6", "-128", "129", "0.128", "1280 µm", "5.1 mil"]
)
def test_a_number_outside_the_band_is_wrong(text: str) -> None:
    assert marked(WET, text).status == "wrong"


@pytest.mark.parametrize(
    ("text", "why"),
    [
        ("1,280", "two ways"),
        ("1.234,5", "two ways"),
        ("12 or 13", "'or 13' is not a unit"),
        ("128 0", "one number"),
        ("thick", "one number"),
        ("128/0", "divides by zero"),
        ("1e3", "'e3' is not a unit"),
        ("1" * 61, "one number"),
        ("12 µm 3", "not a unit"),
    ],
)
def test_what_is_no_clear_number_is_illegible_and_says_why(text: str, why: str) -> None:
    mark = marked(WET, text)
    assert mark.share == 0
    assert mark.status == "illegible"
    assert mark.needs_a_person
    assert why in mark.notes[0].text


def test_a_missing_unit_costs_nothing_and_is_asked_for() -> None:
    mark = marked(WET, "128")
    assert mark.share == 1
    assert [f.text for f in mark.notes] == ["Write the unit as well: µm."]
    assert marked(WET, "128 µm").notes == ()
    assert marked(numeric("3", "3", "3", "one", ""), "3").notes == ()


def test_another_unit_of_the_same_kind_is_converted_and_said() -> None:
    assert [f.text for f in marked(WET, "0.128 mm").notes] == ["0.128\u00a0mm is 128\u00a0µm."]


def test_the_right_number_in_a_wrong_unit_of_the_same_kind_is_wrong_and_says_so() -> None:
    mark = marked(WET, "128 mm")
    assert mark.status == "wrong"
    assert [f.text for f in mark.went_wrong] == ["The number fits, but in µm, not in mm."]
    assert mark.notes[0].text == "128\u00a0mm is 128000\u00a0µm."


def test_a_unit_of_another_kind_is_wrong_and_says_so() -> None:
    mark = marked(WET, "128 g")
    assert mark.status == "wrong"
    assert mark.went_wrong[0].text == "128\u00a0g is a mass; the answer is a length."
    assert "a temperature difference" in marked(WET, "128 K").went_wrong[0].text


def test_counts_of_different_things_do_not_convert() -> None:
    coats = numeric("3", "3", "3", "coats", "coats")
    assert marked(coats, "3 coats").share == 1
    assert marked(coats, "3").share == 1
    mark = marked(coats, "3 fills")
    assert mark.share == 0
    assert (
        mark.went_wrong[0].text
        == "3\u00a0fills is a number of fills; the answer is a number of coats."
    )


def test_one_coat_is_read_as_coats() -> None:
    assert marked(numeric("1", "1", "1", "coats", "coats"), "1 coat").share == 1


@pytest.mark.parametrize(
    ("unit", "symbol", "text", "exact"),
    [
        # NIST SP 811, Appendix B, to eight decimals
        ("psi", "psi", "2.5 bar", "36.25943443"),
        ("bar", "bar", "30 psi", "2.06842719"),
        ("um", "µm", "3 mil", "76.2"),
        ("mL", "mL", "1 US fl oz", "29.5735295625"),
        ("degC", "°C", "68 °F", "20"),
        ("degC", "°C", "293.15 K", "20"),
        ("K", "K", "10 °F", "5.55555556"),
        ("K", "K", "3 °C", "3"),
        ("degF_diff", "°F difference", "5 K", "9"),
        ("one", "", "40 %", "0.4"),
        ("percent", "%", "0,5 %", "0.5"),
        ("us_gal", "US gal", "2 gal", "2"),
        ("imp_gal", "imp gal", "2 gallons", "2"),
        ("us_gal", "US gal", "1 imp gal", "1.20094993"),
        ("lb/us_gal", "lb/US gal", "9 lb/gal", "9"),
    ],
)
def test_units_convert_by_published_factors(unit: str, symbol: str, text: str, exact: str) -> None:
    near = Fraction(5, 10**9)
    low, high = str(Fraction(exact) - near), str(Fraction(exact) + near)
    assert marked(numeric("0", low, high, unit, symbol), text).share == 1


def test_a_number_in_a_unit_no_longer_listed_is_still_marked() -> None:
    gone = numeric("4", "3.9", "4.1", "old_unit", "ou")
    assert [marked(gone, text).status for text in ("4", "4 ou", "5 ou", "4 mm")] == [
        "right",
        "right",
        "wrong",
        "illegible",
    ]


@pytest.mark.parametrize(
    ("low", "high", "passes", "fails"),
    [
        (None, "0.90", "0.90", "0.91"),
        ("0.90", None, "0.90", "0.89"),
        ("385/3", "386/3", "128.5", "128"),
    ],
)
def test_limits_are_one_sided_and_ends_may_be_fractions(
    low: str | None, high: str | None, passes: str, fails: str
) -> None:
    assert marked(numeric("0.90", low, high), passes).share == 1
    assert marked(numeric("0.90", low, high), fails).share == 0


@pytest.mark.parametrize(
    ("text", "says"), [("42", "You multiplied."), ("0.0355 cm", None), ("35.5", "Thinner.")]
)
def test_a_known_slip_is_named_also_in_another_unit(text: str, says: str | None) -> None:
    assert [f.text for f in marked(WET, text).went_wrong if f.about == "slip"] == (
        [says] if says else []
    )


@pytest.mark.parametrize(
    ("text", "fewest", "most"),
    [
        ("0.00450", 3, 3),
        ("1200", 2, 4),
        ("1200.", 4, 4),
        ("1.20e3", 3, 3),
        ("100", 1, 3),
        ("12.50", 4, 4),
        ("-0.030", 2, 2),
        ("12,50", 4, 4),
    ],
)
def test_significant_figures_are_counted_as_written(text: str, fewest: int, most: int) -> None:
    found = significant_figures(text)
    assert found is not None
    assert (found.fewest, found.most) == (fewest, most)


@pytest.mark.parametrize("text", ["0", "0.00", "3/4", "", "abc", "1 1/2"])
def test_zero_fractions_and_words_have_no_significant_figures(text: str) -> None:
    assert significant_figures(text) is None


@pytest.mark.parametrize(
    ("shown", "text", "says"),
    [
        ("12.5", "12", "You wrote 2 figures; the key has 3."),
        ("12.5", "12.50", "More figures than asked: the answer goes to the nearest 0.1."),
        ("12.5", "12.5", None),
        ("1200", "1230", None),
        ("12.5", "25/2", None),
    ],
)
def test_figures_are_feedback_and_cost_nothing(shown: str, text: str, says: str | None) -> None:
    mark = marked(numeric(shown, "10", "1300", step="0.1"), text)
    assert mark.share == 1
    assert [f.text for f in mark.notes if f.about == "figures"] == ([says] if says else [])


@pytest.mark.parametrize("name", UNITS)
def test_every_unit_is_recognised_by_its_name_and_symbol(name: str) -> None:
    unit = unit_named(name)
    for spelling in filter(None, (unit.name, unit.symbol, unit.singular)):
        assert unit_of_text(spelling, unit) == unit
        assert unit_of_text(spelling.upper(), unit) == unit


def test_no_spelling_means_two_units() -> None:
    bare = unit_named("one")
    spellings = {plain_spelling(u.symbol) for u in UNITS.values() if u.symbol}
    for spelling in spellings:
        found = unit_of_text(spelling, bare)
        assert found is not None
        assert plain_spelling(found.symbol) == spelling
    symbols = [plain_spelling(u.symbol) for u in UNITS.values() if u.symbol]
    # a step of the Fahrenheit scale is shown as the scale is, and told apart by what is asked
    assert sorted(symbols) == sorted([*spellings, "degf"])
    step = unit_named("degF_diff")
    for typed in ("°F", "F", "°F difference"):
        assert unit_of_text(typed, step) == step
        assert unit_of_text(typed, unit_named("degC")) in (unit_named("degF"), step)
    assert unit_of_text("°F", unit_named("degC")) == unit_named("degF")


VALUES = st.fractions(min_value=Fraction(1, 1000), max_value=10**5, max_denominator=1000)
NOT_BY_FACTOR = {"rpm", "opm"}
LONGEST = 60
ALIKE = [
    (a, b)
    for a in UNITS.values()
    for b in UNITS.values()
    if a.agrees_with(b) and a.dimension not in (BARE, TEMPERATURE)
    if a.symbol and b.symbol and not {a.name, b.name} & NOT_BY_FACTOR
]


@given(VALUES, st.sampled_from(ALIKE))
def test_a_right_answer_is_right_in_every_unit_of_its_kind(
    value: Fraction, units: tuple[Unit, Unit]
) -> None:
    asked, other = units
    number = value * asked.factor / other.factor
    text = f"{number.numerator}/{number.denominator} {other.symbol}"
    exact = number_text(value)
    mark = marked(numeric("1", exact, exact, asked.name, asked.symbol), text)
    assert mark.status == ("right" if len(text) <= LONGEST else "illegible")


@given(st.text(max_size=70))
def test_any_text_gets_a_mark_of_nothing_or_everything(text: str) -> None:
    assert marked(WET, text).share in (0, 1)
