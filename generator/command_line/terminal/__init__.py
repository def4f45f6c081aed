"""What every command needs at the terminal: opening, asking, days, showing what was refused."""
