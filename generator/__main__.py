"""Runs the same program as the console command `guidecoat`."""

from generator.command_line.main import main

if __name__ == "__main__":
    main()
