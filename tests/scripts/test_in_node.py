"""The theme's scripts in Node: their unit tests, and the vectors they share with our marker."""

import os
import shutil
import subprocess
from collections import Counter
from fractions import Fraction
from pathlib import Path

import pytest

from tests.marking.vectors import marking_vectors
from tests.scripts.shared_files import write_shared

HERE = Path(__file__).parent


def test_the_scripts_pass_their_own_tests(tmp_path: Path) -> None:
    if shutil.which("node") is None:
        pytest.skip("Node is not installed: the unit tests of the theme's scripts need it")
    write_shared(tmp_path)
    ran = subprocess.run(
        ["node", "--test"],
        cwd=HERE,
        env={**os.environ, "GUIDECOAT_SHARED": str(tmp_path)},
        capture_output=True,
        text=True,
        check=False,
    )
    assert ran.returncode == 0, ran.stdout + ran.stderr
    assert "skipped 0" in ran.stdout


def test_the_shared_vectors_are_many_of_every_kind_and_not_all_right_or_wrong() -> None:
    vectors = marking_vectors()
    kinds = Counter(vector.question["kind"] for vector in vectors)
    assert len(vectors) >= 2000
    assert set(kinds) == {"numeric", "choice", "multiple_response", "order", "match", "written"}
    for kind in kinds:
        shares = {vector.expected for vector in vectors if vector.question["kind"] == kind}
        assert {Fraction(0), Fraction(1)} <= shares, kind
