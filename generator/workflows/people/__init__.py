"""What an instructor does: people."""
