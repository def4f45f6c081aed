"""Turn the pages of a PDF into grey pictures, as a printer and a scanner would."""

import shutil
import subprocess
from pathlib import Path
from tempfile import TemporaryDirectory

import numpy as np
import pytest

DOTS_PER_MM = 8
DRAWER = shutil.which("pdftoppm")
needs_pictures = pytest.mark.skipif(DRAWER is None, reason="pdftoppm draws the pages")


def pictures(document: bytes, dots_per_mm: float = DOTS_PER_MM) -> list[np.ndarray]:
    """Draw every page: rows of grey values from 0 (black) to 255 (paper)."""
    with TemporaryDirectory() as folder:
        resolution = str(dots_per_mm * 25.4)
        command = [str(DRAWER), "-gray", "-r", resolution, "-", f"{folder}/page"]
        subprocess.run(command, input=document, check=True)
        return [_grey(path.read_bytes()) for path in sorted(Path(folder).iterdir())]


def _grey(drawn: bytes) -> np.ndarray:
    kind, size, _most, values = drawn.split(b"\n", 3)
    assert kind == b"P5"
    width, height = map(int, size.split())
    return np.frombuffer(values, np.uint8).reshape(height, width)
