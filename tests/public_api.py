"""Lists the public interface from the pages of rustdoc and compares it with docs/public-api.txt:

    python3 tests/public_api.py target/doc/coldloop            fails where the listing is not that of the pages
    python3 tests/public_api.py target/doc/coldloop --write    writes the listing

The pages are those of all features. Hidden items are no part of the interface and stand on no page. A line is a declaration, an
inherent function or an implementation of a trait, as rustdoc prints it, with its spaces made even.
"""

import difflib
import html.parser
import pathlib
import re
import sys

LISTING = pathlib.Path("docs/public-api.txt")
# Sections whose headers are part of the interface; what every type has (auto traits, blanket implementations) is not.
LISTS = {"implementations-list", "trait-implementations-list"}


class Page(html.parser.HTMLParser):
    """The declaration of an item, then its functions and implementations."""

    def __init__(self):
        super().__init__()
        self.lines, self.open, self.text, self.taken, self.hidden = [], [], [], None, 0

    def handle_starttag(self, tag, attributes):
        attributes = dict(attributes)
        kinds = (attributes.get("class") or "").split()
        if tag in ("div", "section", "details", "pre", "h3", "h4", "h5", "summary"):
            self.open.append((tag, attributes.get("id"), kinds))
        if self.taken is None and tag == "pre" and "item-decl" in kinds:
            self.taken = len(self.open)
        elif self.taken is None and tag in ("h3", "h4") and "code-header" in kinds and self.of_the_interface():
            self.taken = len(self.open)
        elif self.taken is not None and tag == "summary":
            self.hidden += 1

    def of_the_interface(self):
        """An inherent item, or the header of an implementation of a trait."""
        lists = [name for _, name, _ in self.open if name and name.endswith("-list")]
        names = {name for _, name, _ in self.open if name}
        if not lists or lists[0] not in LISTS:
            return False
        in_header = self.open[-1][0] == "h3" or lists[0] == "implementations-list"
        return in_header and not any(name.startswith("deref-methods") for name in names)

    def handle_endtag(self, tag):
        if not self.open or self.open[-1][0] != tag:
            return
        if self.taken == len(self.open):
            self.lines.append(even("".join(self.text)))
            self.text, self.taken = [], None
        elif tag == "summary" and self.taken is not None:
            self.hidden -= 1
        self.open.pop()

    def handle_data(self, data):
        if self.taken is not None and not self.hidden:
            self.text.append(data)


def even(text):
    text = re.sub(r"//[^\n]*", "", text)
    text = re.sub(r"\s+", " ", text.replace("]pub ", "] pub ")).strip()
    return re.sub(r",? ([)}\]])", r" \1", re.sub(r"([(\[]) ", r"\1", text))


def listing(folder):
    pages = re.findall(r'<li><a href="([^":]*\.html)"', (folder / "all.html").read_text(encoding="utf-8"))
    found = []
    for name in pages:
        page = Page()
        page.feed((folder / name).read_text(encoding="utf-8"))
        *rooms, file = name.split("/")
        path = "::".join(["coldloop", *rooms, file.split(".")[1]])
        declared, *others = page.lines
        found.append((path, [f"{path}: {declared}", *(f"    {line}" for line in others)]))
    return "".join(line + "\n" for _, lines in sorted(found) for line in lines)


def main(folder, *options):
    now = listing(pathlib.Path(folder))
    if options == ("--write",):
        LISTING.write_text(now, encoding="utf-8")
        return 0
    kept = LISTING.read_text(encoding="utf-8")
    sys.stdout.writelines(
        difflib.unified_diff(kept.splitlines(True), now.splitlines(True), "docs/public-api.txt", "rustdoc", n=0)
    )
    if now != kept:
        print("The interface has changed: put it into docs/changelog.md, then tests/public_api.py target/doc/coldloop --write")
        return 1
    print(f"test result: ok. {len(re.findall('^coldloop', now, re.MULTILINE))} passed; 0 failed; public items")
    return 0


if __name__ == "__main__":
    sys.exit(main(*sys.argv[1:]))
