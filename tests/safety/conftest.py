"""Shared for the safety tests: the shipped weights of the wide net."""

from __future__ import annotations

import pytest

from guidebot.linear.weights import Weights
from guidebot.safety import net


@pytest.fixture(scope="session")
def weights() -> Weights:
    return net.fit_net({})
