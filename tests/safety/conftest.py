"""Shared for the safety tests: the shipped weights of the wide net."""

from __future__ import annotations

import pytest

from guidebot.safety import net
from guidebot.safety.wide import Net


@pytest.fixture(scope="session")
def weights() -> Net:
    return net.fit_net()
