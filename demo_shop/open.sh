#!/usr/bin/env bash
# Installs what is missing, builds, writes the demo shop and opens the window on it. Without a
# display it does the main job from the terminal instead and says where the papers are.
#   ./demo_shop/open.sh [FOLDER]    folder for the shop file and papers, else a new one under /tmp
set -euo pipefail
cd "$(dirname "$0")/.."
./tests/install.sh build
[ -f build/build.ninja ] || cmake -G Ninja -B build >/dev/null
ninja -C build tangmark tangmark-window
folder=${1:-$(mktemp -d /tmp/tangmark-demo-XXXXXX)}
mkdir -p "$folder"
shop="$folder/demo.tangmark"
[ -f "$shop" ] || ./build/tangmark demo "$shop"
if [ -n "${DISPLAY:-}${WAYLAND_DISPLAY:-}" ]; then
  exec ./build/tangmark "$shop"
fi
echo "There is no display, so the main job is done from the terminal."
