"""A panel under guide coat, one patch a question: the mist that is left is what was not right."""

from collections.abc import Sequence
from fractions import Fraction
from hashlib import sha256

from generator.reports.answered_papers import Answer

PATCH_WIDTH, HEIGHT = 40, 26
# specks on a patch of which nothing was right
SPECKS = 90
EDGE = 1
COARSE_FROM = 0.86


def panel_strip(answers: Sequence[Answer]) -> str:
    """Draw the strip of some answers as SVG, the same for the same answers.

    Colours stand on the shapes for paper; a page may set its own by the classes.
    """
    width = PATCH_WIDTH * len(answers)
    patches = "".join(_patch(answer, place) for place, answer in enumerate(answers))
    return (
        f'<svg xmlns="http://www.w3.org/2000/svg" class="panel" viewBox="0 0 {width} {HEIGHT}">'
        f"{patches}"
        f'<rect class="edge" x="0.5" y="0.5" width="{width - 1}" height="{HEIGHT - 1}" fill="none" '
        'stroke="#14181a"/></svg>'
    )


def panel_in_words(answers: Sequence[Answer]) -> str:
    """Say what the strip shows, by question numbers."""
    groups = (
        ("Clean", [a for a in answers if not a.left_out and a.mark.share == 1]),
        ("Thin mist", [a for a in answers if not a.left_out and 0 < a.mark.share < 1]),
        ("Mist", [a for a in answers if not a.left_out and a.lost and a.mark.share == 0]),
        ("Not marked yet", [a for a in answers if not a.left_out and a.waits]),
        ("Left out of the marks", [a for a in answers if a.left_out]),
    )
    said = (
        f"{words}: {', '.join(str(answer.number) for answer in found)}."
        for words, found in groups
        if found
    )
    return " ".join(said)


def _patch(answer: Answer, place: int) -> str:
    left = place * PATCH_WIDTH
    frame = f'x="{left}" y="0" width="{PATCH_WIDTH}" height="{HEIGHT}"'
    seam = f'<path class="seam" d="M{left} 0v{HEIGHT}" stroke="#14181a" stroke-opacity=".45"/>'
    if answer.left_out or answer.waits:
        crossed = f"M{left + 6} {HEIGHT - 6}L{left + PATCH_WIDTH - 6} 6"
        return (
            f'<rect class="open" {frame} fill="#ffffff"/>'
            f'<path class="crossed" d="{crossed}" stroke="#6b7472" stroke-dasharray="3 3"/>{seam}'
        )
    if answer.mark.share == 1:
        return f'<rect class="clean" {frame} fill="#f2f4f0"/>{_strokes(left)}{seam}'
    return f'<rect class="primer" {frame} fill="#a4aaa5"/>{_mist(answer, left)}{seam}'


def _strokes(left: int) -> str:
    """Draw the marks of the block on a clean patch."""
    lean = 8
    starts = range(left + EDGE, left + PATCH_WIDTH - lean - EDGE, 4)
    lines = "".join(f"M{x + lean} 1.5L{x} {HEIGHT - 1.5}" for x in starts)
    return f'<path class="stroke" d="{lines}" fill="none" stroke="#c3c9c3" stroke-width=".8"/>'


def _mist(answer: Answer, left: int) -> str:
    fine: list[str] = []
    coarse: list[str] = []
    for speck in range(int(SPECKS * (Fraction(1) - answer.mark.share))):
        across, down, size = _three_numbers(f"{answer.number} {speck}")
        x = left + EDGE + across * (PATCH_WIDTH - 2 * EDGE)
        y = EDGE + down * (HEIGHT - 2 * EDGE)
        (coarse if size > COARSE_FROM else fine).append(f"M{x:.1f} {y:.1f}h.01")
    return "".join(
        f'<path class="{kind}" d="{"".join(spots)}" fill="none" stroke="#1d2223" '
        f'stroke-linecap="round" stroke-width="{size}"/>'
        for kind, spots, size in (("fine", fine, 1.3), ("coarse", coarse, 2.5))
        if spots
    )


def _three_numbers(seed: str) -> tuple[float, float, float]:
    digest = sha256(f"mist {seed}".encode()).digest()
    first, second, third = (int.from_bytes(digest[i : i + 4], "big") / 2**32 for i in (0, 4, 8))
    return first, second, third
