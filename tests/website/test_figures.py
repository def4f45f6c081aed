"""Computed figures say the numbers that the relations give."""

import xml.etree.ElementTree as ElementTree
from fractions import Fraction

import pytest

from generator.refinishing.abrasives import grade_size
from generator.refinishing.climate import dew_point
from generator.refinishing.spray_pattern import spray_passes
from generator.website.figures.catalog import COMPUTED, drawn_figure
from generator.website.figures.gun import FAN, HALF, PANEL, QUARTER, bands
from tests.website.small_course import small_course

SVG = "{http://www.w3.org/2000/svg}"


def parsed(name: str) -> ElementTree.Element:
    """Parse a computed figure as XML."""
    drawing = drawn_figure(name, small_course())
    assert drawing is not None
    return ElementTree.fromstring(drawing.replace("<svg ", f'<svg xmlns="{SVG[1:-1]}" ', 1))


def texts(name: str) -> list[str]:
    """Read every line of text in a figure."""
    return [element.text or "" for element in parsed(name).iter(f"{SVG}text")]


@pytest.mark.parametrize("name", COMPUTED)
def test_a_computed_figure_has_title_description_and_no_fixed_size(name: str) -> None:
    root = parsed(name)
    labels = (root.get("aria-labelledby") or "").split()
    named = {element.get("id") for element in root if element.tag in (f"{SVG}title", f"{SVG}desc")}
    assert root.get("role") == "img"
    assert set(labels) == named and len(labels) == 2
    assert root.get("width") is None and root.get("height") is None


@pytest.mark.parametrize("name", COMPUTED)
def test_every_shape_and_text_of_a_computed_figure_lies_inside_it(name: str) -> None:
    root = parsed(name)
    _, _, width, height = (float(part) for part in (root.get("viewBox") or "").split())
    for shape in root.iter(f"{SVG}rect"):
        left, top = float(shape.get("x") or 0), float(shape.get("y") or 0)
        assert left >= 0 and top >= 0
        assert left + float(shape.get("width") or 0) <= width
        assert top + float(shape.get("height") or 0) <= height
    for line in root.iter(f"{SVG}text"):
        assert 10 <= float(line.get("y") or 0) <= height
        assert float(line.get("font-size") or 0) >= 14


def test_bars_of_the_grade_ladder_are_to_scale() -> None:
    """Sizes from the published P-grade table."""
    bars = [float(bar.get("width") or 0) for bar in parsed("grade_ladder").iter(f"{SVG}rect")]
    names = [text for text in texts("grade_ladder") if text.startswith("P")]
    assert names[0] == "P80" and len(names) == len(bars)
    for name, bar in zip(names, bars, strict=True):
        share = grade_size(Fraction(name[1:])) / grade_size(Fraction(80))
        assert bar / bars[0] == pytest.approx(float(share), abs=0.001)


def test_the_cup_is_marked_at_the_running_sum_of_the_parts() -> None:
    """4:1:1 on 300 mL of base; arithmetic of parts, common practice."""
    marks = [text for text in texts("cup_marks") if text.endswith("mL")]
    assert marks == ["300\u00a0mL", "375\u00a0mL", "450\u00a0mL"]


def test_wet_film_leaves_its_share_of_solids() -> None:
    """Dry film is wet film times volume solids; common practice."""
    assert [text for text in texts("wet_dry_bars") if text in ("30", "45", "60")] == [
        "30",
        "45",
        "60",
    ]


def test_the_stack_ends_at_the_sum_less_what_was_sanded_off() -> None:
    """20 + 60 - 25 + 15 + 50 = 120; arithmetic."""
    assert "120\u00a0µm" in texts("film_stack")
    assert "Surfacer 35\u00a0µm" in texts("film_stack")


def test_the_dew_chart_names_the_dew_point_of_its_example() -> None:
    """WMO-No. 8, annex 4.B: air at 20 °C and 60 % has its dew point at 12 °C."""
    says = next(parsed("dew_chart").iter(f"{SVG}desc")).text or ""
    assert float(dew_point(Fraction(20), Fraction(60))) == pytest.approx(12.0, abs=0.05)
    assert "dew point near 12 °C" in says


def test_the_hold_begins_when_the_panel_is_warm_and_not_when_it_goes_in() -> None:
    """Oven air at 70 °C, panel from 20 to 60 °C with 8 min: 12.9 min; derived apart."""
    assert "after 12.9 min" in texts("heat_up")


def test_half_overlap_is_even_and_quarter_overlap_is_not() -> None:
    """Half overlap after TM 1-1500-344-23-2, A-8.2; the count is geometry."""
    assert {layers for _, _, layers in bands(HALF)} == {2}
    assert [layers for _, _, layers in bands(QUARTER)] == [1, 2, 1, 2, 1, 2, 1, 2, 1]
    plan = spray_passes(Fraction(PANEL), Fraction(FAN), Fraction(HALF))
    drawn = [text for text in texts("overlap_bands") if text == str(int(plan.passes))]
    assert drawn == ["7"]
