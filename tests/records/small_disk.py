"""A disk that is soon full."""

import shutil
import subprocess
from collections.abc import Iterator
from pathlib import Path

import pytest


@pytest.fixture
def small_disk(tmp_path: Path) -> Iterator[Path]:
    """Mount a disk of two megabytes where the machine lets us."""
    place = tmp_path / "disk"
    place.mkdir()
    mount = shutil.which("mount")
    made = mount and subprocess.run(
        [mount, "-t", "tmpfs", "-o", "size=2m", "tmpfs", str(place)],
        capture_output=True,
        check=False,
    )
    if not made or made.returncode:
        pytest.skip("this machine does not let us mount a small disk")
    yield place
    subprocess.run(["umount", str(place)], check=True)
