"""Second opinions from outside: a library of fluid properties, integration and root finding.

Sources: CoolProp's moist-air and solvent properties; SciPy's integration of the differential
equations behind the closed forms. Each is skipped only where its library is not installed.
"""

import math
from fractions import Fraction
from types import ModuleType

import pytest

from generator.refinishing.catalogue import CATALOGUE

AIR = [(20, 50), (20, 70), (25, 60), (16, 71), (10, 85), (30, 40)]
THERMOMETERS = [(20, 15), (21, 17), (20, 12), (28, 20)]
ONE_ATMOSPHERE = 101_325
CUBIC_FOOT = 0.3048**3
US_GALLON = 231 * 0.0254**3


def number(relation: str, result: str = "", **inputs: float) -> float:
    """Return one result of a relation, in its own unit."""
    answer = CATALOGUE[relation].call({name: Fraction(value) for name, value in inputs.items()})
    return float(answer[result or relation])


@pytest.fixture(scope="module")
def moist_air() -> ModuleType:
    return pytest.importorskip("CoolProp.HumidAirProp", reason="CoolProp is not installed")


@pytest.fixture(scope="module")
def fluids() -> ModuleType:
    return pytest.importorskip("CoolProp.CoolProp", reason="CoolProp is not installed")


@pytest.fixture(scope="module")
def integrate() -> ModuleType:
    return pytest.importorskip("scipy.integrate", reason="SciPy is not installed")


@pytest.fixture(scope="module")
def optimize() -> ModuleType:
    return pytest.importorskip("scipy.optimize", reason="SciPy is not installed")


@pytest.mark.parametrize(("air", "humidity"), AIR)
def test_a_dew_point_lies_within_a_twentieth_of_a_kelvin_of_coolprop(moist_air, air, humidity):
    theirs = moist_air.HAPropsSI(
        "DewPoint", "T", air + 273.15, "R", humidity / 100, "P", ONE_ATMOSPHERE
    )
    ours = number("dew_point", air_temperature=air, humidity=humidity)
    assert ours == pytest.approx(theirs - 273.15, abs=0.05)


@pytest.mark.parametrize(("dry", "wet"), THERMOMETERS)
def test_humidity_from_two_thermometers_is_within_one_percent_of_coolprop(moist_air, dry, wet):
    theirs = moist_air.HAPropsSI(
        "RelHum", "T", dry + 273.15, "Twb", wet + 273.15, "P", ONE_ATMOSPHERE
    )
    ours = number("humidity_from_wet_bulb", dry_bulb=dry, wet_bulb=wet)
    assert ours == pytest.approx(100 * theirs, abs=1.0)


def test_the_vapour_of_a_gallon_of_toluene_is_what_coolprop_says(fluids):
    # a spilled US gallon in a large room, against the density of the liquid and the molar mass
    kelvins = 273.15 + 20
    density = fluids.PropsSI("D", "T", kelvins, "P", ONE_ATMOSPHERE, "Toluene")
    molar_mass = fluids.PropsSI("molar_mass", "Toluene")
    theirs = US_GALLON * density / molar_mass * 8.314462618 * kelvins / ONE_ATMOSPHERE
    ours = number(
        "spill_vapour",
        "vapour",
        volume=US_GALLON * 1e6,
        density=density / 1000,
        molecular_mass=molar_mass * 1000,
        room=1000,
        lower_limit=1.1,
    )
    assert ours == pytest.approx(theirs, rel=1e-9)
    # Table G-11 prints 30.4 cubic feet, from memory
    assert theirs / CUBIC_FOOT == pytest.approx(30.4, abs=0.2)


def test_the_purge_time_comes_out_of_integrating_the_room(integrate):
    volume, flow, start, end, efficiency = 3024.0, 9000.0, 400.0, 20.0, 0.3

    def reached(_: float, level: list[float]) -> float:
        return level[0] - end

    reached.terminal = True
    run = integrate.solve_ivp(
        lambda _, level: [-efficiency * flow / volume * level[0]],
        (0, 60),
        [start],
        events=reached,
        rtol=1e-10,
        atol=1e-10,
    )
    ours = number(
        "dilution_time",
        volume=volume,
        flow=flow,
        start_level=start,
        end_level=end,
        mixing_efficiency=efficiency,
    )
    assert ours == pytest.approx(run.t_events[0][0], rel=1e-6)


def test_the_heat_up_time_comes_out_of_integrating_the_panel(integrate):
    air, start, wanted, constant = 70.0, 20.0, 60.0, 8.0

    def reached(_: float, panel: list[float]) -> float:
        return panel[0] - wanted

    reached.terminal = True
    run = integrate.solve_ivp(
        lambda _, panel: [(air - panel[0]) / constant],
        (0, 120),
        [start],
        events=reached,
        rtol=1e-10,
        atol=1e-10,
    )
    ours = number(
        "oven_time",
        "heat_up",
        oven_air=air,
        panel_start=start,
        panel_wanted=wanted,
        time_constant=constant,
        hold=30,
    )
    assert ours == pytest.approx(run.t_events[0][0], rel=1e-6)


@pytest.mark.parametrize("far", [700, 1000, 1500])
def test_the_heat_of_a_wide_lamp_comes_out_of_adding_up_its_rings(integrate, far):
    radius, near = 300.0, 500.0

    def heat(distance: float) -> float:
        # a ring of an even, diffuse source: both cosines are distance over slant
        ring, _ = integrate.quad(
            lambda r: 2 * math.pi * r * distance**2 / (distance**2 + r**2) ** 2, 0, radius
        )
        return float(ring)

    ours = number("disc_lamp_ratio", distance=near, new_distance=far, emitter_radius=radius)
    assert ours == pytest.approx(heat(far) / heat(near), rel=1e-9)


@pytest.mark.parametrize(("orifice", "viscosity"), [(3, 20), (4, 100), (4, 60), (6, 400)])
def test_the_seconds_of_an_iso_cup_are_the_root_of_its_line(optimize, orifice, viscosity):
    seconds = optimize.brentq(
        lambda t: number("iso_cup_viscosity", orifice=orifice, time=t) - viscosity, 30, 100
    )
    ours = number("iso_cup_seconds", orifice=orifice, viscosity=viscosity)
    assert ours == pytest.approx(seconds, rel=1e-9)


def test_the_energy_behind_the_ten_degree_rule_is_the_root_of_the_cure_time(optimize):
    energy = optimize.brentq(
        lambda e: (
            number(
                "cure_time_by_energy",
                reference_time=60,
                reference_temperature=20,
                new_temperature=30,
                activation_energy=e,
            )
            - 30
        ),
        10,
        200,
    )
    ours = number("energy_for_doubling", low_temperature=20, high_temperature=30)
    assert ours == pytest.approx(energy, rel=1e-6)
