"""The progress picture: a panel under guide coat, one patch for each objective.

The page's script hides mist from a patch as its questions are answered; without script the
whole panel stays misted, which is also what a new learner sees.
"""

from collections.abc import Iterable, Sequence
from functools import cache
from hashlib import sha256

from generator.bank.models import Module
from generator.website.context import Course, objective_id

WIDTH, HEIGHT = 360, 44
# tile widths without a common factor: the three layers together do not repeat along a panel
TILE_WIDTHS = (101, 139, 173)
MIST_LAYERS = len(TILE_WIDTHS)
SPECKS_A_UNIT = 1.9
ITEMS_TO_MASTER = 3


@cache
def mist_patterns() -> str:
    """Draw the speck tiles that every panel on a page uses."""
    layers = "".join(_layer(layer) for layer in range(1, MIST_LAYERS + 1))
    blocked = (
        '<pattern id="blocked" width="5" height="5" patternUnits="userSpaceOnUse" '
        'patternTransform="rotate(28)"><path d="M.6 0v5M2.2 0v5M3.5 0v5" class="stroke"/></pattern>'
    )
    return (
        '<svg class="patterns" aria-hidden="true" focusable="false" width="0" height="0">'
        f"<defs>{layers}{blocked}</defs></svg>"
    )


def panel_strip(module: Module, course: Course) -> str:
    """Draw the panel of one module; a patch names its objective and the answers that clean it."""
    total = len(module.objectives)
    return _strip(
        _patch(objective_id(module, entry), course.items_of(module, entry), number, total)
        for number, entry in enumerate(module.objectives)
    )


def question_strip(numbers: Sequence[int]) -> str:
    """Draw the panel of a form: one patch for each question, clean once it is answered."""
    return _strip(
        _patch(str(number), 1, place, len(numbers)) for place, number in enumerate(numbers)
    )


def _strip(patches: Iterable[str]) -> str:
    return (
        f'<svg class="panel" viewBox="0 0 {WIDTH} {HEIGHT}" preserveAspectRatio="none" '
        'aria-hidden="true" focusable="false">'
        f'<rect class="primer" width="{WIDTH}" height="{HEIGHT}"/>{"".join(patches)}</svg>'
    )


def panel_strips(course: Course) -> dict[str, str]:
    """Draw the panel of each module that is taught here."""
    return {module.module: panel_strip(module, course) for module in course.taught_modules()}


def _patch(name: str, items: int, number: int, total: int) -> str:
    left = number * WIDTH / total
    frame = f'x="{left:.2f}" width="{WIDTH / total:.2f}" height="{HEIGHT}"'
    mist = "".join(
        f'<rect class="mist mist-{layer}" {frame} fill="url(#mist-{layer})"/>'
        for layer in range(1, MIST_LAYERS + 1)
    )
    need = min(ITEMS_TO_MASTER, items)
    return (
        f'<g class="patch" data-objective="{name}" data-need="{need}">'
        f'<rect class="clean" {frame}/><rect class="strokes" {frame} fill="url(#blocked)"/>'
        f'{mist}<path class="seam" d="M{left:.2f} 0v{HEIGHT}"/></g>'
    )


def _layer(layer: int) -> str:
    fine: list[str] = []
    coarse: list[str] = []
    width = TILE_WIDTHS[layer - 1]
    for speck in range(int(width * SPECKS_A_UNIT)):
        across, down, size = _three_numbers(f"mist {layer} {speck}")
        spot = f"M{across * width:.1f} {down * HEIGHT:.1f}h0"
        (coarse if size > 0.9 else fine).append(spot)
    return (
        f'<pattern id="mist-{layer}" width="{width}" height="{HEIGHT}" '
        f'patternUnits="userSpaceOnUse"><path class="fine" d="{"".join(fine)}"/>'
        f'<path class="coarse" d="{"".join(coarse)}"/></pattern>'
    )


def _three_numbers(seed: str) -> tuple[float, float, float]:
    digest = sha256(seed.encode()).digest()
    first, second, third = (int.from_bytes(digest[i : i + 4], "big") / 2**32 for i in (0, 4, 8))
    return first, second, third
