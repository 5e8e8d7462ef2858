"""One screen a file; `area.Area` is what they share."""
