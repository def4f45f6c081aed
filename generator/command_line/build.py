"""`guidecoat build`."""

import sys

import click

from generator.assembly import build_forms, form_as_plain, shortages
from generator.bank import Bank
from generator.command_line.papers import PaperSettings, paper_files
from generator.command_line.project import Project, find_project, sound, stop_with
from generator.command_line.whole_project import whole_project
from generator.command_line.writing import replace_folder, write_files
from generator.printing import PrintingRefused

SPECIMEN = "specimen"


@click.command()
@click.option("--single-file", is_flag=True, help="Also write the course as one file for a stick.")
def build(single_file: bool) -> None:
    """Check the bank, build the course into site/ and a specimen quiz with key into printed/.

    Example: guidecoat build --single-file

    A bank with errors leaves the earlier site as it was.
    """
    from generator.website import SiteRefused, build_into
    from generator.website.offline import ONE_FILE

    project = find_project()
    bank = sound(project, *whole_project(project))
    papers = _specimen(project, bank)
    config = project.root / "mkdocs.yml"
    try:
        replace_folder(
            project.site, lambda new: build_into(config, new, single_file=single_file, bank=bank)
        )
    except SiteRefused as error:
        click.echo(f"the site could not be built: {error}", err=True)
        sys.exit(1)
    pages = sum(path.name != ONE_FILE for path in project.site.rglob("*.html"))
    click.echo(f"site/index.html and {pages - 1} more pages")
    if single_file:
        megabytes = (project.site / ONE_FILE).stat().st_size / 1e6
        click.echo(f"site/{ONE_FILE}, {megabytes:.1f} MB")
    for path in write_files(project.printed, papers):
        click.echo(path.relative_to(project.root))


def _specimen(project: Project, bank: Bank) -> dict[str, bytes]:
    entry = bank.blueprints.get(SPECIMEN)
    if entry is None:
        raise click.UsageError(f"the bank has no blueprint '{SPECIMEN}'")
    short = shortages(entry, bank)
    if short:
        stop_with(project, short)
    (form,) = build_forms(bank, entry, SPECIMEN, ("A",))
    try:
        return dict(paper_files(project, form_as_plain(form), PaperSettings()))
    except PrintingRefused as error:
        click.echo(f"the specimen could not be set: {error}", err=True)
        sys.exit(1)
