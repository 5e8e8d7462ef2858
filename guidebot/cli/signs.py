"""`guidebot signs`: what the injury rules watch for, for the practitioner's review."""

from __future__ import annotations

import click


@click.command()
@click.option("--json", "as_json", is_flag=True, help="Print the table as JSON lines.")
def command(as_json: bool) -> None:
    """List every injury sign, its tier, how owners say it, what to do, and its source."""
    import json

    from guidebot.render.text import fill
    from guidebot.safety.compiled import stamp
    from guidebot.safety.signs import HEADLINE, SIGNS

    tier = None
    for sign in SIGNS:
        if as_json:
            row = {
                "key": sign.key,
                "tier": sign.tier.key,
                "name": sign.name,
                "said": sign.said,
                "do": sign.do,
                "asks": sign.settles,
                "source": sign.source,
            }
            click.echo(json.dumps(row))
            continue
        if sign.tier is not tier:
            tier = sign.tier
            click.echo(f"{sign.tier.key}: {HEADLINE[sign.tier]}")
        click.echo(fill(f"{sign.name} [{sign.key}]", "    ", "  "))
        said = "; ".join(f'"{words}"' for words in sign.said)
        click.echo(fill(f"Owners say: {said}", "      ", "    "))
        click.echo(fill(f"Do: {' '.join(sign.do)}", "      ", "    "))
        click.echo(fill(f"Source: {sign.source}", "      ", "    "))
    if not as_json:
        mark = stamp()
        click.echo(f"{len(SIGNS)} signs. Rules {mark.version} ({mark.hash})")
