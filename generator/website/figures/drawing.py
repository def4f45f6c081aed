"""The few shapes that computed figures are drawn with, as text of SVG."""

from collections.abc import Iterable
from html import escape

TEXT_SIZE = 14


def figure_frame(name: str, title: str, says: str, height: float, shapes: Iterable[str]) -> str:
    """Put shapes into a picture 360 wide, with a title and a description for those who hear it."""
    return (
        f'<svg viewBox="0 0 360 {_short(height)}" role="img" '
        f'aria-labelledby="{name}-title {name}-says">'
        f'<title id="{name}-title">{escape(title)}</title>'
        f'<desc id="{name}-says">{escape(says)}</desc>'
        f"{''.join(shapes)}</svg>"
    )


def box(x: float, y: float, width: float, height: float, kind: str) -> str:
    """Draw a filled box; kind is soft, mid, dark or ghost."""
    return (
        f'<rect class="{kind}" x="{_short(x)}" y="{_short(y)}" '
        f'width="{_short(width)}" height="{_short(height)}"/>'
    )


def line(x: float, y: float, to_x: float, to_y: float, kind: str = "line") -> str:
    """Draw a straight line; kind is line, thin or dashed."""
    return (
        f'<line class="{kind}" x1="{_short(x)}" y1="{_short(y)}" '
        f'x2="{_short(to_x)}" y2="{_short(to_y)}"/>'
    )


def path(points: Iterable[tuple[float, float]], kind: str = "line") -> str:
    """Draw a line through points."""
    steps = "L".join(f"{_short(x)} {_short(y)}" for x, y in points)
    return f'<path class="{kind}" d="M{steps}" fill="none"/>'


def words(
    x: float, y: float, text: str, side: str = "start", strong: bool = False, size: int = TEXT_SIZE
) -> str:
    """Write a line of text; side is start, middle or end."""
    weight = ' font-weight="700"' if strong else ""
    return (
        f'<text x="{_short(x)}" y="{_short(y)}" text-anchor="{side}" font-size="{size}"'
        f'{weight} fill="currentColor" font-family="inherit">{escape(text)}</text>'
    )


def _short(number: float) -> str:
    return f"{number:.2f}".rstrip("0").rstrip(".")
