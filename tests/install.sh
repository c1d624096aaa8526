#!/usr/bin/env bash
# Installs what is missing of tests/packages.txt. Usage: install.sh build|test
# Quick when nothing is missing: no package list is fetched then.
set -euo pipefail
here=$(cd "$(dirname "$0")" && pwd)
wanted=$(awk -v all="$1" '$1 == "build" || ($1 == "test" && all == "test") {print $2}' "$here/packages.txt")
missing=()
for package in $wanted; do
  state=$(dpkg-query -W -f='${Status}' "$package" 2>/dev/null || true)
  [ "$state" = "install ok installed" ] || missing+=("$package")
done
[ ${#missing[@]} -eq 0 ] && exit 0
if [ "$(id -u)" = 0 ]; then root=(env); elif command -v sudo >/dev/null; then root=(sudo env); else
  echo "These packages are missing and only root can install them: ${missing[*]}" >&2
  exit 1
fi
echo "Installing: ${missing[*]}" >&2
"${root[@]}" apt-get update -q >&2
"${root[@]}" DEBIAN_FRONTEND=noninteractive apt-get install -y -q --no-install-recommends "${missing[@]}" >&2
