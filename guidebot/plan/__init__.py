"""Arithmetic over protocol, case and date: pure functions, no files, no clock."""
