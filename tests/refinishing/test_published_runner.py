"""The command that runs a file of published checks says which fail, and why."""

import subprocess
import sys
from pathlib import Path

from tests.refinishing.conftest import CHECKS
from tests.refinishing.published_checks import read_checks

ALONE = "tests/refinishing/test_published_checks.py"
ROOT = Path(__file__).parents[2]
GOOD = (
    "- {id: GOOD-1, calc: film.spread_metric, inputs: {volume_solids_pct: 40, dft_um: 50},"
    " expected: {m2_per_L: {value: 8.0, exact: 8.0, dp: 1, tol: 0.05}}}\n"
)


def run(file: Path, asked: str = "tests/refinishing") -> tuple[int, list[str]]:
    """Run the checks of a file as an instructor would; give exit code and printed lines.

    asked  the file of tests alone where what is claimed is what it prints; reading all of the
           others takes long
    """
    ran = subprocess.run(
        [
            sys.executable,
            "-m",
            "pytest",
            "-p",
            "no:cacheprovider",
            asked,
            "-k",
            "meet_a_published_check",
            "--published-checks",
            file,
        ],
        cwd=ROOT,
        capture_output=True,
        text=True,
        check=False,
    )
    return ran.returncode, (ran.stdout + ran.stderr).splitlines()


def test_every_published_check_of_the_project_is_run():
    code, lines = run(CHECKS)
    number = len(read_checks(CHECKS))
    assert number >= 244
    assert code == 0
    assert f"{number} passed, 0 failed" in lines


def test_wrong_values_and_unknown_calculations_fail_with_their_ids(tmp_path):
    file = tmp_path / "further.yml"
    file.write_text(
        "checks:\n"
        + GOOD
        + GOOD.replace("GOOD-1", "WRONG-EXACT").replace("exact: 8.0", "exact: 8.2")
        + GOOD.replace("GOOD-1", "WRONG-SHOWN").replace("value: 8.0", "value: 8.1")
        + GOOD.replace("GOOD-1", "UNKNOWN").replace("film.spread_metric", "film.spread_metrik"),
        encoding="utf-8",
    )
    code, lines = run(file, ALONE)
    printed = "\n".join(lines)
    assert code == 1
    assert "1 passed, 3 failed" in lines
    assert "failed: WRONG-EXACT, WRONG-SHOWN, UNKNOWN" in lines
    assert "WRONG-EXACT: m2_per_L is 8, expected 8.2 within 0.05." in printed
    assert "WRONG-SHOWN: m2_per_L is shown as 8.1, which is not 8.0 rounded." in printed
    unknown = "no relation does the calculation 'film.spread_metrik'; did you mean"
    assert f"UNKNOWN: {unknown} 'film.spread_metric'?" in printed


def test_a_file_without_checks_is_refused_with_one_sentence(tmp_path):
    file = tmp_path / "empty.yml"
    file.write_text("rows: []\n", encoding="utf-8")
    code, lines = run(file, ALONE)
    assert code not in (0, 1)
    assert any(line.endswith("empty.yml holds no list of checks") for line in lines)
