#!/bin/sh
# Finds a Python that binder can use and hands over to setup.py. PYTHON=... names one.
set -u
here=$(dirname "$0")

fits() {
    "$1" -c 'import sys; sys.exit(sys.version_info < (3, 11))' >/dev/null 2>&1
}

for python in ${PYTHON:-python3 python3.13 python3.12 python3.11 python3.14 python}; do
    if fits "$python"; then
        exec "$python" "$here/setup.py" "$@"
    fi
done

found=$("${PYTHON:-python3}" --version 2>&1) || found="no ${PYTHON:-python3}"
echo "binder needs Python 3.11 or newer; found here: $found." >&2
echo "Install one beside it and name it: make PYTHON=/path/to/python3.12 binder" >&2
exit 1
