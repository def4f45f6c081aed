"""What an instructor does: taking_in."""
