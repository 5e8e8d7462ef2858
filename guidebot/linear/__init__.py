"""A linear scorer over stems and character n-grams: fitted with numpy, scored without it."""
