"""`guidecoat build`."""

import click

from generator.command_line.terminal import accepted, project_here


@click.command()
@click.option(
    "--single-file", is_flag=True, help="Also write the course as one file, for a USB stick."
)
def build(single_file: bool) -> None:
    """Check the bank, build the course into site/ and a specimen quiz with key into printed/.

    Example: guidecoat build --single-file

    A bank with errors leaves the earlier site as it was.
    """
    from generator.workflows.building import build_course

    project = project_here()
    built = accepted(build_course(project, single_file=single_file), project.read_line)
    click.echo(f"site/index.html and {built.pages - 1} more pages")
    if built.one_file is not None:
        megabytes = built.one_file.stat().st_size / 1e6
        click.echo(f"{built.one_file.relative_to(project.root)}, {megabytes:.1f} MB")
    for path in built.papers:
        click.echo(path.relative_to(project.root))
