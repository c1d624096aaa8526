#!/usr/bin/env bash
# Installs what is missing, builds, writes the demo shop and opens the window on it. Without a
# display it does the main job from the terminal instead and says where the papers are.
#   ./demo_shop/open.sh [FOLDER]    folder for the shop file and papers, else a new one under /tmp
set -euo pipefail
cd "$(dirname "$0")/.."
./tests/install.sh build
[ -f build/build.ninja ] || cmake -G Ninja -B build -DCMAKE_UNITY_BUILD=ON >/dev/null
ninja -C build tangmark tangmark-window
folder=${1:-$(mktemp -d /tmp/tangmark-demo-XXXXXX)}
mkdir -p "$folder"
shop="$folder/demo.tangmark"
[ -f "$shop" ] || ./build/tangmark demo "$shop"
if [ -n "${DISPLAY:-}${WAYLAND_DISPLAY:-}" ]; then
  exec ./build/tangmark "$shop"
fi
echo "There is no display, so the main job is done from the terminal."
program=./build/tangmark

# The highest number for which a word prints its paper.
newest() {  # word, highest number to try, paper
  local number
  for number in $(seq "$2" -1 1); do
    if "$program" "$1" "$shop" "$number" --pdf "$3" >/dev/null 2>&1; then echo "$number"; return; fi
  done
  echo "No paper came of: tangmark $1" >&2
  return 1
}

commission=$(newest quote 60 "$folder/quote.pdf")
"$program" quote "$shop" "$commission"
echo
echo "The kilns, planned and booked:"
"$program" plan "$shop" --seconds 2 --store || echo "(some blades cannot be placed; the reasons stand above)"
firing=$(newest firing-sheet 60 "$folder/firing-sheet.pdf")
echo
pattern=21  # the first pattern-welded blade of the demo shop
"$program" certificate "$shop" "$pattern" --pdf "$folder/certificate.pdf"
echo "Quote of commission $commission, sheet of firing $firing and certificate of blade $pattern are in $folder"
