"""`guidecoat records`."""

import click

from generator.command_line.lazy_commands import LazyGroup


@click.group(cls=LazyGroup)
def records() -> None:
    """Keep the training records: people, practice, dates, certificates.

    Example: guidecoat records due --within 90

    The records lie in records/, readable by their owner only. Commands show codes; names only
    where they are asked for.
    """


_HERE = "generator.command_line"
records.offer(
    {
        "issues": (f"{_HERE}.records_issues", "List what was issued, newest last."),
        "print-again": (
            f"{_HERE}.records_issues:again",
            "Write the papers of an issue again, byte by byte as they were.",
        ),
        "void": (
            f"{_HERE}.records_issues",
            "Take an issue out of use: it takes no more answers, and its results no longer count.",
        ),
        "people": (
            f"{_HERE}.records_people",
            "Add people from a table or one by one, correct a name or a role, or list who is "
            "there.",
        ),
        "show": (
            f"{_HERE}.records_mending",
            "Show what the records hold about a person, each date and observation with its number.",
        ),
        "observe": (
            f"{_HERE}.records_practice",
            "Record what somebody saw a person do, step by step.",
        ),
        "sheet": (
            f"{_HERE}.records_practice",
            "Write the observation sheet of a procedure into printed/.",
        ),
        "date": (
            f"{_HERE}.records_dates:date_command",
            "Record that something was done on a day: the date only, never a finding.",
        ),
        "due": (
            f"{_HERE}.records_dates",
            "List what is overdue or falls due: refreshers, fit tests, retests.",
        ),
        "take-out": (
            f"{_HERE}.records_mending:take_out_command",
            "Take out a date or an observation that was entered by mistake; it counts no more.",
        ),
        "certificate": (
            f"{_HERE}.records_certificate",
            "Issue a training certificate from what the records show.",
        ),
        "pack": (
            f"{_HERE}.records_going_out",
            "Write what an inspector of painter training asks for into a new folder.",
        ),
        "export": (
            f"{_HERE}.records_going_out",
            "Write everything the records hold about a person, for that person.",
        ),
        "erase": (f"{_HERE}.records_going_out", "Take a person out of the records for good."),
        "backup": (
            f"{_HERE}.records_file",
            "Copy the records into a new file while they are in use.",
        ),
        "check": (
            f"{_HERE}.records_file",
            "Check that the records are whole and that nobody else can read them.",
        ),
        "retention": (
            f"{_HERE}.records_file",
            "Show how long such records are kept, place by place.",
        ),
    }
)
