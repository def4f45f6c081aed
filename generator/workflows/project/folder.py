"""The folder of one course project, and where its parts lie."""

from dataclasses import dataclass
from hashlib import sha256
from pathlib import Path


@dataclass(frozen=True, slots=True)
class Project:
    """Paths of one course project."""

    root: Path

    @property
    def bank(self) -> Path:
        """Return the question bank's folder."""
        return self.root / "question_bank"

    @property
    def course(self) -> Path:
        """Return the lessons' folder."""
        return self.root / "course"

    @property
    def settings(self) -> Path:
        """Return the settings of the site."""
        return self.root / "mkdocs.yml"

    @property
    def site(self) -> Path:
        """Return the built course's folder."""
        return self.root / "site"

    @property
    def printed(self) -> Path:
        """Return the folder for papers and keys."""
        return self.root / "printed"

    def issue_folder(self, number: int) -> Path:
        """Return the folder for the papers of an issue."""
        return self.printed / f"issue-{number}"

    @property
    def records(self) -> Path:
        """Return the folder of the training records."""
        return self.root / "records"

    def certificate(self, number: int) -> Path:
        """Return where the certificate with a number is printed; the name holds no person."""
        return self.records / "certificates" / f"certificate-{number}.pdf"

    def export(self, row: int) -> Path:
        """Return where the export of the person in a row lies; the name holds no person."""
        return self.records / "exports" / f"person-{row}.json"

    @property
    def theme(self) -> Path:
        """Return the folder of the site's theme."""
        return self.root / "site_theme"

    @property
    def fonts(self) -> Path:
        """Return the folder of the print fonts."""
        return self.theme / "fonts_print"

    def read_line(self, path: str, line: int) -> str:
        """Return a line of a file as problems name it; empty where there is none."""
        try:
            lines = (self.root / path).read_text("utf-8-sig", errors="replace").splitlines()
        except OSError:
            return ""
        return lines[line - 1] if 0 < line <= len(lines) else ""


def find_project(start: Path) -> Project | None:
    """Return the project at or above a folder; None where there is none."""
    for folder in (start, *start.parents):
        if (folder / "question_bank").is_dir() and (folder / "mkdocs.yml").is_file():
            return Project(folder)
    return None


def bank_hash(project: Project) -> str:
    """Return the SHA-256 of every file of the question bank with its name."""
    total = sha256()
    for path in sorted(project.bank.rglob("*.yml")):
        total.update(f"{path.relative_to(project.bank).as_posix()}\n".encode())
        total.update(sha256(path.read_bytes()).digest())
    return total.hexdigest()
