"""The grade ladder: particle sizes of P grades to scale."""

from fractions import Fraction

from generator.quantities import number_text
from generator.refinishing import grade_size
from generator.website.figures.drawing import box, figure_frame, words

GRADES = (80, 120, 180, 240, 320, 400, 500, 600, 800, 1000, 1500)
ROW = 27
LONGEST = 196


def grade_ladder() -> str:
    """Draw the mean particle size of common P grades as bars to scale."""
    sizes = [(grade, grade_size(Fraction(grade))) for grade in GRADES]
    largest = max(size for _, size in sizes)
    shapes = []
    for place, (grade, size) in enumerate(sizes):
        y = 8 + place * ROW
        length = float(size / largest) * LONGEST
        shapes.append(words(58, y + 16, f"P{grade}", "end", True))
        shapes.append(box(68, y + 2, length, 18, "dark" if place % 2 == 0 else "mid"))
        shapes.append(words(76 + length, y + 16, f"{number_text(size)}\u00a0µm"))
    return figure_frame(
        "grade_ladder",
        "Mean particle size of P grades",
        "; ".join(f"P{grade} {number_text(size)} µm" for grade, size in sizes),
        16 + ROW * len(sizes),
        shapes,
    )
