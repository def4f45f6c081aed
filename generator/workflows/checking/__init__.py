"""What an instructor does: checking."""
