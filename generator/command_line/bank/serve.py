"""`guidecoat serve`."""

import click

from generator.command_line.terminal import accepted, project_here
from generator.workflows import refused_with


@click.command()
@click.option("--address", default="127.0.0.1:8000", help="Where to serve, as host:port.")
def serve(address: str) -> None:
    """Show the course live; edits to lessons, bank and theme reload the page.

    Example: guidecoat serve --address 127.0.0.1:8010
    """
    from generator.website import preview, settings_problems

    host, _, port = address.rpartition(":")
    if not host or not port.isdigit():
        raise click.UsageError(f"'{address}' is not host:port, such as 127.0.0.1:8000")
    if host not in ("127.0.0.1", "localhost", "[::1]"):
        click.echo(f"everybody who reaches {address} can read this preview", err=True)
    project = project_here()
    problems = settings_problems(project.settings)
    if problems:
        accepted(refused_with(problems), project.read_line)
    preview(project.settings, host, int(port))
