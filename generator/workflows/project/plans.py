"""The papers that a project has a plan of, told by the names of its files."""

from generator.diagnostics import did_you_mean
from generator.workflows.project.folder import Project
from generator.workflows.refusals import Refused


def known_plan(project: Project, blueprint: str) -> str | Refused:
    """Return the name of a blueprint that the bank has a file of; no file is read for it."""
    plans = [path.stem for path in sorted((project.bank / "blueprints").glob("*.yml"))]
    if blueprint in plans:
        return blueprint
    near = did_you_mean(blueprint, plans)
    hint = f"; {near}" if near else f". The papers are: {', '.join(plans)}"
    return Refused(f"no paper is called '{blueprint}'{hint}", misuse=True)
