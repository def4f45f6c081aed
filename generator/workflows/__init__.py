"""What an instructor does: workflows."""
