"""Situations of a working week, told over the wire in the demo studio."""
