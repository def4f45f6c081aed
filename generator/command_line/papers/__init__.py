"""The command that issues papers."""
