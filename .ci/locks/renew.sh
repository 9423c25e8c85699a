#!/bin/sh
# Renews run.txt and dev.txt from pyproject.toml: pinned and hashed releases that serve
# Linux, macOS and Windows on every Python from 3.11 on. Run it, then `make test`, then
# read the diff before it is committed. Without `uv` on the PATH it is put in a passing venv.
set -eu
cd "$(dirname "$0")/../.."

scratch=$(mktemp -d)
trap 'rm -rf "$scratch"' EXIT
uv=$(command -v uv) || {
    python3 -m venv "$scratch/venv"
    "$scratch/venv/bin/python" -m pip install --quiet uv
    uv=$scratch/venv/bin/uv
}

# `fewest`: one release for every Python, since another release could print other bytes.
lock() {
    name=$1
    shift
    "$uv" pip compile pyproject.toml "$@" --quiet --upgrade --universal --python-version 3.11 \
        --fork-strategy fewest --generate-hashes --no-annotate --no-emit-index-url \
        --custom-compile-command .ci/locks/renew.sh --output-file ".ci/locks/$name.txt"
}

lock run --group build --extra solid
# The run lock binds the dev lock, so that tests meet the releases that users get.
lock dev --group build --group dev --extra solid --constraints .ci/locks/run.txt
