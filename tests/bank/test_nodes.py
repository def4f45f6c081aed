"""Nodes: the way down a path, and the place of values, names and columns."""

from generator.bank.nodes import (
    BrokenNode,
    MappingNode,
    Node,
    holds_broken,
    is_broken,
    key_place,
    place_of,
    text_place,
    to_plain,
    walk,
)
from generator.bank.reading.yaml_source import read_yaml
from generator.diagnostics import Place

TEXT = """\
rock:
  options:
    - {text: A magnet, feedback: 'It shows thickness'}
    - {text: *gone, feedback: It tips}
  stem: >-
    What shows
    a rock?
"""


def tree() -> Node:
    node, _ = read_yaml(TEXT, "a.yml")
    assert node is not None
    return node


def at(line: int, column: int) -> Place:
    return Place("a.yml", line, column)


def test_a_value_is_found_where_it_starts() -> None:
    assert place_of(tree(), "rock", "options", 0, "text") == at(3, 14)
    assert place_of(tree(), "rock", "options") == at(3, 5)


def test_a_path_that_leads_nowhere_ends_at_the_deepest_part() -> None:
    assert place_of(tree(), "rock", "options", 7, "text") == at(3, 5)
    assert place_of(tree(), "dip") == place_of(tree())
    assert place_of(tree(), "rock", "stem", "inside") == place_of(tree(), "rock", "stem")


def test_a_name_is_found_where_the_name_stands() -> None:
    assert key_place(tree(), "rock", "options", 0, "feedback") == at(3, 24)
    assert key_place(tree(), "rock", "options", 0, "missing") == at(3, 7)


def test_a_column_inside_text_counts_behind_the_quote() -> None:
    assert text_place(tree(), 1, "rock", "options", 0, "feedback") == at(3, 35)
    assert text_place(tree(), 4, "rock", "options", 0, "feedback") == at(3, 38)
    assert text_place(tree(), 4, "rock", "options", 0, "text") == at(3, 17)


def test_a_column_inside_folded_text_is_the_place_of_the_text() -> None:
    assert text_place(tree(), 9, "rock", "stem") == at(5, 9)


def test_a_reported_part_is_known_as_such_on_and_below_its_path() -> None:
    assert is_broken(tree(), ("rock", "options", 1, "text"))
    assert is_broken(tree(), ("rock", "options", 1, "text", "deeper"))
    assert not is_broken(tree(), ("rock", "options", 1))
    assert not is_broken(tree(), ("rock", "options", 0, "text"))


def test_a_value_knows_whether_a_part_of_it_was_reported() -> None:
    assert holds_broken(tree(), ("rock", "options"))
    assert holds_broken(tree(), ())
    assert not holds_broken(tree(), ("rock", "options", 0))
    assert not holds_broken(tree(), ("rock", "options", 1, "missing"))


def test_walking_gives_every_part_on_the_way() -> None:
    assert len(list(walk(tree(), ("rock", "options", 0, "text")))) == 5
    assert len(list(walk(tree(), ("nowhere", "else")))) == 1


def test_a_broken_part_is_plain_empty_text() -> None:
    assert to_plain(BrokenNode(at(1, 1))) == ""
    assert to_plain(MappingNode({})) == {}
