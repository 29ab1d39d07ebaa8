#!/usr/bin/env python3
"""Holds what the program says of bags against bagit, a checker of another hand: bags.py PROGRAM BAG README

PROGRAM is galleyproof, BAG an archive that `issue` has made. Each case below is a copy of it with one thing changed. What
bagit refuses the program must refuse, and take what it takes; where they differ README must say so, by the words that stand
beside the case. Ends with 1, and says what does not hold, where anything does not.
"""

import hashlib
import logging
import os
import shutil
import signal
import subprocess
import sys
import tempfile
import unicodedata
from pathlib import Path

import bagit

program, made, readme = sys.argv[1:]
page = " ".join(Path(readme).read_text(encoding="utf-8").split())
logging.disable(logging.CRITICAL)

MANIFEST = "manifest-sha256.txt"
TAGS = "tagmanifest-sha256.txt"
INFO = "bag-info.txt"
DECLARATION = "bagit.txt"

ADDED = "what was added beside `data/`"
NO_LINE = "lines of a manifest that are none"
NO_TAGS = "a missing manifest of the manifests"
LINK = "follow a link in the place of a file"
ENCODING = "take other encodings than UTF-8"
CHECKSUMS = "checksums other than SHA-256"
VERSION = "no versions but 1.0 and 0.97"
SPELLING = "the declaration in `bagit.txt` as the RFC spells it"
FETCH = "no `fetch.txt`"
BLANKS = "blanks at the end of one"
# The only words by which the program may take what bagit refuses.
PERCENT = "with a percent sign, written `%25`"
ENDS = "with more than two ends of lines"
TAKEN = (PERCENT, ENDS)


# --- what is changed ---------------------------------------------------------------------------------------------------

def sha256(content):
    return hashlib.sha256(content).hexdigest()


def vouched(bag, name, content):
    """Writes one of the bag's own texts and vouches for it, as whoever forges one would."""
    path = bag / name
    old = path.read_bytes()
    assert content != old, name
    path.write_bytes(content)
    tags = bag / TAGS
    tags.write_text(tags.read_text().replace(sha256(old), sha256(content)))


def rewrite(name, change):
    def act(bag):
        vouched(bag, name, change((bag / name).read_text(encoding="utf-8")).encode("utf-8"))
    return act


def replace(name, old, new):
    def change(text):
        assert old in text, (name, old)
        return text.replace(old, new)
    return rewrite(name, change)


def append(name, line):
    return rewrite(name, lambda text: text + line)


def put(name, content=b"hello"):
    def act(bag):
        path = bag / name
        path.parent.mkdir(parents=True, exist_ok=True)
        path.write_bytes(content)
    return act


def remove(name):
    return lambda bag: (bag / name).unlink()


def payload(bag):
    """A file of the payload, by its path below the bag."""
    return min(path for path in (bag / "data").rglob("*.csv")).relative_to(bag).as_posix()


def in_place_of(choose, stand):
    """Something else in the place of a file, whose own content is kept beside the bag."""
    def act(bag):
        path = bag / choose(bag)
        aside = bag.parent / "aside"
        path.rename(aside)
        stand(path, aside)
    return act


def linked(path, aside):
    path.symlink_to(aside)


def device(path, _aside):
    path.symlink_to("/dev/zero")


def linked_within(bag):
    """A link to a file of the same content in the payload."""
    name = payload(bag)
    content = (bag / name).read_bytes()
    append(MANIFEST, f"{sha256(content)}  data/linked.csv\n")(bag)
    (bag / "data/linked.csv").symlink_to(Path(name).relative_to("data"))
    oxum(bag)


def piped(path, _aside):
    os.mkfifo(path)


def line_of(bag, path):
    lines = (bag / MANIFEST).read_text(encoding="utf-8").splitlines(keepends=True)
    return next(line for line in lines if line.rstrip().endswith(path))


def without_line(bag):
    rewrite(MANIFEST, lambda text: text.replace(line_of(bag, payload(bag)), ""))(bag)


def doubled_line(bag):
    append(MANIFEST, line_of(bag, payload(bag)))(bag)


def doubled_with_another_sum(bag):
    append(MANIFEST, f"{'0' * 64}  {payload(bag)}\n")(bag)


def upper_case(bag):
    def change(text):
        return "".join(line[:64].upper() + line[64:] for line in text.splitlines(keepends=True))
    rewrite(MANIFEST, change)(bag)


def other_manifest(algorithm, is_right):
    def act(bag):
        with open(bag / f"manifest-{algorithm}.txt", "w", encoding="utf-8") as manifest:
            for path in sorted((bag / "data").rglob("*")):
                if path.is_file():
                    name = path.relative_to(bag).as_posix()
                    name = name.replace("%", "%25").replace("\n", "%0A").replace("\r", "%0D")
                    digest = hashlib.new(algorithm, path.read_bytes()).hexdigest()
                    manifest.write(f"{digest if is_right else '0' * len(digest)}  {name}\n")
    return act


def with_name(name, written=None):
    """A further file of the payload, rightly named, sized and vouched for; `written` is how the manifest spells its name."""
    def act(bag):
        put(f"data/{name}")(bag)
        append(MANIFEST, f"{sha256(b'hello')}  data/{written or name}\n")(bag)
        oxum(bag)
    return act


def oxum(bag):
    sizes = [path.stat().st_size for path in (bag / "data").rglob("*") if path.is_file()]
    lines = (bag / INFO).read_text(encoding="utf-8").splitlines(keepends=True)
    stated = f"Payload-Oxum: {sum(sizes)}.{len(sizes)}\n"
    lines = [stated if line.startswith("Payload-Oxum:") else line for line in lines]
    if (bag / INFO).read_text(encoding="utf-8") != "".join(lines):
        vouched(bag, INFO, "".join(lines).encode("utf-8"))


def no_info(bag):
    tags = bag / TAGS
    lines = tags.read_text().splitlines(keepends=True)
    tags.write_text("".join(line for line in lines if INFO not in line))
    (bag / INFO).unlink()


def no_payload(bag):
    shutil.rmtree(bag / "data")
    vouched(bag, MANIFEST, b"")


def other_encoding(text_of):
    def act(bag):
        replace(DECLARATION, "UTF-8", "ISO-8859-1")(bag)
        with_name("m\u00e4rz.csv")(bag)
        for name in (MANIFEST, INFO):
            text = (bag / name).read_text(encoding="utf-8")
            encoded = text.encode(text_of, "replace")
            if encoded != (bag / name).read_bytes():
                vouched(bag, name, encoded)
    return act


def both(*acts):
    def act(bag):
        for one in acts:
            one(bag)
    return act


# A case: what it is called, what is done, and the words of README where the program may refuse what bagit takes.
CASES = [
    ("as it was made", lambda bag: None, None),
    # The payload.
    ("content changed", lambda bag: (bag / payload(bag)).write_text("another"), None),
    ("file missing", lambda bag: (bag / payload(bag)).unlink(), None),
    ("file added to the payload", put("data/new.pdf"), None),
    ("folder without a file in the payload", lambda bag: (bag / "data/empty").mkdir(), None),
    ("payload missing", no_payload, None),
    ("link in the place of a file", linked_within, LINK),
    ("link out of the bag in the place of a file", in_place_of(payload, linked), None),
    ("link to a device in the place of a file", in_place_of(payload, device), None),
    ("pipe in the place of a file", in_place_of(payload, piped), None),
    ("link in the place of a manifest", in_place_of(lambda bag: MANIFEST, linked), None),
    ("pipe in the place of a manifest", in_place_of(lambda bag: MANIFEST, piped), None),
    ("pipe in the place of the manifest of the manifests", in_place_of(lambda bag: TAGS, piped), NO_TAGS),
    ("link in the place of the declaration", in_place_of(lambda bag: DECLARATION, linked), None),
    # What stands beside it.
    ("note beside the payload", put("note.txt"), ADDED),
    ("note in a folder beside the payload", put("meta/note.txt"), ADDED),
    ("list of what is to be fetched", put("fetch.txt", b"https://nobody.example/a 3 data/a\n"), FETCH),
    ("empty list of what is to be fetched", put("fetch.txt", b""), FETCH),
    # The manifests.
    ("line of the manifest taken out", without_line, None),
    ("line of the manifest twice", doubled_line, None),
    ("file named twice with two checksums", doubled_with_another_sum, None),
    ("line that is none", append(MANIFEST, "nonsense\n"), NO_LINE),
    ("line with a letter that is no figure", rewrite(MANIFEST, lambda text: "g" + text[1:]), None),
    ("line that leads upwards", append(MANIFEST, f"{'0' * 64}  data/../../secret\n"), None),
    ("line that begins at the root", append(MANIFEST, f"{'0' * 64}  /etc/hostname\n"), None),
    ("line beside the payload", append(MANIFEST, f"{sha256(b'x')}  bagit.txt\n"), None),
    ("ends of lines as on Windows", rewrite(MANIFEST, lambda text: text.replace("\n", "\r\n")), None),
    ("ends of lines as on old machines", rewrite(MANIFEST, lambda text: text.replace("\n", "\r")), None),
    ("mark at the beginning of the manifest", rewrite(MANIFEST, lambda text: "\ufeff" + text), None),
    ("dot before the paths", replace(MANIFEST, "  data/", "  ./data/"), None),
    ("asterisk before the paths", replace(MANIFEST, "  data/", " *data/"), None),
    ("tab before the paths", replace(MANIFEST, "  data/", "\tdata/"), None),
    ("blank lines", rewrite(MANIFEST, lambda text: f"\n{text}\n\n"), None),
    ("blanks behind the paths", replace(MANIFEST, ".csv\n", ".csv  \n"), BLANKS),
    ("checksums in capitals", upper_case, None),
    ("manifest missing", remove(MANIFEST), None),
    ("manifest changed and not vouched for", lambda bag: (bag / MANIFEST).write_text(""), None),
    ("manifest of the manifests missing", remove(TAGS), NO_TAGS),
    ("manifest of the manifests empty", put(TAGS, b""), ADDED),
    ("manifest of MD5, right", other_manifest("md5", True), CHECKSUMS),
    ("manifest of MD5, wrong", other_manifest("md5", False), None),
    ("manifest of SHA-512, right", other_manifest("sha512", True), CHECKSUMS),
    ("manifest of SHA-512, wrong", other_manifest("sha512", False), None),
    # Names.
    ("name with the end of a line", with_name("a\nb.csv", "a%0Ab.csv"), None),
    ("name with the end of a line in small letters", with_name("a\nb.csv", "a%0ab.csv"), None),
    ("name with the end of a line of old machines", with_name("a\rb.csv", "a%0Db.csv"), None),
    ("name with three ends of lines", with_name("a\nb\nc\nd.csv", "a%0Ab%0Ac%0Ad.csv"), ENDS),
    ("name with a percent sign, as the RFC has it", with_name("100% sure.csv", "100%25 sure.csv"), PERCENT),
    ("name with a percent sign as it stands", with_name("100% sure.csv"), None),
    ("name that reads as one with a percent sign", with_name("100%25 sure.csv"), PERCENT),
    ("name with a blank", with_name("a b.csv"), None),
    ("name with an asterisk", with_name("*b.csv"), None),
    ("name beyond ASCII", with_name("m\u00e4rz.csv"), None),
    (
        "name in another form of Unicode than in the manifest",
        with_name("m\u00e4rz.csv", unicodedata.normalize("NFD", "m\u00e4rz.csv")),
        None,
    ),
    # What the bag says of itself.
    ("declaration missing", remove(DECLARATION), None),
    ("declaration empty", rewrite(DECLARATION, lambda text: ""), None),
    ("mark at the beginning of the declaration", rewrite(DECLARATION, lambda text: "\ufeff" + text), None),
    ("encoding in small letters", replace(DECLARATION, "UTF-8", "utf-8"), None),
    ("encoding without its hyphen", replace(DECLARATION, "UTF-8", "UTF8"), SPELLING),
    ("encoding that there is not", replace(DECLARATION, "UTF-8", "nonsense"), None),
    ("version 0.97", replace(DECLARATION, "1.0", "0.97"), None),
    ("version 0.96", replace(DECLARATION, "1.0", "0.96"), VERSION),
    ("version 2.0", replace(DECLARATION, "1.0", "2.0"), None),
    ("version in words", replace(DECLARATION, "1.0", "one"), None),
    (
        "declaration from its end",
        rewrite(DECLARATION, lambda text: "".join(f"{line}\n" for line in reversed(text.splitlines()))),
        SPELLING,
    ),
    ("another encoding, in which the texts are", other_encoding("iso-8859-1"), ENCODING),
    ("another encoding, in which they are not", other_encoding("utf-8"), None),
    ("sum of the payload wrong", replace(INFO, "Payload-Oxum: ", "Payload-Oxum: 1"), None),
    ("sum of the payload in words", replace(INFO, "Payload-Oxum: ", "Payload-Oxum: many "), None),
    (
        "sum of the payload left out",
        rewrite(INFO, lambda text: "".join(line for line in text.splitlines(True) if "Oxum" not in line)),
        None,
    ),
    ("what is said of the bag goes on", append(INFO, "Note: more\n  of it\n"), None),
    ("what is said of the bag is no label", append(INFO, "no label\n"), None),
    ("what is said of the bag is missing", remove(INFO), None),
    ("what is said of the bag is missing, and nobody says so", no_info, None),
]


# --- who says what -----------------------------------------------------------------------------------------------------

class Hangs(Exception):
    """It waits for what never comes."""


def hang(_number, _frame):
    raise Hangs


signal.signal(signal.SIGALRM, hang)


def bagit_takes(bag):
    """Whether bagit takes the bag; none where it waits for ever, or for what has no end."""
    signal.alarm(5)
    try:
        bagit.Bag(str(bag)).validate()
        return True
    except Hangs:
        return None
    except Exception:  # Whatever it ends with, it has not taken the bag.
        return False
    finally:
        signal.alarm(0)


def ours_takes(bag):
    """Whether the program takes it for a bag: as it was made, or a valid one to which something was added."""
    run = subprocess.run([program, "verify", bag], capture_output=True, text=True, timeout=60)
    if run.returncode not in (0, 1, 2) or "fault of the program" in run.stderr:
        raise SystemExit(f"the program ended with {run.returncode}: {run.stderr}")
    return run.returncode == 0, run.returncode == 0 or "It is a valid bag still" in run.stdout


faults = []
differ = 0
for name, act, words in CASES:
    with tempfile.TemporaryDirectory() as folder:
        bag = Path(folder) / "bag"
        shutil.copytree(made, bag)
        act(bag)
        is_whole, is_bag = ours_takes(bag)
        theirs = bagit_takes(bag)
    is_laxer, is_stricter = is_bag and theirs is not True, theirs is True and not is_whole
    if is_laxer and words not in TAKEN:
        faults.append(f"{name}: the program takes it, and bagit {'hangs' if theirs is None else 'refuses it'}")
    if is_stricter and words is None:
        faults.append(f"{name}: bagit takes it, and the program does not")
    if words is not None and not (is_laxer or is_stricter):
        faults.append(f"{name}: README says otherwise than it is: {words}")
    if words is not None and words not in page:
        faults.append(f"{name}: README does not say: {words}")
    differ += is_laxer or is_stricter

print("\n".join(faults))
print(f"{len(CASES)} bags, {differ} of them otherwise than bagit {bagit.VERSION}, {len(faults)} faults")
sys.exit(bool(faults))
