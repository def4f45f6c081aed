"""What an instructor does: reporting."""
