"""Running a file of published checks: `pytest tests/refinishing --published-checks FILE`."""

from pathlib import Path

import pytest

from tests.refinishing.published_checks import UnreadableChecks, read_checks

CHECKS = Path(__file__).with_name("published_checks.yml")
OPTION = "published_checks"
CHECK, NOTE = "published check", "published note"


def pytest_addoption(parser: pytest.Parser) -> None:
    """Add the option that names another file of checks."""
    parser.addoption(
        "--published-checks",
        dest=OPTION,
        metavar="FILE",
        default=None,
        help="check the relations against this file of published checks",
    )


def pytest_generate_tests(metafunc: pytest.Metafunc) -> None:
    """Make one test of every check in the file."""
    if "published_check" not in metafunc.fixturenames:
        return
    # the option is unknown when pytest starts above this directory
    file = metafunc.config.getoption(OPTION, default=None)
    try:
        checks = read_checks(Path(file) if file else CHECKS)
    except UnreadableChecks as error:
        raise pytest.UsageError(str(error)) from error
    metafunc.parametrize("published_check", checks, ids=[check.name for check in checks])


def pytest_terminal_summary(terminalreporter: pytest.TerminalReporter) -> None:
    """Print how many published checks passed and failed, then the failing ids and the notes."""
    told = {
        outcome: [dict(r.user_properties) for r in terminalreporter.getreports(outcome)]
        for outcome in ("passed", "failed")
    }
    passed, failed = (
        [facts for facts in told[outcome] if CHECK in facts] for outcome in ("passed", "failed")
    )
    if not passed and not failed:
        return
    terminalreporter.section("published checks")
    for facts in (*passed, *failed):
        if facts.get(NOTE):
            terminalreporter.write_line(f"{facts[CHECK]}: {facts[NOTE]}")
    terminalreporter.write_line(f"{len(passed)} passed, {len(failed)} failed")
    if failed:
        terminalreporter.write_line("failed: " + ", ".join(facts[CHECK] for facts in failed))
