"""Evaluations: figures of how good the estimates are, by one command and a seed."""
