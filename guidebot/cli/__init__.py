"""The command line: faces only, no logic."""
