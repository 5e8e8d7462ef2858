"""guidebot: an owner-education assistant grounded in a curated care guide."""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

__version__ = "0.1.0"
__all__ = ["Assistant", "__version__"]

if TYPE_CHECKING:
    from guidebot.reply.pipeline import Assistant


def __getattr__(name: str) -> Any:
    """Load the assistant only when somebody asks for it: `--help` must stay cheap."""
    if name == "Assistant":
        from guidebot.reply.pipeline import Assistant

        return Assistant
    raise AttributeError(f"module 'guidebot' has no attribute {name!r}")
