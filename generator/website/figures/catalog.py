"""Figures by name: drawn by hand beside the lessons, or computed from the relations."""

from collections.abc import Callable, Mapping

from generator.website.context import Course
from generator.website.figures.abrasives import grade_ladder
from generator.website.figures.climate import dew_chart
from generator.website.figures.film import film_stack, wet_dry_bars
from generator.website.figures.gun import overlap_bands
from generator.website.figures.health import noise_time, purge_curve
from generator.website.figures.heat import heat_up
from generator.website.figures.mixing import cup_marks

COMPUTED: Mapping[str, Callable[[], str]] = {
    "film_stack": film_stack,
    "grade_ladder": grade_ladder,
    "cup_marks": cup_marks,
    "dew_chart": dew_chart,
    "wet_dry_bars": wet_dry_bars,
    "purge_curve": purge_curve,
    "noise_time": noise_time,
    "heat_up": heat_up,
    "overlap_bands": overlap_bands,
}


def drawn_figure(name: str, course: Course) -> str | None:
    """Return the SVG of a figure; None when there is none."""
    if name in course.figures:
        return course.figures[name]
    return COMPUTED[name]() if name in COMPUTED else None
