"""What a compressor gives and a shop asks for, against a pump-up test and a sizing example."""

from fractions import Fraction

import pint
import pytest
from hypothesis import given
from hypothesis import strategies as st

from generator.diagnostics import OutsideValidity
from generator.refinishing import CATALOGUE
from generator.refinishing.air_compressor import compressor_demand, pump_up_flow, tool_air

REGISTRY = pint.UnitRegistry()
FLOWS = st.integers(1, 300).map(lambda tenths: Fraction(tenths, 10))
FINE = Fraction("0.02")


def exact(*numbers: object) -> tuple[Fraction, ...]:
    return tuple(Fraction(str(number)) for number in numbers)


@pytest.mark.parametrize(
    ("numbers", "expected"),
    [
        ((25, 17, 35), "6.63"),  # inputs of the published pump-up test, 85 to 102 psi
        ((60, 30, 70), "14.03"),  # method of the pump-up test, our numbers
    ],
)
def test_free_air_from_a_pump_up_test(numbers, expected):
    assert abs(pump_up_flow(*exact(*numbers)) - Fraction(expected)) <= FINE


def test_the_shop_of_the_sizing_example():
    # body-shop sizing example: 23.2 cfm, with a quarter on top 29
    tools = [tool_air(*exact(*kind)) for kind in ((8, 60, 2), (12, 80, 1), (4, 25, 2))]
    found = compressor_demand(*tools, Fraction(2), Fraction(25))
    assert found == (Fraction("23.2"), 29)


def test_the_required_flow_is_a_minimum_rounded_up():
    facts = CATALOGUE["compressor_demand"].facts
    assert facts.rounding == {"required": "up"}
    assert facts.limit == {"required": "minimum"}


@given(st.integers(5, 200), st.integers(1, 100), st.integers(1, 600))
def test_the_pump_up_flow_agrees_with_a_general_units_library(tank, rise, time):
    # pint as oracle
    free = REGISTRY.Quantity(tank, "US_liquid_gallon") * rise / 14.7
    oracle = (free / REGISTRY.Quantity(time, "second")).to("foot**3/minute").magnitude
    assert float(pump_up_flow(*exact(tank, rise, time))) == pytest.approx(oracle)


@given(FLOWS, st.integers(1, 100).map(Fraction), st.integers(1, 9).map(Fraction))
def test_tools_of_a_kind_add_up(flow, duty, count):
    assert tool_air(flow, duty, count) == count * tool_air(flow, duty, Fraction(1))
    assert tool_air(flow, duty, count) <= flow * count


@given(FLOWS, FLOWS, FLOWS, st.integers(0, 100).map(Fraction))
def test_the_order_of_the_tools_does_not_matter(first, second, third, margin):
    found = compressor_demand(first, second, third, margin=margin)
    assert found == compressor_demand(third, first, second, margin=margin)
    assert found.required >= found.average


@pytest.mark.parametrize(
    ("flow", "duty", "count", "words"),
    [
        (8, 0, 1, "share"),
        (8, 101, 1, "share"),
        (8, 60, "1.5", "number of tools"),
        (0, 60, 1, "air"),
    ],
)
def test_tools_no_shop_has_are_refused(flow, duty, count, words):
    with pytest.raises(OutsideValidity, match=words):
        tool_air(*exact(flow, duty, count))


@pytest.mark.parametrize("numbers", [(0, 17, 35), (25, 0, 35), (25, 17, 0), (25, 17, 35, 0)])
def test_tests_that_pump_nothing_up_are_refused(numbers):
    with pytest.raises(OutsideValidity):
        pump_up_flow(*exact(*numbers))


def test_breathing_air_is_planned_apart():
    assert "Breathing air is not shop air" in CATALOGUE["compressor_demand"].facts.caution
