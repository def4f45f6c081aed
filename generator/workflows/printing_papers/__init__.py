"""What an instructor does: printing_papers."""
