"""Search: first the need, then the passage for this sleeve, part and stage."""
