"""The commands, one file each, with no logic of their own."""
