"""Every command loads, helps, and is written about."""

from __future__ import annotations

import re
from pathlib import Path

import click
import pytest

from guidebot.cli.main import COMMANDS, cli

ROOT = Path(__file__).resolve().parent.parent


def command(name: str) -> click.Command:
    found = cli.get_command(click.Context(cli), name)
    assert found is not None
    return found


def written() -> str:
    paths = [ROOT / "README.md", ROOT / "DEVELOPERS.md"]
    return "\n".join(path.read_text("utf-8") for path in paths if path.is_file())


def test_both_documents_are_there() -> None:
    assert (ROOT / "README.md").is_file()
    assert (ROOT / "DEVELOPERS.md").is_file()


@pytest.mark.parametrize("name", COMMANDS)
def test_a_command_loads_and_helps(name: str) -> None:
    found = command(name)
    assert found.help
    assert found.help.strip().endswith((".", ")"))
    with click.Context(found, info_name=name) as context:
        assert found.get_help(context).startswith(f"Usage: {name}")


@pytest.mark.parametrize("name", COMMANDS)
def test_every_option_helps(name: str) -> None:
    todo = [command(name)]
    while todo:
        found = todo.pop()
        if isinstance(found, click.Group):
            todo += found.commands.values()
            assert found.commands
        for option in found.params:
            if isinstance(option, click.Option):
                assert option.help, f"{found.name} {option.opts}"


@pytest.mark.parametrize("name", COMMANDS)
def test_a_command_is_written_about(name: str) -> None:
    assert re.search(rf"guidebot {name}\b", written()), f"guidebot {name} is in no document"


def test_a_command_in_the_documents_is_there() -> None:
    named = set(re.findall(r"(?:`|^\s*|/)guidebot (?:--content \S+ )?([a-z]\w+)", written(), re.M))
    assert named
    assert named <= set(COMMANDS)


def test_every_command_module_is_in_the_table() -> None:
    modules = {path.stem for path in (ROOT / "guidebot" / "cli").glob("*.py")}
    helpers = {
        name
        for name in modules - set(COMMANDS)
        if "@click.command" not in (ROOT / "guidebot" / "cli" / f"{name}.py").read_text("utf-8")
    }
    assert modules - helpers == set(COMMANDS)


def test_exit_codes_are_written_down() -> None:
    from guidebot.errors import ExitCode

    text = (ROOT / "README.md").read_text("utf-8")
    paragraph = text[text.index("Exit codes:") :].split("\n\n")[0]
    for code in ExitCode:
        assert re.search(rf"\b{int(code)}\b", paragraph)


@pytest.mark.parametrize("name", ["GUIDEBOT_HOME"])
def test_variables_are_written_down(name: str) -> None:
    assert name in written()
