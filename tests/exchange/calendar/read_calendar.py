#!/usr/bin/python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""Reads a calendar with python3-icalendar, a parser that is not ours, and writes what it found as JSON.

    read_calendar.py < FILE.ics

Beyond what the parser asks: lines end in CR LF and are no longer than 75 octets (RFC 5545, 3.1), and each event has the
properties that the RFC requires once (3.6.1). Exits with 1 and says why where it is not so.
"""
import json
import sys

import icalendar


def main():
    raw = sys.stdin.buffer.read()
    lines = raw.split(b"\r\n")
    if lines[-1] != b"" or any(b"\r" in line or b"\n" in line for line in lines):
        sys.exit("a line does not end in CR LF")
    if any(len(line) > 75 for line in lines):
        sys.exit("a line is longer than 75 octets")
    calendar = icalendar.Calendar.from_ical(raw)
    for required in ("VERSION", "PRODID"):
        if required not in calendar:
            sys.exit(f"the calendar has no {required}")
    events = []
    for event in calendar.walk("VEVENT"):
        if event.errors:
            sys.exit(f"not read: {event.errors}")
        for required in ("UID", "DTSTAMP", "DTSTART"):
            if isinstance(event.get(required), (list, type(None))):
                sys.exit(f"{required} does not stand once in {event}")
        categories = event.get("CATEGORIES", [])
        categories = categories if isinstance(categories, list) else [categories]
        events.append({
            "uid": str(event["UID"]),
            "stamp": event["DTSTAMP"].dt.isoformat(),
            "sequence": int(event["SEQUENCE"]),
            "first": event["DTSTART"].dt.isoformat(),
            "after": event["DTEND"].dt.isoformat() if "DTEND" in event else None,
            "summary": str(event["SUMMARY"]),
            "description": str(event.get("DESCRIPTION", "")),
            "categories": [category.to_ical().decode() for category in categories],
            "busy": event["TRANSP"] == "OPAQUE"})
    if len({event["uid"] for event in events}) != len(events):
        sys.exit("two events have one UID")
    json.dump(events, sys.stdout)


if __name__ == "__main__":
    main()
