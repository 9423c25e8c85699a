"""`python -m binder`, safe inside a stranger's folder: nothing there is ever imported."""

import sys

# `python -m` puts the working folder first on the path; a yaml.py or an entry point of a
# downloaded model would be loaded from it. `python -P` leaves it out itself.
if not sys.flags.safe_path:
    del sys.path[0]

from binder.cli import main

if __name__ == "__main__":
    main()
