"""Reads the newsletter's mail with Python's own library and holds it against the files beside it and the results.

    newsletter.py FOLDER RESULTS proof|issue

FOLDER has digest.eml, digest.html and digest.txt; RESULTS is results.json of the same run. It says what differs and ends
with 1, else how many products it found in the mail.
"""

import email
import email.policy
import html.parser
import json
import pathlib
import sys


class Rows(html.parser.HTMLParser):
    """The rows of the table of products, a list of cells each, and whatever is fetched from elsewhere."""

    def __init__(self):
        super().__init__()
        self.depth, self.rows, self.fetched = 0, [], []

    def handle_starttag(self, tag, attributes):
        attributes = dict(attributes)
        if tag in ("img", "link", "script", "iframe") or "src" in attributes:
            self.fetched.append(tag)
        if tag == "table" and (self.depth or attributes.get("class") == "list"):
            self.depth += 1
        if self.depth and tag == "tr":
            self.rows.append([])
        if self.depth and tag in ("th", "td"):
            self.rows[-1].append("")
        if self.depth and tag in ("br", "span") and self.rows and self.rows[-1]:
            self.rows[-1][-1] += "\n"

    def handle_endtag(self, tag):
        if tag == "table" and self.depth:
            self.depth -= 1

    def handle_data(self, data):
        if self.depth and self.rows and self.rows[-1]:
            self.rows[-1][-1] += data


def tells(figure, package):
    """Whether a figure of the table is the package's result, to the last digit that it prints."""
    result = package["result"]

    def near(text, value):
        digits = len(text.partition(".")[2])
        return abs(float(text) - value) <= 0.5 * 10**-digits + 1e-9

    if package["state"] == "disagree" or result["kind"] == "none":
        return not any(letter.isdigit() for letter in figure)
    if result["kind"] == "below":
        return figure == f"<{result['upper_ppm']:g}"
    if result["kind"] == "value":
        return near(figure, result["ppm"])
    if result["upper_ppm"] is None:
        return figure.startswith(">") and near(figure[1:], result["lower_ppm"])
    lower, _, upper = figure.partition("–")
    return near(lower, result["lower_ppm"]) and near(upper, result["upper_ppm"])


def main():
    folder, results, kind = pathlib.Path(sys.argv[1]), json.load(open(sys.argv[2], encoding="utf-8")), sys.argv[3]
    raw = (folder / "digest.eml").read_bytes()
    mail = email.message_from_bytes(raw, policy=email.policy.default)
    faults = []

    def hold(it_is, said):
        if not it_is:
            faults.append(said)

    hold(not mail.defects, f"the mail has defects: {mail.defects}")
    hold(len(raw) < 100_000, f"the mail has {len(raw)} bytes")
    hold(mail.get_content_type() == "multipart/alternative", f"it is {mail.get_content_type()}")
    kinds = [part.get_content_type() for part in mail.iter_parts()]
    hold(kinds == ["text/plain", "text/html"], f"its parts are {kinds}")
    hold(mail["X-Unsent"] == "1", "it is no draft")
    hold(not any(group.addresses for group in mail["To"].groups), f"it goes to {mail['To']}")
    hold(results["programme"]["name"] in mail["From"], f"it is from {mail['From']}")
    hold(mail["Subject"].startswith("Proof") == (kind == "proof"), f"its subject is {mail['Subject']!r}")

    plain, page = (part.get_content().replace("\r\n", "\n") for part in mail.iter_parts())
    hold(plain == (folder / "digest.txt").read_text(encoding="utf-8"), "its text is not digest.txt")
    hold(page == (folder / "digest.html").read_text(encoding="utf-8"), "its page is not digest.html")
    hold(("not for publication" in page) == (kind == "proof"), "the page does not say what it is")
    hold(("NOT FOR PUBLICATION" in plain) == (kind == "proof"), "the text does not say what it is")
    longest = max(len(line) for line in plain.splitlines())
    hold(longest <= 72, f"a line of the text has {longest} letters")

    rows = Rows()
    rows.feed(page)
    hold(not rows.fetched, f"the page fetches {rows.fetched}")
    short, verdicts = results["programme"]["short_name"], {"over_limit": "At or above", "within_limit": "Below", "no_verdict": "No verdict"}
    labels = {
        "gluten_source": ("Label names ",),
        "none": ("Label: nothing found",),
        "no_ingredients": ("No label on record",),
        "unverified_oats": ("Label: oats of unknown origin",),
        "needs_review": ("Label unclear", "Label not read yet", "Label names "),
    }
    found = 0
    for product in results["products"]:
        sheet = f"{short}-{product['product_id']}-{product['round']}"
        row = next((row for row in rows.rows if sheet in row[0].replace("\n", " ").split()), None)
        if row is None:
            hold(product["publication"]["state"] == "with_lab", f"{sheet} is missing")
            continue
        found += 1
        hold(product["name"] in row[0], f"{sheet}: {product['name']!r} is not in {row[0]!r}")
        figures = [figure.strip() for figure in row[1].split("\n") if figure.strip()]
        hold(len(figures) == len(product["packages"]), f"{sheet}: {figures}")
        for figure, package in zip(figures, product["packages"]):
            hold(tells(figure, package), f"{sheet}: {figure} is not {package['result']}")
        said = [line.strip() for line in row[2].split("\n") if line.strip()]
        hold(said[0].startswith(verdicts[product["verdict"]]), f"{sheet}: {said[0]} for {product['verdict']}")
        hold(said[1].startswith(labels[product["label"]["finding"]]), f"{sheet}: {said[1]} for {product['label']['finding']}")
    hold(found > 0, "no product is in the mail")
    print("\n".join(faults) if faults else f"{found} products in the mail, 0 differences")
    sys.exit(1 if faults else 0)


main()
