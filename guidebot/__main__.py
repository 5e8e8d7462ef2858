"""`python -m guidebot`."""

from guidebot.cli.main import main

if __name__ == "__main__":
    main()
