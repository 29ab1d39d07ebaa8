#!/usr/bin/env python3
"""Holds what a run has made against what other programs read in it: check.py PROGRAMME BLANK CONVERTED

CONVERTED has a folder de-DE and one en-US, with each sheet of results.xlsx as a spreadsheet program of that country shows
it. Ends with 1, and says what differs, where anything does.
"""

import csv
import datetime
import email
import email.policy
import sys
from pathlib import Path

import feedparser
import icalendar
import openpyxl

programme, blank, converted = map(Path, sys.argv[1:])
out = programme / "out"
faults = []
held = 0


def hold(what, found, wanted):
    global held
    held += 1
    if found != wanted:
        faults.append(f"{what}: {found!r} instead of {wanted!r}")


def table(path):
    with open(path, encoding="utf-8-sig", newline="") as file:
        return list(csv.reader(file))


def text(value):
    """A cell as the tables of text have it."""
    if value is None:
        return ""
    if isinstance(value, bool):
        return str(value).lower()
    if isinstance(value, datetime.datetime):
        return value.date().isoformat()
    if isinstance(value, float) and value == int(value):
        return str(int(value))
    return str(value)


def shown(cell, country):
    """A cell as a spreadsheet program shows it, in the form that the tables of text have."""
    if cell in ("TRUE", "FALSE", "WAHR", "FALSCH"):
        return {"TRUE": "true", "WAHR": "true"}.get(cell, "false")
    bare = cell.removeprefix("-")
    if country == "de-DE" and bare.count(",") == 1 and bare.replace(",", "").isdigit():
        return cell.replace(",", ".")
    return cell


def is_figure(cell):
    try:
        float(cell)
    except ValueError:
        return False
    return True


# The workbook of results, beside the tables of text.
book = openpyxl.load_workbook(out / "data/results.xlsx")
hold("sheets of results.xlsx", book.sheetnames, ["products", "packages", "extractions", "problems", "dictionary"])
for name in ("products", "packages", "extractions"):
    sheet = book[name]
    wanted = table(out / f"data/{name}.csv")
    found = [[text(cell.value) for cell in row] for row in sheet.iter_rows()]
    hold(f"rows of {name}", len(found), len(wanted))
    for number, (one, other) in enumerate(zip(found, wanted), 1):
        hold(f"{name}, row {number}", one, other)
    hold(f"{name} is frozen below its headings", (sheet.freeze_panes or "A1")[-1], "2")
    hold(f"{name} can be filtered", sheet.auto_filter.ref, sheet.dimensions)
    for country in ("de-DE", "en-US"):
        seen = table(converted / country / f"results-{name}.csv")
        hold(f"rows of {name} in {country}", len(seen), len(wanted))
        for number, (one, other) in enumerate(zip(seen, wanted), 1):
            for column, (cell, figure) in enumerate(zip(one, other), 1):
                cell = shown(cell, country)
                where = f"{name}, row {number}, column {column} in {country}"
                # A figure is shown with as many decimals as the column has room for.
                if number > 1 and is_figure(cell) and is_figure(figure) and cell != figure:
                    hold(where, abs(float(cell) - float(figure)) <= 5e-6 * max(1.0, abs(float(figure))), True)
                else:
                    hold(where, cell, figure)

# The blank registers.
book = openpyxl.load_workbook(blank / "registers/registers.xlsx")
for name in ("products", "packages", "corrections", "followups", "reports"):
    hold(f"registers.xlsx has {name}", name in book.sheetnames, True)
    sheet = book[name]
    headings = [cell for cell in sheet[1] if cell.value]
    hold(f"{name} is frozen below its headings", (sheet.freeze_panes or "A1")[-1], "2")
    for cell in headings:
        hold(f"{name}, {cell.value} says what it is for", bool(cell.comment and cell.comment.text.strip()), True)
    for cell in headings:
        if cell.value in ("product_id", "package_code", "barcode", "lot"):
            hold(f"{name}, {cell.value} is text", sheet.cell(2, cell.column).number_format, "@")
lists = sum(len(sheet.data_validations.dataValidation) for sheet in book)
hold("closed words can be chosen", lists >= 5, True)

# Mail.
mails = sorted(out.glob("drafts/*.eml")) + sorted(out.glob("newsletter/*.eml"))
hold("there is mail", bool(mails), True)
for path in mails:
    message = email.message_from_bytes(path.read_bytes(), policy=email.policy.default)
    hold(f"{path.name} has no defects", [str(defect) for part in message.walk() for defect in part.defects], [])
    hold(f"{path.name} is a draft", message["X-Unsent"], "1")
    for header in ("From", "To", "Subject", "Date", "Message-ID"):
        hold(f"{path.name} has one {header}", len(message.get_all(header, [])), 1)
    plain = message.get_body(("plain",))
    rich = message.get_body(("html",))
    hold(f"{path.name} has a plain text", bool(plain and plain.get_content().strip()), True)
    hold(f"{path.name} has a page", "<html" in rich.get_content() if rich else False, True)
    for part in message.iter_attachments():
        name = part.get_filename()
        if name and name.endswith(".pdf"):
            folder, _, rest = name.partition("-")
            folder = {"notice": "notices", "query": "queries"}.get(folder)
            original = out / (f"{folder}/{rest}" if folder else f"sheets/{name}")
            hold(f"{path.name} carries {name} whole", part.get_content() == original.read_bytes(), True)
    if path.parent.name == "newsletter":
        hold(f"{path.name} is below 100 kB", path.stat().st_size < 100_000, True)

# The diary.
diary = icalendar.Calendar.from_ical((out / "diary.ics").read_bytes())
events = diary.walk("VEVENT")
hold("the diary has entries", bool(events), True)
hold("each entry is one", len({str(event["UID"]) for event in events}), len(events))
for event in events:
    hold("an entry has a day", isinstance(event.decoded("DTSTART"), datetime.date), True)
    hold("an entry says what it is", bool(str(event["SUMMARY"]).strip()), True)

# The feed.
feed = out / "web/feed.xml"
if feed.exists():
    read = feedparser.parse(feed.read_bytes())
    hold("the feed is well formed", bool(read.bozo), False)
    hold("the feed is Atom", read.version, "atom10")
    hold("entries have addresses of their own", len({entry.id for entry in read.entries}), len(read.entries))
    for entry in read.entries:
        hold(f"{entry.id} has a title and a day", bool(entry.title and entry.updated_parsed), True)

for fault in faults[:40]:
    print(fault)
if faults:
    sys.exit(f"{len(faults)} of {held} do not hold")
print(f"{held} values are the same in other programs")
