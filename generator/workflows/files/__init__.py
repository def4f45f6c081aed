"""What an instructor does: files."""
