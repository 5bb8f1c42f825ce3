import pytest

from tests.firings import yard as yards


@pytest.fixture
def yard(studio, technician) -> yards.Yard:
    """Kilns of `technician`, who is there and in both."""
    return yards.yard(studio, technician[0])
