"""Commands that are read only when they are asked for, so that the first word comes at once."""

from collections.abc import Iterator, Mapping, MutableMapping
from importlib import import_module

import click


class LazyCommands(MutableMapping[str, click.Command]):
    """Commands by name; one is read when it is taken out.

    modules  command name to the module that holds it under that name, or to 'module:other name'
    """

    def __init__(self, modules: Mapping[str, str]) -> None:
        self._modules = modules
        self._read: dict[str, click.Command] = {}

    def __getitem__(self, name: str) -> click.Command:
        if name not in self._read:
            module, _, other = self._modules[name].partition(":")
            command = getattr(import_module(module), other or name)
            assert isinstance(command, click.Command)
            self._read[name] = command
        return self._read[name]

    def __setitem__(self, name: str, command: click.Command) -> None:
        self._read[name] = command

    def __delitem__(self, name: str) -> None:
        del self._read[name]

    def __iter__(self) -> Iterator[str]:
        return iter(dict.fromkeys((*self._modules, *self._read)))

    def __len__(self) -> int:
        return len({*self._modules, *self._read})

    def __contains__(self, name: object) -> bool:
        return name in self._modules or name in self._read


class LazyGroup(click.Group):
    """A group that lists its commands without reading them.

    sentences  what the list says of each command: the first sentence of its help
    """

    sentences: Mapping[str, str] = {}

    def format_commands(self, ctx: click.Context, formatter: click.HelpFormatter) -> None:
        """Write the list of commands."""
        with formatter.section("Commands"):
            formatter.write_dl([(name, self.sentences[name]) for name in sorted(self.sentences)])

    def offer(self, offered: Mapping[str, tuple[str, str]]) -> None:
        """Take on commands by name, each with its module and its sentence."""
        self.commands = LazyCommands({name: module for name, (module, _) in offered.items()})
        self.sentences = {name: says for name, (_, says) in offered.items()}
