"""The store of cases: dogs, diaries, restrictions and the question log, in one SQLite file."""
