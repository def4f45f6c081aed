"""Every room has a door: outside it, only the names that the door offers are imported."""

import ast
from collections.abc import Iterator
from functools import cache
from pathlib import Path

import pytest

# about fifteen; refinishing's files are named after the trade's own matters
MOST_IN_A_ROOM = 16
GENERATOR = Path(__file__).parents[1] / "generator"
# commands are asked for one by one, so that a command reads only what it needs
WITHOUT_DOOR = {"generator", "generator.command_line"}


def dotted(path: Path) -> str:
    parts = ("generator", *path.relative_to(GENERATOR).with_suffix("").parts)
    return ".".join(parts[:-1] if parts[-1] == "__init__" else parts)


MODULES = {dotted(path): path for path in sorted(GENERATOR.rglob("*.py"))}
ROOMS = {name for name, path in MODULES.items() if path.name == "__init__.py"} - WITHOUT_DOOR
TREES = {name: ast.parse(path.read_text("utf-8")) for name, path in MODULES.items()}


def imports(module: str) -> Iterator[tuple[str, str, int]]:
    """Return source, name and line of each import of ours in a module, in whatever depth."""
    for node in ast.walk(TREES[module]):
        if isinstance(node, ast.ImportFrom) and (node.module or "").startswith("generator"):
            yield from ((node.module or "", alias.name, node.lineno) for alias in node.names)


@cache
def asked_of(room: str) -> tuple[tuple[str, str], ...]:
    """Return who asks a room for which name."""
    return tuple((m, name) for m, source, name in _asked() if source == room)


@cache
def _asked() -> tuple[tuple[str, str, str], ...]:
    """Walk each module once: it, the room and the name of each import of ours."""
    return tuple((m, source, name) for m in MODULES for source, name, _ in imports(m))


def is_inside(module: str, room: str) -> bool:
    return module == room or module.startswith(f"{room}.")


def offered(room: str) -> list[str]:
    for node in TREES[room].body:
        if isinstance(node, ast.Assign) and ast.unparse(node.targets[0]) == "__all__":
            return list(ast.literal_eval(node.value))
    return []


@cache
def asked_by_tests() -> dict[str, set[str]]:
    """Return the names that tests ask of each room."""
    asked: dict[str, set[str]] = {}
    for path in (GENERATOR.parent / "tests").rglob("*.py"):
        for node in ast.walk(ast.parse(path.read_text("utf-8"))):
            if isinstance(node, ast.ImportFrom) and node.module in ROOMS:
                asked.setdefault(node.module, set()).update(alias.name for alias in node.names)
    return asked


def past_a_door(module: str) -> Iterator[str]:
    """Return each import that goes past a door, or asks it for what it does not offer."""
    for source, name, line in imports(module):
        whole = f"{source}.{name}"
        room = source if source in ROOMS else source.rpartition(".")[0]
        if room not in ROOMS or is_inside(module, room):
            continue
        if source != room:
            yield f"{module}:{line}: {whole} goes past the door of {room}"
        elif name not in offered(room) and whole not in ROOMS:
            yield f"{module}:{line}: the door of {room} does not offer {name}"


def test_there_are_rooms_and_imports_between_them() -> None:
    assert len(ROOMS) > 30
    assert sum(1 for module in MODULES for _ in imports(module)) > 1000


def test_nothing_is_imported_past_a_door() -> None:
    assert [said for module in MODULES for said in past_a_door(module)] == []


def test_an_import_past_a_door_would_be_found(monkeypatch: pytest.MonkeyPatch) -> None:
    deep = ast.parse("from generator.records.people.people import person_of, Person")
    monkeypatch.setitem(TREES, "generator.command_line.made_up", deep)
    assert len(list(past_a_door("generator.command_line.made_up"))) == 2
    monkeypatch.setitem(
        TREES, "generator.command_line.made_up", ast.parse("from generator.records import made_up")
    )
    assert len(list(past_a_door("generator.command_line.made_up"))) == 1


@pytest.mark.parametrize("room", sorted(ROOMS))
def test_a_door_offers_nothing_that_nobody_outside_asks_for(room: str) -> None:
    asked = {name for module, name in asked_of(room) if not is_inside(module, room)}
    assert set(offered(room)) - asked - asked_by_tests().get(room, set()) == set()


@pytest.mark.parametrize("room", sorted({*ROOMS, "generator.command_line"}))
def test_a_room_holds_no_more_than_one_can_look_over(room: str) -> None:
    inside = [name for name in MODULES if name.rpartition(".")[0] == room]
    most = 64 if room == "generator.refinishing" else MOST_IN_A_ROOM
    assert len(inside) <= most, sorted(inside)
