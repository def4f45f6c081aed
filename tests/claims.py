"""Finds tests that may end without having claimed anything: all they assert stands in loops.

A loop counts as sure to run where it goes over something written out, or over `some(...)`.
"""

import ast
from collections.abc import Iterator, Mapping
from dataclasses import dataclass, field
from pathlib import Path

HERE = Path(__file__).parent
# they fail by themselves, without an assert of ours
SPEAKING = {"raises", "warns", "wait_for", "wait_for_function", "check_schema", "some"}
KEEPING = {"sorted", "enumerate", "reversed", "tuple", "list", "set", "dict", "zip", "product"}
# it fails where it has nothing to give, or gives one thing always
YIELDING = {"some", "visited"}
PARTS = {"items", "values", "keys"}


def name_of(call: ast.Call) -> str:
    """Return the last name of what is called."""
    called = call.func
    if isinstance(called, ast.Attribute):
        return called.attr
    return called.id if isinstance(called, ast.Name) else ""


def assigned(body: list[ast.stmt]) -> dict[str, ast.expr]:
    """Return the plain names that a body assigns, with what stands on the right."""
    found: dict[str, ast.expr] = {}
    for one in body:
        if isinstance(one, ast.Assign) and isinstance(one.targets[0], ast.Name):
            found[one.targets[0].id] = one.value
        elif isinstance(one, ast.AnnAssign) and isinstance(one.target, ast.Name) and one.value:
            found[one.target.id] = one.value
    return found


def is_filled(looped: ast.expr, known: Mapping[str, ast.expr], depth: int = 0) -> bool:
    """Say whether what is looped over cannot be empty."""

    def filled(part: ast.expr) -> bool:
        return depth < 9 and is_filled(part, known, depth + 1)

    match looped:
        case ast.Tuple(elts=parts) | ast.List(elts=parts) | ast.Set(elts=parts):
            return bool(parts)
        case ast.Dict(keys=keys):
            return bool(keys)
        case ast.Constant(value=str(text)):
            return bool(text)
        case ast.Name(id=name):
            return name in known and filled(known[name])
        case ast.BinOp(left=left, op=ast.Add(), right=right):
            return filled(left) or filled(right)
        case ast.ListComp() | ast.SetComp() | ast.DictComp() | ast.GeneratorExp():
            return all(filled(part.iter) and not part.ifs for part in looped.generators)
        case ast.Call(func=ast.Attribute(value=whole, attr=attr)) if attr in PARTS:
            return filled(whole)
        case ast.Call(args=args) if name_of(looped) == "range":
            return not any(isinstance(arg, ast.Constant) and arg.value == 0 for arg in args[-1:])
        case ast.Call(args=args, keywords=[ast.keyword(arg="strict")]):
            return any(filled(arg) for arg in args)
        case ast.Call(args=args) if name_of(looped) in KEEPING:
            return bool(args) and all(filled(arg) for arg in args)
        case ast.Call():
            return name_of(looped) in YIELDING
    return False


@dataclass
class Reading:
    """Reads one function and notes whether it claims something on every way through it."""

    known: dict[str, ast.expr]
    speaking: set[str] = field(default_factory=set)
    speaks: bool = False

    def read(self, body: list[ast.stmt]) -> bool:
        """Read statements that are sure to run."""
        self.known |= assigned(body)
        for one in body:
            self._statement(one)
        return self.speaks

    def _statement(self, one: ast.stmt) -> None:
        match one:
            case ast.Assert():
                self.speaks = True
            case ast.For(iter=looped, body=body):
                self._expression(looped)
                if is_filled(looped, self.known):
                    self.read(body)
            case ast.If(test=test):
                self._expression(test)
                if one.orelse and all(
                    Reading(dict(self.known), self.speaking).read(way)
                    for way in (one.body, one.orelse)
                ):
                    self.speaks = True
            case ast.With(items=items, body=body):
                for item in items:
                    self._expression(item.context_expr)
                self.read(body)
            case ast.Try(body=body, finalbody=last):
                self.read([*body, *last])
            case ast.While() | ast.FunctionDef() | ast.ClassDef():
                pass
            case _:
                self._expression(one)

    def _expression(self, node: ast.AST) -> None:
        calls = (part for part in ast.walk(node) if isinstance(part, ast.Call))
        self.speaks |= any(name_of(call) in self.speaking for call in calls)


def functions(tree: ast.Module) -> Iterator[ast.FunctionDef]:
    """Return every function of a module, wherever it stands."""
    return (node for node in ast.walk(tree) if isinstance(node, ast.FunctionDef))


def speaking_functions(trees: Mapping[Path, ast.Module]) -> set[str]:
    """Return the names of functions that claim something whenever they are called."""
    speaking = set(SPEAKING)
    for _ in range(4):
        for tree in trees.values():
            for made in functions(tree):
                if not made.name.startswith("test_"):
                    known = assigned(tree.body)
                    if Reading(known, speaking).read(made.body):
                        speaking.add(made.name)
    return speaking


def silent_tests(trees: Mapping[Path, ast.Module]) -> Iterator[str]:
    """Return the tests that may pass on nothing."""
    speaking = speaking_functions(trees)
    for path, tree in trees.items():
        for made in functions(tree):
            reading = Reading(assigned(tree.body), speaking)
            if made.name.startswith("test_") and not reading.read(made.body):
                yield f"{path.name}: {made.name}"
