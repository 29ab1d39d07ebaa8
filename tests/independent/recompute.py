#!/usr/bin/env python3
"""Recomputes what the program says of a programme's products, and compares.

    recompute.py FOLDER RESULTS.json FACTS_DIR PRODUCT...

Written from the published rules alone: ISO 5725-6 (two or more results of one sample), 21 CFR 101.91 (below 20 ppm),
JCGM 106 (the chance that the true content is on the other side), Clopper and Pearson 1934. It reads registers and lab
files by itself and shares no code with the program. Only what this programme needs is here: regime us, simple decisions,
sandwich assays, tables with a row an extraction or a column an extraction.

FACTS_DIR holds what `galleyproof facts PRODUCT` prints, as PRODUCT.json. Ends with 1, and says what differs, where
anything does.
"""

import csv
import hashlib
import json
import math
import re
import sys
import tomllib
import xml.etree.ElementTree as ElementTree
import zipfile
from decimal import ROUND_HALF_UP, Decimal
from fractions import Fraction
from pathlib import Path

FACTORS = {2: "2.8", 3: "3.3", 4: "3.6", 5: "3.9", 6: "4.0", 7: "4.2", 8: "4.3", 9: "4.4", 10: "4.5"}
OPEN_END = None


# --- reading -----------------------------------------------------------------------------------------------------------

def letters(column):
    text = ""
    while column:
        column, rest = divmod(column - 1, 26)
        text = chr(65 + rest) + text
    return text


def delimited(path):
    """Yields (sheet, row, {column: text}); rows are the lines on which records start."""
    text = path.read_bytes().decode("utf-8-sig")
    delimiter = max(";\t,", key=text.count)
    reader = csv.reader(text.splitlines(keepends=True), delimiter=delimiter)
    line = 1
    for record in reader:
        yield None, line, {at: cell.strip() for at, cell in enumerate(record, 1) if cell.strip()}
        line = reader.line_num + 1


def excel(path):
    main = "{http://schemas.openxmlformats.org/spreadsheetml/2006/main}"
    rels = "{http://schemas.openxmlformats.org/officeDocument/2006/relationships}"
    with zipfile.ZipFile(path) as book:
        shared = []
        if "xl/sharedStrings.xml" in book.namelist():
            for item in ElementTree.fromstring(book.read("xl/sharedStrings.xml")):
                shared.append("".join(part.text or "" for part in item.iter(main + "t")))
        targets = {}
        for one in ElementTree.fromstring(book.read("xl/_rels/workbook.xml.rels")):
            targets[one.get("Id")] = one.get("Target").removeprefix("/xl/").removeprefix("xl/")
        for sheet in ElementTree.fromstring(book.read("xl/workbook.xml")).iter(main + "sheet"):
            root = ElementTree.fromstring(book.read("xl/" + targets[sheet.get(rels + "id")]))
            for row in root.iter(main + "row"):
                cells = {}
                for cell in row.iter(main + "c"):
                    column = 0
                    for letter in re.match("[A-Z]+", cell.get("r")).group():
                        column = column * 26 + ord(letter) - 64
                    value, inline = cell.find(main + "v"), cell.find(main + "is")
                    if cell.get("t") == "s":
                        text = shared[int(value.text)]
                    elif inline is not None:
                        text = "".join(part.text or "" for part in inline.iter(main + "t"))
                    else:
                        text = value.text if value is not None else ""
                    if text and text.strip():
                        cells[column] = text.strip()
                yield sheet.get("name"), int(row.get("r")), cells


def open_document(path):
    table, office, words = (
        "{urn:oasis:names:tc:opendocument:xmlns:%s:1.0}" % name for name in ("table", "office", "text")
    )
    with zipfile.ZipFile(path) as book:
        root = ElementTree.fromstring(book.read("content.xml"))
    for sheet in root.iter(table + "table"):
        number = 0
        for row in sheet.iter(table + "table-row"):
            repeated = int(row.get(table + "number-rows-repeated", "1"))
            cells, column = {}, 0
            for cell in row:
                times = int(cell.get(table + "number-columns-repeated", "1"))
                text = "\n".join("".join(part.itertext()) for part in cell.iter(words + "p")).strip()
                if cell.get(office + "value-type") == "float" and not text:
                    text = cell.get(office + "value")
                if text:
                    for at in range(times):
                        cells[column + 1 + at] = text
                column += times
            yield sheet.get(table + "name"), number + 1, cells
            number += repeated


READERS = {".csv": delimited, ".xlsx": excel, ".ods": open_document}


def result_columns(cells):
    """The columns of a row of headings: (sample, extraction or None, {column: number}), or nothing."""
    sample = [at for at, text in cells.items() if text.lower() in ("sample code", "your reference")]
    one = [at for at, text in cells.items() if re.fullmatch(r"gluten \((mg/kg|ppm)\)", text.lower())]
    wide = {}
    for at, text in cells.items():
        found = re.fullmatch(r"extract (\d), ppm gluten", text.lower())
        if found:
            wide[at] = int(found.group(1))
    number = [at for at, text in cells.items() if text.lower() == "extraction"]
    if sample and one and number:
        return sample[0], number[0], {one[0]: None}
    if sample and wide:
        return sample[0], None, wide
    return None


def limit_of_quantification(cells, default):
    line = " ".join(text for _, text in sorted(cells.items()))
    found = re.search(r"(?:limit of quantification|loq)\D*(\d+(?:\.\d+)?)\s*(?:ppm|mg/kg)", line.lower())
    return Decimal(found.group(1)) if found else default


def reading(text, lloq):
    """(lower, upper, lower is open, upper is open), or None where there is no result."""
    text = text.strip()
    below = re.fullmatch(r"<\s*(\d+(?:\.\d+)?)", text)
    above = re.fullmatch(r">\s*(\d+(?:\.\d+)?)", text)
    if below:
        return Decimal(0), Decimal(below.group(1)), False, True
    if above:
        return Decimal(above.group(1)), OPEN_END, True, True
    if re.fullmatch(r"\d+(\.\d+)?", text):
        value = Decimal(text)
        return (Decimal(0), lloq, False, True) if value < lloq else (value, value, False, False)
    if text.lower() in ("n/a", "-", "", "insufficient sample", "cancelled"):
        return None
    raise SystemExit(f"cannot read the result “{text}”")


def extractions(folder, codes, settings):
    """Every row of the lab files for a registered package, in the order of the paths."""
    found = {}
    for path in sorted((folder / "inbox").rglob("*")):
        reader = READERS.get(path.suffix)
        if not reader:
            continue
        try:
            rows = list(reader(path))
        except zipfile.BadZipFile:
            continue
        digest = hashlib.sha256(path.read_bytes()).hexdigest()
        name = path.relative_to(folder).as_posix()
        lloq, columns = settings["lloq"], None
        for sheet, row, cells in rows:
            columns = result_columns(cells) or columns
            lloq = limit_of_quantification(cells, lloq)
            if not columns or cells.get(columns[0]) not in codes:
                continue
            sample, number, results = columns
            for column, place in sorted(results.items()):
                if column not in cells:
                    continue
                found.setdefault(cells[sample], []).append({
                    "number": place or int(cells[number]),
                    "reported": cells[column],
                    "interval": reading(cells[column], lloq),
                    "lloq": lloq,
                    "source": {"file": name, "sha256": digest, "sheet": sheet, "row": row, "column": letters(column)},
                })
    return found


def corrected(found, corrections):
    """Repeats are numbered on from what is there; nothing here is set aside."""
    for row in corrections:
        if row["action"] != "repeat":
            raise SystemExit(f"no rule here for the correction “{row['action']}”")
        name = "inbox/" + row["file"].removeprefix("inbox/")
        rows = found[row["package_code"]]
        first = [one for one in rows if one["source"]["file"] != name]
        repeats = [one for one in rows if one["source"]["file"] == name]
        last = max(one["number"] for one in first)
        for at, one in enumerate(sorted(repeats, key=lambda one: one["number"]), 1):
            one["number"] = last + at


# --- deciding ----------------------------------------------------------------------------------------------------------

def mean(values):
    values = [Fraction(value) for value in values]
    return sum(values) / len(values)


def nearest(interval, point):
    lower, upper = Fraction(interval[0]), interval[1]
    if point < lower:
        return lower
    return Fraction(upper) if upper is not None and point > upper else point


def compare(rows, relative):
    """gap, m, s and what is allowed between the readings of one package."""
    intervals = [row["interval"] for row in rows]
    low = max(Fraction(one[0]) for one in intervals)
    ends = [Fraction(one[1]) for one in intervals if one[1] is not None]
    gap = max(Fraction(0), low - min(ends)) if ends else Fraction(0)
    if gap > 0:
        middle = (low + min(ends)) / 2
        m = mean([nearest(one, middle) for one in intervals])
    else:
        m = mean([bound for one in intervals for bound in one[:2] if bound is not None])
    return gap, float(FACTORS[len(rows)]) * scatter(rows, float(m), relative)


def scatter(rows, at, relative):
    """The standard deviation of one extraction at this content."""
    quantities = [row["lloq"] for row in rows]
    quantities += [row["interval"][1] for row in rows if row["interval"][0] == 0 and row["interval"][3] and row["interval"][1]]
    return math.sqrt(float(max(quantities)) ** 2 / 100 + (relative * at) ** 2)


def over(bound, is_open, limit):
    """21 CFR 101.91: a food at the limit does not keep it. A bound that is itself left out above is over from the limit on."""
    return bound > limit or bound == limit


def within(bound, is_open, limit):
    return bound is not None and (bound < limit or (is_open and bound == limit))


def package(rows, settings):
    used = [row for row in rows if row["interval"] is not None]
    limit = settings["limit"]
    out = {"gap": None, "allowed": None, "straddles": False, "kind": "none", "value": None, "lower": None, "upper": None}
    if len(used) >= 2:
        out["gap"], out["allowed"] = compare(used, settings["relative"])
    if len(used) < settings["extractions"]:
        reported = any(row["interval"] is not None for row in rows)
        return out | {"state": "incomplete" if reported else "missing", "standing": "unresolved"}
    intervals = [row["interval"] for row in used]
    sides = {
        "over" if over(one[0], one[2], limit) else "within" if within(one[1], one[3], limit) else "open"
        for one in intervals
    }
    if float(out["gap"]) > out["allowed"] * (1 + 1e-9):
        lows = sorted(one[0] for one in intervals)
        ends = [one[1] for one in intervals]
        median = (lows[(len(lows) - 1) // 2] + lows[len(lows) // 2]) / 2
        is_over = sides == {"over"} or (len(lows) > 2 and over(median, False, limit))
        upper = None if None in ends else max(ends)
        out |= {"kind": "range", "lower": lows[0], "upper": upper}
        return out | {"state": "disagree", "standing": "over" if is_over else "unresolved"}
    out |= {"state": "agree", "straddles": {"over", "within"} <= sides}
    if all(one[0] == 0 and one[3] for one in intervals):
        upper = max(one[1] for one in intervals)
        standing = "below_quantification" if upper <= limit else "unresolved"
        return out | {"kind": "below", "lower": 0, "upper": upper, "standing": standing}
    low = mean([one[0] for one in intervals])
    ends = [one[1] for one in intervals]
    high = None if None in ends else mean(ends)
    value = all(one[0] == one[1] for one in intervals)
    is_open = any(one[3] for one in intervals)
    standing = "over" if over(low, False, limit) else "within" if within(high, is_open, limit) else "unresolved"
    return out | {
        "kind": "value" if value else "range", "value": low if value else None,
        "lower": low, "upper": high, "standing": standing,
    }


def verdict(packages, product, settings):
    standings = [one["standing"] for one in packages.values()]
    if "over" in standings:
        return "over_limit", None
    fermented = product["processing"] in ("fermented", "hydrolysed")
    if "unresolved" in standings or len(standings) < settings["packages"] or fermented:
        return "no_verdict", None
    below = all(one == "below_quantification" for one in standings)
    return "within_limit", "below_quantification" if below else "quantified"


# --- statistics --------------------------------------------------------------------------------------------------------

def tail(k, n, p):
    """P(at least k of n)."""
    return sum(math.comb(n, at) * p**at * (1 - p) ** (n - at) for at in range(k, n + 1))


def bisect(inside):
    low, high = 0.0, 1.0
    for _ in range(200):
        middle = (low + high) / 2
        low, high = (middle, high) if inside(middle) else (low, middle)
    return low


def lower_end(k, n, alpha):
    return 0.0 if k == 0 else bisect(lambda p: tail(k, n, p) < alpha)


def upper_end(k, n, alpha):
    return 1.0 if k == n else bisect(lambda p: 1 - tail(k + 1, n, p) > alpha)


def other_side(one, used, limit, relative):
    """JCGM 106: the chance that the true content is across the limit, with the assumed scatter of the extractions alone."""
    if one["state"] != "agree" or one["standing"] not in ("within", "over") or one["kind"] == "below":
        return None
    figure = float(one["upper"] if one["standing"] == "within" else one["lower"])
    u = scatter(used, figure, relative) / math.sqrt(len(used))
    distance = (float(limit) - figure) / u
    return 0.5 * math.erfc((distance if one["standing"] == "within" else -distance) / math.sqrt(2))


# --- printing ----------------------------------------------------------------------------------------------------------

def exact(value):
    return Decimal(value.numerator) / Decimal(value.denominator) if isinstance(value, Fraction) else Decimal(str(value))


def rounded(value, places):
    return exact(value).quantize(Decimal(1).scaleb(-places), ROUND_HALF_UP)


def printed(value, limit):
    """One decimal, and more where that would put the figure on the other side of the limit, or onto it."""
    def side(x):
        return (x > limit) - (x < limit)
    places = next(p for p in range(1, 13) if side(rounded(value, p)) == side(exact(value)))
    return str(rounded(value, places))


def plain(value):
    return format(exact(value).normalize(), "f")


def printed_result(one, limit):
    if one["kind"] == "below":
        return "<" + plain(one["upper"])
    if one["kind"] == "value":
        return printed(one["value"], limit)
    if one["kind"] == "none":
        return "no result"
    if one["upper"] is None:
        return ">" + printed(one["lower"], limit).removesuffix(".0")
    return f"{printed(one['lower'], limit)}–{printed(one['upper'], limit)}"


def percent(share):
    whole = math.floor(share * 100 + 0.5)
    return "<1" if whole == 0 and share > 0 else ">99" if whole == 100 and share < 1 else str(whole)


def figures(text):
    """The figures of a sentence, without those of codes, dates and sections of law."""
    text = re.sub(r"21 CFR 101\.91|\b[A-Z]{2}-\d{3}\b|\d{4}-\d{2}-\d{2}|[A-Z]+-[A-Z]+-\d+-\w+", " ", text.replace("\u200b", ""))
    return re.findall(r"\d+(?:\.\d+)?", text)


# --- comparing ---------------------------------------------------------------------------------------------------------

class Differences(list):
    def hold(self, what, theirs, ours):
        if isinstance(theirs, float) and ours is not None:
            same = math.isclose(theirs, float(ours), rel_tol=1e-9, abs_tol=1e-12)
        else:
            same = theirs == ours
        if not same:
            self.append(f"{what}: the program says {theirs!r}, recomputed {ours!r}")


def hold_package(what, theirs, ours, rows, differences):
    hold = differences.hold
    hold(f"{what} state", theirs["state"], ours["state"])
    hold(f"{what} standing", theirs["standing"], ours["standing"])
    hold(f"{what} straddles_limit", theirs["straddles_limit"], ours["straddles"])
    hold(f"{what} gap", theirs["gap_ppm"], ours["gap"])
    hold(f"{what} allowed", theirs["allowed_ppm"], ours["allowed"])
    result = theirs["result"]
    hold(f"{what} result", result["kind"], ours["kind"])
    hold(f"{what} mean", result["ppm"], ours["value"])
    hold(f"{what} lower", result["lower_ppm"], ours["lower"])
    hold(f"{what} upper", result["upper_ppm"], ours["upper"])
    hold(f"{what} extractions", len(theirs["extractions"]), len(rows))
    for one, row in zip(theirs["extractions"], rows):
        place = f"{what} extraction {row['number']}"
        low, high = row["interval"][:2] if row["interval"] else (None, None)
        hold(f"{place} number", one["number"], row["number"])
        hold(f"{place} reported", one["reported"], row["reported"])
        hold(f"{place} lower", one["lower_ppm"], low)
        hold(f"{place} upper", one["upper_ppm"], high)
        hold(f"{place} source", one["source"], row["source"])


def hold_reasons(what, reasons, packages, product, known, differences):
    """A reason names the packages that decide, and no figure that was not recomputed."""
    text = " ".join(reasons)
    named = {code for code in packages if code in text}
    over_ = {code for code, one in packages.items() if one["standing"] == "over"}
    open_ = {code for code, one in packages.items() if one["standing"] == "unresolved"}
    if over_ or open_:
        differences.hold(f"{what} packages of the reasons", named, over_ or open_)
    if not over_ and product["processing"] == "fermented":
        differences.hold(f"{what} says fermented", "fermented" in text, True)
    for figure in figures(text):
        if figure not in known:
            differences.append(f"{what}: the reasons hold {figure}, which was not recomputed: {text}")


def hold_facts(what, facts, packages, found, known, differences):
    """The printed table cell by cell; of the sentences, that no figure stands there that was not recomputed."""
    content = facts["content"]
    for row in content["table"]["packages"]:
        code = row["code"].replace("\u200b", "")
        one = packages[code]
        place = f"{what} printed {code}"
        differences.hold(f"{place} result", row["result"], printed_result(one, known["limit"]))
        # All that count are compared in the last row that compares anything; before it, what was first reported.
        compared = [line for line in row["rows"] if line["compared"]][-1]
        if compared["found"] and re.fullmatch(r"≥?[\d.]+", compared["found"]):
            gap = str(rounded(one["gap"], 1)) if one["gap"] else "0"
            differences.hold(f"{place} found", compared["found"].lstrip("≥"), gap)
        if compared["allowed"] and re.fullmatch(r"[\d.]+", compared["allowed"]):
            differences.hold(f"{place} allowed", compared["allowed"], str(rounded(one["allowed"], 1)))
        cells = [cell["figure"] for line in row["rows"] for cell in line["cells"] if cell]
        ours = []
        for reported in sorted(found[code], key=lambda entry: entry["number"]):
            interval = reported["interval"]
            if interval is None:
                ours.append("none")
            elif interval[0] == interval[1]:
                places = max(1, -interval[0].as_tuple().exponent)
                ours.append(str(rounded(interval[0], places)))
            else:
                ours.append("<" + plain(interval[1]) if interval[1] is not None else ">" + plain(interval[0]))
        differences.hold(f"{place} extractions", cells, ours)
    sentences = [content["verdict"]["count"], content["verdict"]["sentence"], content["says"], content["says_not"]]
    text = " ".join(sentences)
    for figure in figures(text):
        if figure not in known["figures"]:
            differences.append(f"{what}: the sheet prints {figure}, which was not recomputed: {text}")
    for needed in known["needed"]:
        if needed not in text:
            differences.append(f"{what}: the sheet does not print {needed}: {text}")


def rows_of(path):
    with path.open(newline="", encoding="utf-8-sig") as file:
        return list(csv.DictReader(file))


def main(folder, results, facts_dir, wanted):
    toml = tomllib.loads((folder / "programme.toml").read_text(encoding="utf-8"))
    if (toml["rule"]["regime"], toml["rule"]["decision"]) != ("us", "simple"):
        raise SystemExit("only the regime us and simple decisions are recomputed here")
    testing = toml["testing"]
    settings = {
        "limit": Decimal("20"), "relative": testing["relative_repeatability"], "lloq": Decimal(str(testing["lloq_ppm"])),
        "packages": testing["packages_per_product"], "extractions": testing["extractions_per_package"],
    }
    products = {row["product_id"]: row for row in rows_of(folder / "registers/products.csv")}
    register = [row for row in rows_of(folder / "registers/packages.csv")]
    found = extractions(folder, {row["package_code"] for row in register}, settings)
    corrected(found, rows_of(folder / "registers/corrections.csv"))
    counted = [row for row in register if row["sent_on"] or row["package_code"] in found]
    differences, compared = Differences(), 0
    for theirs in json.loads(results.read_text(encoding="utf-8"))["products"]:
        identity, round_ = theirs["product_id"], theirs["round"]
        if identity not in wanted:
            continue
        compared += 1
        codes = sorted(r["package_code"] for r in counted if (r["product_id"], r["round"]) == (identity, round_))
        packages, sorted_rows = {}, {}
        for code in codes:
            rows = sorted(found.get(code, []), key=lambda row: row["number"])
            packages[code], sorted_rows[code] = package(rows, settings), rows
        what = f"{identity} round {round_}"
        ours, grade = verdict(packages, products[identity], settings)
        differences.hold(f"{what} verdict", theirs["verdict"], ours)
        differences.hold(f"{what} grade", theirs["grade"], grade)
        differences.hold(f"{what} packages", [one["package_code"] for one in theirs["packages"]], codes)
        for one in theirs["packages"]:
            code = one["package_code"]
            hold_package(f"{what} {code}", one, packages[code], sorted_rows[code], differences)
        known = known_figures(packages, found, settings, ours)
        hold_reasons(what, theirs["reasons"], packages, products[identity], known["figures"], differences)
        file = facts_dir / f"{identity}.json"
        if file.exists():
            facts = json.loads(file.read_text(encoding="utf-8"))
            hold_facts(what, facts, packages, found, known, differences)
    for difference in differences:
        print(difference)
    print(f"{compared} products recomputed, {len(differences)} differences")
    return 1 if differences or compared < len(wanted) else 0


def known_figures(packages, found, settings, ours):
    """What may stand in the sentences of a product, and what must."""
    limit, n = settings["limit"], len(packages)
    k = sum(one["standing"] == "over" for one in packages.values())
    open_ = sum(one["standing"] == "unresolved" for one in packages.values())
    known = {"20", "101.91", "21", "95", "1", str(k), str(n), str(n - open_), str(open_), str(settings["packages"])}
    known |= {str(settings["extractions"])} | {str(sum(o["standing"] == s for o in packages.values())) for s in ("within", "below_quantification")}
    needed = set()
    if n > open_:
        # Lower ends with every undecided package within the limit, upper ends with every one over it.
        ends = [percent(lower_end(k, n, 0.025)), percent(upper_end(k + open_, n, 0.025))]
        one_sided = percent(upper_end(k + open_, n, 0.05))
        known |= {end.strip("<>") for end in ends + [one_sided]}
        needed |= set(ends) if ours == "over_limit" else {one_sided} if ours == "within_limit" else set()
    for code, one in packages.items():
        used = [row for row in found.get(code, []) if row["interval"] is not None]
        known |= {str(len(used))}
        for row in used:
            for bound in row["interval"][:2]:
                if bound is not None:
                    known |= {plain(bound), printed(bound, limit)}
        for bound in (one["value"], one["lower"], one["upper"]):
            if bound is not None:
                known |= {plain(bound), printed(bound, limit), plain(exact(bound).quantize(Decimal("0.01")))}
        for bound in (one["gap"], one["allowed"]):
            if bound is not None:
                known |= {str(rounded(bound, 1)), str(rounded(bound, 2)), plain(rounded(bound, 1))}
        chance = other_side(one, used, limit, settings["relative"])
        deciding = {"over_limit": "over", "within_limit": "within"}.get(ours)
        if chance is not None and chance > 0.05 and one["standing"] == deciding:
            known.add(percent(chance))
            if ours == "within_limit":
                needed.add(percent(chance))
    return {"limit": limit, "figures": known, "needed": needed}


if __name__ == "__main__":
    if len(sys.argv) < 5:
        raise SystemExit(__doc__)
    sys.exit(main(Path(sys.argv[1]), Path(sys.argv[2]), Path(sys.argv[3]), set(sys.argv[4:])))
