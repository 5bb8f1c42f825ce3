"""Tests of the demo; a package, so that its studio is gone when they are over."""
