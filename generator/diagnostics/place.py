"""Where in the author's files something stands."""

from dataclasses import dataclass


@dataclass(frozen=True, slots=True, order=True)
class Place:
    """A spot in a text file.

    path    path as the author would type it, with forward slashes
    line    counted from 1
    column  counted in characters from 1
    """

    path: str
    line: int
    column: int

    def shifted(self, columns: int) -> "Place":
        """Return the place some columns to the right on the same line."""
        return Place(self.path, self.line, self.column + columns)

    def __str__(self) -> str:
        return f"{self.path}:{self.line}:{self.column}"
