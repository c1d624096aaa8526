#!/usr/bin/env bash
# Takes a picture of the real program on a screen of its own:
#
#     gui/desktop/screenshot.sh OUT.png PLACE [SELECT] [SHOPFILE]
#
# PLACE is one of the seven places. Without a shop file the demo shop is written for it. Environment:
# BUILD the build folder (build), NOW the time on the clock, THEME the desktop theme (Adwaita or
# Adwaita:dark), SIZE of the screen (1366x768), KEYS what xdotool does before the picture.
set -euo pipefail
cd "$(dirname "$0")/../.."

out=${1:?the name of the picture}
place=${2:?the place to show}
select=${3:-}
shop=${4:-}
build=${BUILD:-build}
now=${NOW:-2026-11-26T10:42:00Z}
size=${SIZE:-1366x768}

work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
if [ -z "$shop" ]; then
  shop=$work/demo.tangmark
  "$build/tangmark" demo "$shop" --now "$now" >"$work/demo.log" 2>&1 || { cat "$work/demo.log" >&2; exit 1; }
fi

# One font folder and one theme, so that the same program gives the same picture everywhere.
cat >"$work/fonts.conf" <<'FONTS'
<?xml version="1.0"?>
<!DOCTYPE fontconfig SYSTEM "fonts.dtd">
<fontconfig>
  <dir>/usr/share/fonts/truetype/noto</dir>
  <dir>/usr/share/fonts/truetype/dejavu</dir>
  <cachedir prefix="xdg">tangmark-screenshot-fonts</cachedir>
  <alias binding="same"><family>Sans</family><prefer><family>Noto Sans</family></prefer></alias>
</fontconfig>
FONTS
export FONTCONFIG_FILE=$work/fonts.conf GTK_THEME=${THEME:-Adwaita} GSETTINGS_BACKEND=memory NO_AT_BRIDGE=1

cat >"$work/take.sh" <<'TAKE'
set -eu
"$1" "$2" --now "$3" --place "$4" ${5:+--select "$5"} --quiet-dialogs 2>"$7/window.log" &
window=$!
for _ in $(seq 100); do
  xdotool search --onlyvisible --class tangmark-window >/dev/null 2>&1 && break
  kill -0 "$window" 2>/dev/null || { cat "$7/window.log" >&2; exit 1; }
  sleep 0.2
done
xdotool mousemove 5000 5000
sleep 2
if [ -n "${KEYS:-}" ]; then
  eval "$KEYS"
  sleep 2
fi
import -window root "$6"
kill "$window"
TAKE
xvfb-run -a -s "-screen 0 ${size}x24" bash "$work/take.sh" "$build/tangmark-window" "$shop" "$now" \
  "$place" "$select" "$out" "$work"
