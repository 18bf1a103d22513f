"""How the library's objects show themselves in a terminal and in a notebook."""

from html import escape
from typing import Any


def shown(value: Any) -> str:
    """A value as a person reads it."""
    return f"{value:.6g}" if isinstance(value, float) else str(value)


def html_table(title: str, rows: dict[str, Any]) -> str:
    """A small table of two columns."""
    body = "".join(
        f"<tr><th style='text-align:left'>{escape(name)}</th><td>{escape(shown(value))}</td></tr>" for name, value in rows.items()
    )
    return f"<table><caption>{escape(title)}</caption>{body}</table>"
