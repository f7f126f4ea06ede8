"""Fails where a page of the documentation links to a file that is not there: python3 doc_links.py target/doc/coldloop"""

import html.parser
import pathlib
import sys
import urllib.parse


class Links(html.parser.HTMLParser):
    def __init__(self):
        super().__init__()
        self.targets = []

    def handle_starttag(self, tag, attributes):
        self.targets += [value for name, value in attributes if name in ("href", "src") and value]


def main(folder):
    folder = pathlib.Path(folder).resolve()
    dead, seen = set(), 0
    for page in folder.rglob("*.html"):
        links = Links()
        links.feed(page.read_text(encoding="utf-8"))
        for target in links.targets:
            url = urllib.parse.urlparse(target)
            path = urllib.parse.unquote(url.path)
            if url.scheme or not path:
                continue
            seen += 1
            file = (page.parent / path).resolve()
            if not (file.is_file() or (file / "index.html").is_file()):
                dead.add(f"{page.relative_to(folder)}: {target}")
    print(*sorted(dead), sep="\n")
    print(f"test result: {seen} passed; {len(dead)} failed")
    return 1 if dead or not seen else 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1]))
