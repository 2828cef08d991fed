#!/usr/bin/env python3
"""The app from outside, without a screen: what it refuses and with which code, and that only one
window shows a journal.

    CINDERBELL=program BELLMAN=program SOURCE=tree test_launch.py
"""

import json
import os
import pathlib
import subprocess
import tempfile
import unittest

CINDERBELL = os.environ["CINDERBELL"]
BELLMAN = os.environ["BELLMAN"]
LUNCH = pathlib.Path(os.environ["SOURCE"], "demo-data", "orchard-harvest-lunch.json")


class Launch(unittest.TestCase):
    def setUp(self):
        folder = tempfile.TemporaryDirectory()
        self.addCleanup(folder.cleanup)
        self.folder = pathlib.Path(folder.name)
        # Nothing of this user's is read or written.
        self.environment = {**os.environ, "HOME": folder.name, "XDG_DATA_HOME": folder.name,
                            "XDG_CONFIG_HOME": folder.name, "QT_QPA_PLATFORM": "offscreen",
                            "QT_QUICK_BACKEND": "software"}

    def app(self, *words):
        return subprocess.run([CINDERBELL, "--store", self.folder / "kept", *map(str, words)],
                              capture_output=True, text=True, timeout=120, env=self.environment)

    def assert_leaves(self, done, code, *words):
        self.assertEqual(done.returncode, code, done.stderr)
        for word in words:
            self.assertIn(word, done.stderr)

    def changed(self, change):
        event = json.loads(LUNCH.read_text())
        change(event)
        path = self.folder / "event.json"
        path.write_text(json.dumps(event))
        return path

    def test_words_that_would_be_passed_over_are_refused(self):
        self.assert_leaves(self.app(LUNCH), 2, "--event")
        self.assert_leaves(self.app("--rehearse", 60), 2, "--rehearse", "--event")
        self.assert_leaves(self.app("--event", LUNCH, "--rehearse", 0), 2, "1 to 120")
        self.assert_leaves(self.app("--board", "roof"), 2, "--board")

    def test_it_leaves_with_the_code_bellman_has_for_it(self):
        self.assert_leaves(self.app("--event", self.changed(lambda e: e.update(crew=[]))), 3,
                           "/crew")
        self.assert_leaves(self.app("--event", self.folder / "none.json"), 6, "none.json")

    def test_one_window_shows_a_journal_and_others_only_read_beside_it(self):
        first = subprocess.Popen(
            [CINDERBELL, "--store", self.folder / "kept", "--event", LUNCH, "--board", "lead",
             "--announce"], stdout=subprocess.PIPE, text=True, env=self.environment)
        try:
            self.assertEqual(first.stdout.readline(), "board\n")
            self.assert_leaves(self.app(), 5, "another window")
            store = self.folder / "kept" / "journal.store"
            for words in (["verify", store], ["events", store],
                          ["backup", store, "--to", self.folder / "copy.store"]):
                done = subprocess.run([BELLMAN, *map(str, words)], capture_output=True, text=True)
                self.assertEqual(done.returncode, 0, done.stderr)
        finally:
            first.terminate()
            first.wait()
            first.stdout.close()


if __name__ == "__main__":
    unittest.main()
