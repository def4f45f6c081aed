"""Turns nodes into typed records and pydantic's complaints into located problems."""

from collections.abc import Iterator
from typing import Any, TypeVar

from pydantic import ValidationError
from pydantic_core import ErrorDetails

from generator.bank.models import Record
from generator.bank.nodes import (
    BrokenNode,
    ListNode,
    MappingNode,
    Node,
    Path,
    holds_broken,
    is_broken,
    key_place,
    place_of,
    to_plain,
    walk,
)
from generator.diagnostics import Problem, did_you_mean

R = TypeVar("R", bound=Record)
_SHAPES = {
    "model_type": "names with values are expected here, such as 'name: value'",
    "model_attributes_type": "names with values are expected here, such as 'name: value'",
    "dict_type": "names with values are expected here, such as 'name: value'",
    "tuple_type": "a list is expected here; begin each entry with '- '",
}
# names of earlier editions, each with what it is called now
RENAMED = {
    "says": ("feedback",),
    "does": ("action",),
    "tell": ("difference",),
    "pool": ("use",),
    "apart_from": ("not_with",),
    "apart": ("not_together",),
    "keyed": ("asked",),
    "remedy_keyed": ("remedy_asked",),
    "holds": ("throughout",),
    "words": ("max_words",),
}


def read_record(kind: type[R], node: Node) -> tuple[R | None, tuple[Problem, ...]]:
    """Return the record that a node spells, and every problem of its fields."""
    try:
        return kind.model_validate(to_plain(node)), ()
    except ValidationError as error:
        return None, tuple(_problems(kind, node, error.errors()))


def _problems(kind: type[Record], node: Node, errors: list[ErrorDetails]) -> Iterator[Problem]:
    for error in errors:
        path = tuple(error["loc"])
        if not (is_broken(node, path) or _follows(node, path, error)):
            yield _problem(kind, node, path, error)


def _follows(node: Node, path: Path, error: ErrorDetails) -> bool:
    """Return whether a complaint only follows from another one further in."""
    if error["type"] == "too_short":
        # entries that do not fit are not counted, and are reported themselves
        found = list(walk(node, path))[-1]
        return isinstance(found, ListNode) and len(found.items) >= error["ctx"]["min_length"]
    if error["type"] == "missing":
        # what stands there under its old name is reported as that
        parent = list(walk(node, path[:-1]))[-1]
        names = parent.keys if isinstance(parent, MappingNode) else {}
        return any(path[-1] in RENAMED.get(name, ()) for name in names)
    # a field that reads a whole list at once complains about the list, not the entry
    return error["type"] == "value_error" and holds_broken(node, path)


def _problem(kind: type[Record], node: Node, path: Path, error: ErrorDetails) -> Problem:
    name = str(path[-1]) if path else ""
    what = error["type"]
    if what == "missing":
        return _missing(kind, node, path, name)
    if what == "extra_forbidden":
        names = _names_at(kind, path[:-1])
        message = f"'{name}' is not a name that belongs here"
        hint = (
            _renamed(name, names)
            or did_you_mean(name, names)
            or f"the names are {', '.join(names)}"
        )
        return Problem(key_place(node, *path), "error", "unknown-key", message, hint)
    if what == "literal_error":
        choices = _choices(error)
        message = f"'{error['input']}' is not one of {', '.join(choices)}"
        hint = did_you_mean(str(error["input"]), choices)
        return Problem(place_of(node, *path), "error", "unknown-choice", message, hint)
    return Problem(place_of(node, *path), "error", _rule(what), _sentence(what, error, name))


def _renamed(name: str, names: list[str]) -> str | None:
    new = next((new for new in RENAMED.get(name, ()) if new in names), None)
    return f"it is called '{new}' now" if new else None


def _missing(kind: type[Record], node: Node, path: Path, name: str) -> Problem:
    parent = list(walk(node, path[:-1]))[-1]
    names = _names_at(kind, path[:-1])
    before = _written_before(parent, names, name)
    place = parent.keys[before] if isinstance(parent, MappingNode) and before else parent.place
    hint = f"add '{name}: ...'" + (f" below '{before}'" if before else "")
    return Problem(place, "error", "missing-key", f"'{name}' is missing here", hint)


def _written_before(parent: Node, names: list[str], missing: str) -> str:
    """Return the name after which a missing one is looked for, in the order of the fields."""
    keys = parent.keys if isinstance(parent, MappingNode) else {}
    upper = names[: names.index(missing)] if missing in names else []
    written = [name for name in upper if name in keys] or sorted(keys, key=keys.__getitem__)[:1]
    return written[-1] if written else ""


def _rule(what: str) -> str:
    if what in _SHAPES:
        return "wrong-shape"
    return "list-length" if what in ("too_short", "too_long") else "wrong-value"


def _sentence(what: str, error: ErrorDetails, name: str) -> str:
    context = error.get("ctx", {})
    if what in _SHAPES:
        return _SHAPES[what]
    if what == "too_short":
        return f"'{name}' needs at least {_entries(context['min_length'])}"
    if what == "too_long":
        return f"'{name}' takes at most {_entries(context['max_length'])}"
    if what == "value_error":
        return str(context["error"])
    return f"this value cannot be used here ({error['msg'].lower()})"


def _entries(count: int) -> str:
    return "1 entry" if count == 1 else f"{count} entries"


def _choices(error: ErrorDetails) -> list[str]:
    said = str(error.get("ctx", {}).get("expected", ""))
    return [part.strip().strip("'") for part in said.replace(" or ", ", ").split(",")]


def _names_at(kind: type[Record], path: Path) -> list[str]:
    model: Any = kind
    for step in path:
        if isinstance(step, str) and isinstance(model, type) and issubclass(model, Record):
            model = _field_named(model, step)
        else:
            model = _inner(model)
    model = _unwrapped(model)
    if isinstance(model, type) and issubclass(model, Record):
        return [field.alias or name for name, field in model.model_fields.items()]
    return []


def _field_named(model: type[Record], name: str) -> Any:
    for field_name, field in model.model_fields.items():
        if name in (field_name, field.alias):
            return field.annotation
    return None


def _inner(model: Any) -> Any:
    """Return what a list or a mapping of records holds."""
    arguments = [a for a in getattr(model, "__args__", ()) if a not in (Ellipsis, type(None), str)]
    return _unwrapped(arguments[-1]) if arguments else None


def _unwrapped(model: Any) -> Any:
    if isinstance(model, type) and not getattr(model, "__args__", ()):
        return model
    for argument in getattr(model, "__args__", ()):
        if isinstance(argument, type) and issubclass(argument, Record):
            return argument
    return model


def as_mapping(node: Node) -> tuple[MappingNode | None, tuple[Problem, ...]]:
    """Return the node as names with values, or say what is there instead."""
    if isinstance(node, MappingNode):
        return node, ()
    if isinstance(node, BrokenNode):
        return None, ()
    what = "a list" if isinstance(node, ListNode) else "a piece of text"
    message = f"names with values are expected here, and {what} is here"
    return None, (Problem(node.place, "error", "wrong-shape", message),)
