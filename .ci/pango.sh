#!/bin/sh
# Sees that WeasyPrint finds Pango, which draws the text of the PDF: pango.sh PYTHON.
# It asks nothing, waits for nobody and never fails: without Pango the HTML is built.
set -u
python=$1

loads() {
    "$python" -c 'import weasyprint' >/dev/null 2>&1
}

# Empty for root; fails where a password would be asked for.
as_root() {
    if [ "$(id -u)" -eq 0 ]; then
        "$@"
    else
        sudo -n "$@"
    fi
}

apt() {
    as_root env DEBIAN_FRONTEND=noninteractive timeout 240 \
        apt-get -q -o DPkg::Lock::Timeout=60 "$@" </dev/null >/dev/null 2>&1
}

install() {
    apt install -y --no-install-recommends \
        libpango-1.0-0 libpangoft2-1.0-0 libharfbuzz-subset0
}

loads && exit 0
if command -v apt-get >/dev/null && as_root true </dev/null 2>/dev/null; then
    echo "installing Pango, for the PDF"
    install || { apt update && install; }
    loads && exit 0
fi
cat >&2 <<'HINT'
No PDF for now: WeasyPrint finds no Pango. The HTML binder is complete without it.
For the PDF install Pango and build again:
  Debian, Ubuntu:  sudo apt install libpango-1.0-0 libpangoft2-1.0-0 libharfbuzz-subset0
  Fedora:          sudo dnf install pango
  macOS:           brew install pango
HINT
exit 0
