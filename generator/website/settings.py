"""What mkdocs.yml must say, read as plain text before the site engine runs anything of it."""

import re
from collections.abc import Iterator
from pathlib import Path

from generator.bank import ListNode, MappingNode, Node, ScalarNode, key_place, place_of, read_yaml
from generator.diagnostics import Place, Problem

RULE = "site-settings"
PLUGIN = "guidecoat"
_WATCHED = ("question_bank", "site_theme")
_NAMED = re.compile(r"'([a-z_]+)'")
# what a course cannot do without, and why
_FIXED = {
    "docs_dir": ("course", "the lessons lie there"),
    "site_dir": ("site", "papers and reports look for the course there"),
    "strict": ("true", "a page that is not sound is not published"),
    "use_directory_urls": ("false", "pages open by a double click from a memory stick"),
}


def settings_problems(file: Path) -> tuple[Problem, ...]:
    """Return what is wrong with the settings of the site, each at its line.

    Tags and hooks, which would run programs, are refused before the engine reads the file.
    """
    start = Place(file.name, 1, 1)
    try:
        text = file.read_text("utf-8-sig")
    except UnicodeDecodeError:
        return (Problem(start, "error", "file-unreadable", "the file is not UTF-8 text"),)
    node, problems = read_yaml(text, file.name)
    if problems:
        return problems
    if not isinstance(node, MappingNode):
        return (Problem(start, "error", RULE, "the file holds no settings", _WHOLE),)
    found = tuple(_found(node, file.parent))
    return found or tuple(_engine_says(node, file))


def _found(node: MappingNode, root: Path) -> Iterator[Problem]:
    if "hooks" in node.entries:
        message = "hooks run programs whenever somebody builds this course"
        yield _problem(node, message, "take the lines out", "hooks")
    if not _text(node, "site_name"):
        yield _problem(node, "the course has no name", "write 'site_name: ...'", "site_name")
    for name, (wanted, why) in _FIXED.items():
        if _text(node, name) != wanted:
            yield _problem(node, f"'{name}' must be '{wanted}': {why}", _LINE[name], name)
    yield from _theme(node, root)
    yield from _watched(node)
    if not _has_plugin(node.entries.get("plugins")):
        message = f"the plugin '{PLUGIN}' is not named, so that bare lessons would be published"
        yield _problem(node, message, "write 'plugins:' and below it '  - guidecoat'", "plugins")


def _theme(node: MappingNode, root: Path) -> Iterator[Problem]:
    theme = node.entries.get("theme")
    folder = theme.entries.get("custom_dir") if isinstance(theme, MappingNode) else None
    if not isinstance(folder, ScalarNode):
        message = "the theme's folder is not named"
        hint = "write 'theme:' and below it '  name: null' and '  custom_dir: site_theme'"
        yield _problem(node, message, hint, "theme")
    elif not (root / folder.text / "main.html").is_file():
        message = f"there is no theme in '{folder.text}'"
        yield _problem(node, message, "write 'custom_dir: site_theme'", "theme", "custom_dir")
    elif (root / folder.text).resolve() != (root / "site_theme").resolve():
        message = "papers and reports look for the theme in 'site_theme'"
        yield _problem(node, message, "write 'custom_dir: site_theme'", "theme", "custom_dir")


def _watched(node: MappingNode) -> Iterator[Problem]:
    """Find what of the bank and the theme a preview would not show anew, or would look at twice."""
    watch = node.entries.get("watch")
    listed = watch.items if isinstance(watch, ListNode) else ()
    named = [entry.text for entry in listed if isinstance(entry, ScalarNode)]
    if watch is not None and sorted(named) != sorted(_WATCHED):
        message = "a preview watches 'question_bank' and 'site_theme', each once"
        hint = "write 'watch:' and below it '  - question_bank' and '  - site_theme'"
        yield _problem(node, message, hint, "watch")


def _has_plugin(plugins: Node | None) -> bool:
    named: list[str] = []
    for entry in plugins.items if isinstance(plugins, ListNode) else ():
        named += [entry.text] if isinstance(entry, ScalarNode) else []
        named += list(entry.entries) if isinstance(entry, MappingNode) else []
    return PLUGIN in named


def _engine_says(node: MappingNode, file: Path) -> Iterator[Problem]:
    """Ask the engine for what is left, such as a misspelt name."""
    from generator.website.engine import SiteRefused, settings

    try:
        settings(file)
    except SiteRefused as refused:
        said = [line.strip() for line in str(refused).splitlines() if line.strip()]
        names = [name for name in _NAMED.findall(str(refused)) if name in node.entries]
        yield _problem(node, said[0] if said else "refused", "", *names[:1])


def _text(node: MappingNode, name: str) -> str:
    value = node.entries.get(name)
    return value.text if isinstance(value, ScalarNode) else ""


def _problem(node: MappingNode, message: str, hint: str, *path: str) -> Problem:
    inside = path if path and path[0] in node.entries else ()
    place = key_place(node, *inside) if inside else place_of(node)
    return Problem(place, "error", RULE, message, hint)


_LINE = {name: f"write '{name}: {wanted}'" for name, (wanted, _) in _FIXED.items()}
_WHOLE = "begin with 'site_name: ...'"
