#!/usr/bin/env bash
# Runs one story with a screen, a session bus and a window manager of its own:
#     on_a_screen.sh BUILD STORIES.py STORY
# Ends with 77 (skipped) where no screen can be made.
set -euo pipefail
for tool in xvfb-run dbus-run-session openbox xdotool; do
  command -v "$tool" >/dev/null || { echo "skipped: $tool is not installed"; exit 77; }
done
/usr/bin/python3 -c 'import pyatspi' 2>/dev/null || { echo "skipped: python3-pyatspi is not installed"; exit 77; }
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
export HOME=$work XDG_RUNTIME_DIR=$work GSETTINGS_BACKEND=memory GTK_THEME=Adwaita GTK_MODULES=gail:atk-bridge
chmod 700 "$work"
unset NO_AT_BRIDGE
xvfb-run -a -s "-screen 0 1366x768x24" dbus-run-session -- bash -c '
  openbox >/dev/null 2>&1 &
  manager=$!
  status=0
  /usr/bin/python3 "$1" "$2" "$3" "$4" || status=$?
  kill "$manager" 2>/dev/null || true
  exit "$status"' story "$2" "$1" "$3" "$work"
