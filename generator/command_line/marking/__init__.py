"""Commands for answers: mark, correct, report, analyse."""
