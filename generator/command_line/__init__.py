"""The commands, one file each: they read options, ask, show, and leave the doing to workflows.

`main` holds the table of commands by name; each is read only when it is asked for.
"""
