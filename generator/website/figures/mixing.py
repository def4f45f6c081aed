"""The mixing cup: where the marks stand."""

from fractions import Fraction

from generator.quantities import number_text
from generator.refinishing import CupMarks
from generator.refinishing import cup_marks as marks_of
from generator.website.figures.drawing import box, figure_frame, line, words

BASE = Fraction(300)
PARTS = (Fraction(4), Fraction(1), Fraction(1))
FULL = 500
FLOOR, TALL = 290.0, 240.0


def cup_marks() -> str:
    """Draw a straight-sided cup filled in three pours to the marks of a ratio."""
    marks: CupMarks = marks_of(BASE, PARTS)
    pours = (
        ("base", Fraction(0), marks.after_base, "mid"),
        ("hardener", marks.after_base, marks.after_hardener, "dark"),
        ("thinner", marks.after_hardener, marks.after_thinner, "soft"),
    )
    shapes = []
    for name, start, end, kind in pours:
        top = _height(end)
        shapes.append(box(40, top, 130, _height(start) - top, kind))
        shapes.append(line(30, top, 186, top))
        shapes.append(words(194, top + 5, f"{number_text(end)}\u00a0mL", strong=True))
        shapes.append(words(262, top + 5, f"after {name}"))
    shapes += [line(40, FLOOR - TALL - 8, 40, FLOOR), line(170, FLOOR - TALL - 8, 170, FLOOR)]
    shapes.append(line(40, FLOOR, 170, FLOOR))
    shapes.append(words(40, 18, "4 : 1 : 1 on 300 mL of base", strong=True))
    return figure_frame(
        "cup_marks",
        "Marks on the mixing cup for 4:1:1",
        "Fill with base to "
        + ", with hardener to ".join(number_text(mark) for mark in marks[:2])
        + f" and with thinner to {number_text(marks.after_thinner)} mL.",
        304,
        shapes,
    )


def _height(volume: Fraction) -> float:
    return FLOOR - float(volume) / FULL * TALL
