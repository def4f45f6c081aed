"""Seeded drawing of numbers, letters and orders."""

from generator.questions.drawing.class_draws import draw_apart
from generator.questions.drawing.handed_out import LIKE_NEIGHBOUR, NEW_KEY, Draw, HandedOut
from generator.questions.drawing.lettering import (
    Answer,
    item_options,
    lettered,
    matched,
    relettered,
    unlike,
)
from generator.questions.drawing.numeric import (
    NothingToDraw,
    draw_of,
    draw_solution,
    numeric_key,
    prepared,
)
from generator.questions.drawing.ordering import (
    Scored,
    drawable_subsets,
    order_key,
    scored_item,
    scored_procedure,
)
from generator.questions.drawing.seeded_random import SeededRandom

__all__ = [
    "Answer",
    "Draw",
    "HandedOut",
    "LIKE_NEIGHBOUR",
    "NEW_KEY",
    "NothingToDraw",
    "Scored",
    "SeededRandom",
    "draw_apart",
    "draw_of",
    "draw_solution",
    "drawable_subsets",
    "item_options",
    "lettered",
    "matched",
    "numeric_key",
    "order_key",
    "prepared",
    "relettered",
    "scored_item",
    "scored_procedure",
    "unlike",
]
