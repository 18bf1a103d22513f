"""What the pictures need that the numbers do not."""


def need_matplotlib() -> None:
    """Says what to install if matplotlib is missing."""
    try:
        import matplotlib  # noqa: F401
    except ModuleNotFoundError as missing:
        if missing.name != "matplotlib":
            raise
        advice = "lubberline.plot draws with matplotlib, which is not installed: pip install 'lubberline[plot]'"
        raise ModuleNotFoundError(advice, name="matplotlib") from missing
