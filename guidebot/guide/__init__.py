"""Files to values: read the guide strictly, say everything that is wrong with it at once."""
