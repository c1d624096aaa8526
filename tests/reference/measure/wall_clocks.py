# SPDX-License-Identifier: MIT
"""Prints, every half hour around the changes of the clocks: zone, seconds since 1970, the date and
the time on the wall, and the seconds since 1970 of the first instant with that wall clock."""
import sys
from datetime import datetime, timedelta, timezone
from zoneinfo import ZoneInfo

STEP = timedelta(minutes=30)
for name in sys.argv[1:]:
    zone = ZoneInfo(name)
    at = datetime(2026, 1, 1, tzinfo=timezone.utc)
    while at.year < 2028:
        offsets = {(at + timedelta(days=d)).astimezone(zone).utcoffset() for d in (-1, 0, 1)}
        if len(offsets) > 1 or at.hour == 12:
            wall = at.astimezone(zone)
            first = wall.replace(fold=0).timestamp()
            print(name, int(at.timestamp()), wall.strftime("%Y-%m-%d %H:%M"), int(first))
        at += STEP
