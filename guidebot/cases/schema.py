"""Tables of the store, and the named steps that built them."""

from __future__ import annotations

from collections.abc import Callable
from functools import lru_cache
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from sqlalchemy import Connection, MetaData


@lru_cache(maxsize=1)
def metadata() -> MetaData:
    """The tables as they are after the last step (SQLAlchemy is imported here, not before)."""
    import sqlalchemy as sa

    names = {
        "pk": "pk_%(table_name)s",
        "fk": "fk_%(table_name)s_%(column_0_name)s",
        "uq": "uq_%(table_name)s_%(column_0_name)s",
        "ck": "ck_%(table_name)s_%(constraint_name)s",
        "ix": "ix_%(table_name)s_%(column_0_name)s",
    }
    meta = sa.MetaData(naming_convention=names)

    def owner(*, optional: bool = False) -> sa.Column[str]:
        # A removed dog takes its diary along; its questions stay, without a name.
        gone = "SET NULL" if optional else "CASCADE"
        return sa.Column(
            "case_id", sa.Text, sa.ForeignKey("dog_case.id", ondelete=gone), nullable=optional
        )

    sa.Table(
        "dog_case",
        meta,
        sa.Column("id", sa.Text, primary_key=True),
        sa.Column("dog", sa.Text, nullable=False),
        sa.Column("sex", sa.Text, nullable=False),
        sa.Column("side", sa.Text),
        sa.Column("sleeve", sa.Text),
        sa.Column("parts", sa.Text, nullable=False, server_default=""),
        sa.Column("fitted", sa.Text),
        sa.Column("target_hours", sa.Float),
        sa.CheckConstraint("target_hours BETWEEN 0 AND 24", name="target"),
    )
    sa.Table(
        "restriction",
        meta,
        sa.Column("id", sa.Integer, primary_key=True),
        owner(),
        sa.Column("activity", sa.Text, nullable=False),
        sa.Column("starts", sa.Text, nullable=False),
        sa.Column("ends", sa.Text),
        sa.Column("max_hours", sa.Float),
        sa.Column("note", sa.Text, nullable=False, server_default=""),
        sa.CheckConstraint("max_hours BETWEEN 0 AND 24", name="hours"),
    )
    sa.Table(
        "diary",
        meta,
        sa.Column("id", sa.Integer, primary_key=True),
        owner(),
        sa.Column("day", sa.Text, nullable=False),
        sa.Column("worn_hours", sa.Float),
        sa.Column("skin", sa.Text),
        sa.Column("gait", sa.Text),
        sa.Column("powder", sa.Boolean(name="powder")),
        sa.Column("cleared", sa.Boolean(name="cleared"), nullable=False),
        sa.Column("note", sa.Text, nullable=False, server_default=""),
        sa.UniqueConstraint("case_id", "day", name="uq_diary_case_day"),
        sa.CheckConstraint("worn_hours BETWEEN 0 AND 24", name="hours"),
    )
    sa.Table(
        "question",
        meta,
        sa.Column("id", sa.Integer, primary_key=True),
        sa.Column("day", sa.Text, nullable=False, index=True),
        owner(optional=True),
        sa.Column("text", sa.Text, nullable=False),
        sa.Column("outcome", sa.Text, nullable=False),
        sa.Column("need", sa.Text, nullable=False, server_default=""),
        sa.Column("passage", sa.Text, nullable=False, server_default=""),
        sa.Column("sign", sa.Text, nullable=False, server_default=""),
        sa.Column("guide", sa.Text, nullable=False, server_default=""),
        sa.Column("rules", sa.Text, nullable=False, server_default=""),
    )
    sa.Table(
        "question_count",
        meta,
        sa.Column("month", sa.Text, primary_key=True),
        sa.Column("need", sa.Text, primary_key=True),
        sa.Column("outcome", sa.Text, primary_key=True),
        sa.Column("asked", sa.Integer, nullable=False),
    )
    sa.Table(
        "setting",
        meta,
        sa.Column("key", sa.Text, primary_key=True),
        sa.Column("value", sa.Text, nullable=False),
    )
    return meta


def _create(*tables: str) -> Callable[[Connection], None]:
    def step(connection: Connection) -> None:
        meta = metadata()
        meta.create_all(connection, tables=[meta.tables[t] for t in tables], checkfirst=False)

    return step


STEPS: tuple[tuple[str, Callable[[Connection], None]], ...] = (
    ("dogs-and-diary", _create("dog_case", "restriction", "diary")),
    ("question-log", _create("question", "question_count", "setting")),
)
"""Every step ever, in order; `PRAGMA user_version` counts those a file has taken. Never edit one
that was released: add another."""
