"""The terminal faces; they hold no logic. Only this package may import textual."""
