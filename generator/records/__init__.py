"""The training records: what was issued, answered, marked, observed and signed, in one file.

Imports marking and what lies below. SQLite stays in this package. Times and days come in as text
or dates; nothing here reads the clock. Files:
migrations, database, backup (the file); diary, plain_text, calendar_dates;
people, erased_codes, roster with roster_rules (who);
issues over frozen_forms and kept_questions (what was issued);
sittings over marked, corrections, results, answers, answered_papers (what was answered, its marks);
entering and appeals over corrected_forms and form_marks (answers come in, a key is corrected);
observed_steps, observations, dated_facts, due, retention (practice and dates);
amendments, amending, at_stake (what was changed by hand, what a void or an erasure takes along);
certificates over certificate_content, training_paper, training_practice and painter_topics;
person_export, erase over traces, inspector_pack over defused_table (what goes out, who goes out).
"""

from generator.records.people import ROSTER_RULES, Person, read_roster
from generator.records.store import Records, RecordsRefused, open_records

__all__ = ["Person", "ROSTER_RULES", "Records", "RecordsRefused", "open_records", "read_roster"]
