"""Injury signs: rules and a wide net, one verdict; needs no guide and reads none."""
