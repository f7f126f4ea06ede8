"""The page of every readings file in a browser: it opens, no text lies on another or on a mark or leaves the sheet, at the width of
a phone and of a desk and in both languages, and it prints on one sheet.

    python3 tests/browser/page.py target/release/examples/diagnose

Needs Chromium; without it nothing is checked, and a note says so.
"""

import html
import json
import re
import shutil
import subprocess
import sys
import tempfile
from pathlib import Path

WIDTHS = 390, 1200
LANGUAGES = "en", "es"
# Rounding of a browser, px.
TOLERANCE = 1.0

MEASURE = """
function measure(frame) {
  const page = frame.contentDocument, wrong = [], texts = [];
  page.querySelectorAll('details').forEach(details => details.open = true);
  const width = page.documentElement.clientWidth;
  if (page.documentElement.scrollWidth > width) wrong.push('wider than the sheet');
  const walker = page.createTreeWalker(page.body, NodeFilter.SHOW_TEXT);
  while (walker.nextNode()) {
    const node = walker.currentNode, text = node.data.trim(), parent = node.parentElement;
    if (!text || parent.closest('title, style')) continue;
    const drawing = parent.closest('svg');
    const range = page.createRange();
    range.selectNodeContents(node);
    const boxes = drawing ? [parent.getBoundingClientRect()] : [...range.getClientRects()];
    const sheet = drawing ? drawing.getBoundingClientRect() : { left: 0, right: width, top: 0, bottom: Infinity };
    for (const box of boxes) {
      if (box.width == 0) continue;
      if (box.left < sheet.left - TOLERANCE || box.right > sheet.right + TOLERANCE
          || box.top < sheet.top - TOLERANCE || box.bottom > sheet.bottom + TOLERANCE) wrong.push('leaves the sheet: ' + text);
      texts.push([box, text]);
    }
  }
  if (texts.length < 5) wrong.push('hardly any text: ' + texts.length);
  const marks = [...page.querySelectorAll('svg circle, svg polygon')].map(mark => [mark.getBoundingClientRect(), 'a mark']);
  const across = (a, b) => Math.min(a.right, b.right) - Math.max(a.left, b.left) > TOLERANCE
    && Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top) > TOLERANCE;
  texts.forEach(([a, text], i) => texts.slice(i + 1).concat(marks).forEach(([b, other]) => {
    if (across(a, b)) wrong.push(text + ' lies on ' + other);
  }));
  return wrong;
}
window.onload = () => {
  const all = [...document.querySelectorAll('iframe')];
  const told = all.map(frame => [frame.title, measure(frame)]);
  document.body.innerHTML = '<pre id="told"></pre>';
  document.getElementById('told').textContent = JSON.stringify(told);
};
""".replace("TOLERANCE", str(TOLERANCE))


def chromium(*arguments: str) -> subprocess.CompletedProcess[str]:
    """Runs the browser without a screen, in a profile of its own."""
    quiet = ["--no-first-run", "--disable-background-networking", "--disable-component-update", "--disable-sync"]
    with tempfile.TemporaryDirectory() as profile:
        return subprocess.run(
            ["chromium", "--headless", "--no-sandbox", "--disable-gpu", *quiet, f"--user-data-dir={profile}", *arguments],
            capture_output=True,
            text=True,
            check=True,
            timeout=300,
        )


def laid_out(pages: dict[str, str], folder: Path) -> dict[str, list[str]]:
    """What is wrong with each page at each width."""
    frames = "".join(
        f'<iframe title="{html.escape(name)} at {width} px" width="{width}" height="3000" srcdoc="{html.escape(page)}"></iframe>'
        for name, page in pages.items()
        for width in WIDTHS
    )
    harness = folder / "harness.html"
    harness.write_text(f"<!DOCTYPE html><meta charset=utf-8><script>{MEASURE}</script><body>{frames}</body>")
    seen = chromium("--dump-dom", "--virtual-time-budget=20000", harness.as_uri()).stdout
    told = re.search(r'<pre id="told">(\[.*?)</pre>', seen, re.DOTALL)
    if not told:
        sys.exit(f"the harness gave no answer: {seen[:400]}")
    return dict(json.loads(html.unescape(told[1])))


def sheets(page: str, size: str, folder: Path) -> int:
    """On how many sheets of this size a page prints."""
    source, out = folder / "print.html", folder / "print.pdf"
    source.write_text(page.replace("@page {", f"@page {{ size: {size};"))
    out.unlink(missing_ok=True)
    chromium("--no-pdf-header-footer", f"--print-to-pdf={out}", source.as_uri())
    return len(re.findall(rb"/Type\s*/Page\b", out.read_bytes()))


def main() -> int:
    if not shutil.which("chromium"):
        print("note: no Chromium, the pages were not opened")
        return 0
    (diagnose,) = sys.argv[1:]
    files = [file for file in sorted(Path("examples/readings").glob("*.toml")) if not file.name.startswith("bad")]
    wrong, checked = [], 0
    with tempfile.TemporaryDirectory() as scratch:
        folder = Path(scratch)
        pages = {}
        for file in files:
            for language in LANGUAGES:
                out = folder / "page.html"
                told = [diagnose, "--language", language, "--html", str(out), str(file)]
                subprocess.run(told, check=True, stdout=subprocess.DEVNULL)
                pages[f"{file.stem}, {language}"] = out.read_text()
        for name, found in laid_out(pages, folder).items():
            wrong += [f"{name}: {what}" for what in found]
            checked += 1
        longest = [max((name for name in pages if name.endswith(end)), key=lambda name: len(pages[name])) for end in LANGUAGES]
        # Letter is the shorter sheet and A4 the narrower one.
        printed = [(name, "letter") for name in pages if name.endswith(LANGUAGES[0])] + [(name, "A4") for name in longest]
        for name, size in printed:
            count = sheets(pages[name], size, folder)
            checked += 1
            if count != 1:
                wrong.append(f"{name}: {count} sheets of {size}")
    print("\n".join(wrong))
    print(f"test result: {checked} passed; {len(wrong)} failed")
    return bool(wrong)


if __name__ == "__main__":
    sys.exit(main())
