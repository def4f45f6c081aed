"""`python -m tests.damage [COUNT]`: the whole table, with so many damages of each kind (25)."""

import sys
from pathlib import Path
from tempfile import TemporaryDirectory

from pytest import MonkeyPatch

from tests.damage.damage import draw
from tests.damage.judging import judge
from tests.damage.kinds import KINDS
from tests.damage.papers import copied_project, real_files
from tests.damage.reuse import Reused
from tests.damage.table import table_text


def main(count: int) -> str:
    """Return the table for a number of damages of each kind."""
    with TemporaryDirectory() as folder, MonkeyPatch.context() as patch:
        reused = Reused(copied_project(Path(folder)), patch)
        judged = [judge(damage, reused) for damage in draw(KINDS, real_files(), count)]
    return table_text(judged)


if __name__ == "__main__":
    print(main(int(sys.argv[1]) if len(sys.argv) > 1 else 25))
