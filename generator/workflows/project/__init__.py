"""What an instructor does: project."""
