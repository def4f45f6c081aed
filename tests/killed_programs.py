"""Runs a program of the tests that kills writers, and gives what it found."""

import json
import os
import subprocess
import sys
from pathlib import Path
from typing import Any

import pytest

needs_fork = pytest.mark.skipif(not hasattr(os, "fork"), reason="this system cannot fork")


def what_it_found(program: Path, folder: Path, rounds: int) -> dict[str, Any]:
    """Let a program kill so many writers in a folder; it must end well and count its rounds."""
    ended = subprocess.run(
        [sys.executable, str(program), str(folder), str(rounds), "20260302"],
        capture_output=True,
        text=True,
        timeout=600,
        check=False,
    )
    assert ended.returncode == 0, ended.stderr
    found: dict[str, Any] = json.loads(ended.stdout)
    assert found["rounds"] == rounds
    return found
