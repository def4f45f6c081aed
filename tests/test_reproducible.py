"""The same inputs give the same bytes, wherever and whenever the course is built."""

import pytest

from tests.real import ROOT, build_whole, contents
from tests.some import some

# the shared build is made with another hash seed, clock zone and locale
ELSEWHERE = {"PYTHONHASHSEED": "2", "TZ": "Asia/Tokyo", "LC_ALL": "C"}


@pytest.fixture(scope="module")
def built(real_project, tmp_path_factory):
    root = tmp_path_factory.mktemp("builds")
    forgetful = {**ELSEWHERE, "XDG_CACHE_HOME": str(root / "cache")}
    return real_project, build_whole(root / "trailer bay" / "second", forgetful)


@pytest.mark.parametrize("folder", ["site", "printed"])
def test_two_builds_of_the_same_inputs_are_the_same_to_the_byte(built, folder):
    one, two = (contents(project / folder) for project in built)
    assert one.keys() == two.keys()
    assert [name for name in one if one[name] != two[name]] == []


def test_the_builds_made_a_site_and_papers(built):
    for project in some(built):
        pages = [name for name in contents(project / "site") if name.endswith(".html")]
        papers = contents(project / "printed")
        assert len(pages) > 20
        # the specimen; two forms of four papers, their class key and the table for answers
        assert len(papers) == 3 + 2 * 4 + 2
        tables = {name for name, data in papers.items() if not data.startswith(b"%PDF")}
        assert tables == {"issue-1/answers.csv"}


def test_no_path_of_the_building_machine_is_left_in_the_output(built):
    for project in some(built):
        traces = (str(project).encode(), str(ROOT).encode())
        for folder in ("site", "printed"):
            for name, data in contents(project / folder).items():
                assert not any(trace in data for trace in traces), name


def test_building_changes_nothing_that_the_authors_wrote(built):
    for name in ("question_bank", "course", "site_theme"):
        assert contents(built[0] / name) == contents(built[1] / name)
        assert contents(built[0] / name).keys() == contents(ROOT / name).keys()
