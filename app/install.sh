#!/bin/bash
# SPDX-License-Identifier: GPL-3.0-or-later
# Installs what is missing of the named groups of packages.txt:  app/install.sh build run
set -euo pipefail

list="$(dirname "${BASH_SOURCE[0]}")/packages.txt"

installed() { [ "$(dpkg-query -W -f='${db:Status-Status}' "$1" 2>/dev/null)" = installed ]; }

missing=()
for group in "$@"; do
    while read -r package; do
        installed "$package" || missing+=("$package")
    done < <(awk -v group="$group" '$1 == group { print $2 }' "$list")
done

[ ${#missing[@]} -gt 0 ] || exit 0

if [ "$(id -u)" -ne 0 ]; then
    echo "These Debian packages are missing; install them as root:" >&2
    echo "    apt-get install --no-install-recommends ${missing[*]}" >&2
    exit 2
fi

echo "Installing ${#missing[@]} packages: ${missing[*]}"
export DEBIAN_FRONTEND=noninteractive
apt-get -q update
apt-get -q install -y --no-install-recommends "${missing[@]}"
