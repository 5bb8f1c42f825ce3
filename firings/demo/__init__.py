"""Sallowbeck Yard, the invented demo studio, told through the same actions people use."""
