"""What an instructor does: issuing."""
