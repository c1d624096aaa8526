#!/usr/bin/env bash
# The arrows of the house: gui -> reports, db -> domain, and what a layer may never know.
# Prints every include that goes against them.
set -uo pipefail
cd "$(dirname "$0")/.."
wrong=0
# forbid FOLDER PATTERN WHY
forbid() {
  local found
  found=$(grep -rnE "^ *# *include +[<\"]($2)" "$1" --include='*.h' --include='*.cpp')
  if [ -n "$found" ]; then
    printf '%s\n%s\n' "$3" "$found"
    wrong=1
  fi
}
forbid domain '(db|reports|gui|tests)/' 'domain knows no layer above it:'
forbid domain 'SQLiteCpp|sqlite3|hpdf|wx/|fstream|filesystem|cstdlib"?>? *getenv|ctime|locale' \
  'domain knows no SQL, PDF, window, file, clock or locale:'
forbid db '(reports|gui|tests)/' 'db knows neither pages nor windows:'
forbid db 'hpdf|wx/' 'db knows neither pages nor windows:'
forbid reports '(db|gui|tests)/' 'reports know neither the shop file nor windows:'
forbid reports 'SQLiteCpp|sqlite3|wx/' 'reports know neither the shop file nor windows:'
forbid gui/desk 'wx/|gui/(window|command)/' 'desk knows no window and no terminal:'
forbid gui/desk 'SQLiteCpp|sqlite3|hpdf' 'desk works through db and reports:'
forbid gui/command 'wx/|gui/window/|SQLiteCpp|sqlite3|hpdf' 'command links no window:'
forbid gui/window 'db/|SQLiteCpp|sqlite3|hpdf' 'window asks desk, not the shop file:'
exit "$wrong"
