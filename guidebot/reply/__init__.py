"""The one path from a message to an answer."""
