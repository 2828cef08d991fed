#!/usr/bin/env python3
"""Every sheet as PDF, judged from outside by the poppler tools: size of the paper, words on it,
numbers of pages, and pictures with nothing running off the paper.

    PRINT_SHEETS=program SOURCE=tree [KEEP=folder] test_print.py
"""

import json
import os
import pathlib
import re
import shutil
import subprocess
import sys
import tempfile
import unittest

PRINT_SHEETS = os.environ["PRINT_SHEETS"]
SOURCE = pathlib.Path(os.environ["SOURCE"])
SHEETS = ("run", "purchase", "pack", "kitchen", "buffet", "cards", "quantities", "record")
# Points, as in ISO 216 and the Letter size of ASME Y14.1.
PAPERS = {"letter": (612, 792), "a4": (595, 842)}

if not all(shutil.which(tool) for tool in ("pdfinfo", "pdftotext", "pdftoppm")):
    print("skipped: the poppler tools are not installed")
    sys.exit(77)


def tool(*words):
    return subprocess.run(list(map(str, words)), capture_output=True, check=True).stdout


def print_event(name, folder):
    environment = dict(os.environ, QT_QPA_PLATFORM="offscreen")
    subprocess.run([PRINT_SHEETS, SOURCE / "demo-data" / f"{name}.json", folder,
                    SOURCE / "assets" / "fonts"], check=True, env=environment, timeout=200)


def text_of(pdf):
    return re.sub(r"\s+", " ", tool("pdftotext", "-layout", pdf, "-").decode())


def grey_pages(pdf, folder):
    """(width, height, bytes) of each page at 50 dots an inch."""
    tool("pdftoppm", "-gray", "-r", "50", pdf, folder / "page")
    pages = []
    for path in sorted(folder.glob("page*.pgm")):
        data = path.read_bytes()
        head = re.match(rb"P5\s+(\d+)\s+(\d+)\s+255\s", data)
        pages.append((int(head[1]), int(head[2]), data[head.end():]))
        path.unlink()
    return pages


class Print(unittest.TestCase):
    @classmethod
    def setUpClass(cls):
        keep = os.environ.get("KEEP")
        cls.temporary = None if keep else tempfile.TemporaryDirectory()
        cls.folder = pathlib.Path(keep or cls.temporary.name)
        cls.folder.mkdir(parents=True, exist_ok=True)
        print_event("last-apple-feast", cls.folder)
        cls.event = json.loads((SOURCE / "demo-data/last-apple-feast.json").read_text())

    @classmethod
    def tearDownClass(cls):
        if cls.temporary:
            cls.temporary.cleanup()

    def each(self):
        for sheet in SHEETS:
            for language in ("en", "es"):
                for paper in PAPERS:
                    yield self.folder / f"{sheet}-{language}-{paper}.pdf", language, paper

    def test_every_sheet_is_on_the_paper_asked_for(self):
        for pdf, _, paper in self.each():
            info = tool("pdfinfo", pdf).decode()
            size = re.search(r"Page size:\s+([\d.]+) x ([\d.]+)", info)
            self.assertAlmostEqual(float(size[1]), PAPERS[paper][0], delta=1, msg=pdf)
            self.assertAlmostEqual(float(size[2]), PAPERS[paper][1], delta=1, msg=pdf)

    def test_nothing_runs_off_the_paper(self):
        for pdf, _, _ in self.each():
            for number, (width, height, grey) in enumerate(grey_pages(pdf, self.folder), 1):
                margin = 50 * 30 // 72  # 30 of the 42 points that are left free
                rows = [grey[y * width:(y + 1) * width] for y in range(height)]
                self.assertTrue(any(min(row) < 128 for row in rows), f"{pdf} page {number} empty")
                edges = rows[:margin] + rows[-margin:] + [
                    row[:margin] + row[-margin:] for row in rows]
                self.assertEqual(min(min(edge) for edge in edges), 255, f"{pdf} page {number}")

    def test_no_line_of_text_lies_on_another(self):
        for pdf, _, _ in self.each():
            boxes = re.findall(r'<line xMin="([\d.]+)" yMin="([\d.]+)" xMax="([\d.]+)" '
                               r'yMax="([\d.]+)">|<(page) ',
                               tool("pdftotext", "-bbox-layout", pdf, "-").decode())
            lines = []
            for *corners, page in boxes:
                if page:
                    lines = []
                    continue
                left, top, right, bottom = map(float, corners)
                # Upright text in a drawing is taller than wide; lines may touch by their accents.
                if bottom - top < 2 * (right - left):
                    for other in lines:
                        deep = min(bottom, other[3]) - max(top, other[1])
                        wide = min(right, other[2]) - max(left, other[0])
                        self.assertFalse(deep > 5 and wide > 2, f"{pdf}: {corners} on {other}")
                    lines.append((left, top, right, bottom))

    def test_every_page_carries_its_number_of_all(self):
        for pdf, _, _ in self.each():
            pages = int(re.search(r"Pages:\s+(\d+)", tool("pdfinfo", pdf).decode())[1])
            for page in range(1, pages + 1):
                text = tool("pdftotext", "-f", page, "-l", page, pdf, "-").decode()
                self.assertRegex(text, rf"(?m)^{page}\s*/\s*{pages}$", pdf)

    def test_every_dish_is_on_its_card_in_the_language_asked_for(self):
        for language in ("en", "es"):
            text = text_of(self.folder / f"cards-{language}-letter.pdf")
            for dish in self.event["menu"]:
                self.assertIn(dish["name"][language], text)
        self.assertIn("tree nuts", text_of(self.folder / "cards-en-a4.pdf"))
        self.assertIn("frutos secos", text_of(self.folder / "cards-es-a4.pdf"))

    def test_the_lists_have_everything_on_them(self):
        pack = text_of(self.folder / "pack-en-letter.pdf")
        for kit in self.event["kit"]["equipment"]:
            self.assertIn(kit["name"]["en"], pack)
        purchase = text_of(self.folder / "purchase-es-a4.pdf")
        self.assertIn("Lista de compras", purchase)
        self.assertIn("Zanahorias", purchase)
        self.assertIn("3-501.14", text_of(self.folder / "kitchen-en-letter.pdf"))

    def test_the_record_has_the_old_reading_its_correction_and_every_name_whole(self):
        for pdf, language, _ in self.each():
            if not pdf.name.startswith("record-"):
                continue
            text = text_of(pdf)
            for words in {"en": ("40.0 °C", "45.0 °C", "discard"),
                          "es": ("40.0 °C", "45.0 °C", "desechar")}[language]:
                self.assertIn(words, text, pdf)
            # In the order it was drawn, without the breaks of lines within a cell.
            drawn = re.sub(r"\s", "", tool("pdftotext", "-raw", pdf, "-").decode())
            self.assertIn("readupsidedown", drawn, pdf)
            self.assertIn("thermometer-of-the-second-hot-box", drawn, pdf)
            # Entries are named by the device, sixteen characters, and their number; the correction
            # names the entry that it corrects.
            entries = set(re.findall(r"[0-9a-f]{16}-\d+", drawn))
            self.assertGreaterEqual(len(entries), 4, pdf)
            self.assertTrue(any(drawn.count(entry) > 1 for entry in entries), pdf)

    def test_accents_and_degrees_are_letters_not_boxes(self):
        text = text_of(self.folder / "kitchen-es-letter.pdf")
        self.assertIn("°C", text)
        self.assertIn("más tardar", text)


if __name__ == "__main__":
    unittest.main()
