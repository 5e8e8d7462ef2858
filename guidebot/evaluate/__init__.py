"""Scoring: metrics, question sets, runs and their comparison."""
