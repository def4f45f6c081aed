"""Drawings that are computed from numbers."""

from generator.website.figures.catalog import drawn_figure
from generator.website.figures.figure_drawings import drawing_problems
from generator.website.figures.panel_picture import (
    mist_patterns,
    panel_strip,
    panel_strips,
    question_strip,
)

__all__ = [
    "drawing_problems",
    "drawn_figure",
    "mist_patterns",
    "panel_strip",
    "panel_strips",
    "question_strip",
]
