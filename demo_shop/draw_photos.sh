#!/usr/bin/env bash
# Draws the demo shop's pictures anew: blades as drawings, since no real knife stands behind them.
set -euo pipefail
cd "$(dirname "$0")/photos"
waves() { local s="$1" y e; for y in 168 180 192 204 216 228 240 252 264; do e=$((1100 - (y>200 ? (y-200)*4 : (200-y)*1))); \
  printf -- "-stroke|%s|-draw|bezier 510,%d %d,%d %d,%d %d,%d|" "$s" "$y" 680 $((y-14)) 860 $((y+14)) "$e" "$y"; done; }
run() { IFS='|' read -r -a parts <<<"$3"; convert -size 1200x420 gradient:'#f2efe8'-'#dcd7cb' \
    -fill '#3a2c20' -stroke '#1d1712' -strokewidth 3 -draw 'path "M 60,170 Q 60,140 100,140 L 470,150 L 470,232 L 110,236 Q 62,232 60,170 Z"' \
    -fill '#c9a35a' -draw 'circle 170,188 178,188' -draw 'circle 370,190 378,190' \
    -fill '#9a9a98' -draw 'rectangle 468,146 492,240' \
    -fill "$2" -stroke '#3c4042' -draw 'path "M 492,150 L 1010,152 Q 1110,160 1150,190 Q 1040,262 880,276 L 505,282 L 492,240 Z"' \
    -fill none -strokewidth 2 "${parts[@]}" -quality 82 "$1.jpg"; }
run petty '#c4c8ca' '-stroke|#aeb3b6|-draw|line 520,215 1120,200'
run chef '#bcc1c4' '-stroke|#a3a9ac|-draw|line 520,225 1120,205'
run hunter '#8d9498' "$(waves '#e4e7e8')"
run banded '#a3a9ac' "$(waves '#c3c8ca')"
run crucible '#6d757a' "$(waves '#a9b0b3')"
run sanmai '#c9cccd' '-stroke|#70777b|-draw|bezier 505,262 700,250 900,246 1130,192|-stroke|#8d9498|-draw|bezier 505,268 700,257 900,252 1135,194'
run line '#aab0b3' '-stroke|#eef0f0|-strokewidth|4|-draw|bezier 505,254 620,232 700,262 800,240|-draw|bezier 800,240 900,222 980,250 1130,196'
run weldline '#8d9498' "$(waves '#e4e7e8')-stroke|#1d1f20|-strokewidth|4|-draw|line 520,222 552,220|-stroke|#1d1f20|-strokewidth|2|-draw|circle 536,221 566,221"
