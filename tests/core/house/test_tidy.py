#!/usr/bin/env python3
"""The clang-tidy gate itself is tested: that it finds, and that it forgets when it must."""

import json
import shutil
import subprocess
import sys
import tempfile
import unittest
from pathlib import Path

import each_unit

HERE = Path(__file__).resolve().parent
CLEAN_HEADER = "#pragma once\nint doubled(int pieces);\n"
CLEAN_UNIT = '#include "pans.h"\nint doubled(int pieces) { return 2 * pieces; }\n'
# An integer division whose fraction is lost before it becomes a double.
BREACH = "inline double half(int pieces) { return pieces / 2; }\n"


class TidyGate(unittest.TestCase):
    def setUp(self):
        directory = tempfile.TemporaryDirectory()
        self.addCleanup(directory.cleanup)
        self.tree = Path(directory.name)
        (self.tree / "core").mkdir()
        (self.tree / "build").mkdir()
        (self.tree / ".clang-tidy").write_text((HERE.parents[2] / ".clang-tidy").read_text())
        self.compiled("pans.cpp")
        self.write(CLEAN_HEADER, CLEAN_UNIT)

    def compiled(self, *names):
        entries = [{"directory": str(self.tree), "file": f"core/{name}",
                    "command": f"c++ -std=c++20 -c core/{name}"} for name in names]
        (self.tree / "build/compile_commands.json").write_text(json.dumps(entries))

    def write(self, header, unit):
        (self.tree / "core/pans.h").write_text(header)
        (self.tree / "core/pans.cpp").write_text(unit)

    def gate(self, *options):
        done = subprocess.run([sys.executable, "-B", HERE / "tidy.py", self.tree,
                               self.tree / "build", *options], capture_output=True, text=True)
        return done.returncode, done.stdout + done.stderr

    def assert_found(self, name):
        code, said = self.gate()
        self.assertEqual(code, 1, said)
        self.assertIn(f"core/{name}", said)
        self.assertIn("bugprone-integer-division", said)

    def test_a_breach_in_a_unit_is_named(self):
        self.write(CLEAN_HEADER, CLEAN_UNIT + BREACH)
        self.assert_found("pans.cpp")

    def test_a_breach_in_a_header_is_named(self):
        self.write(CLEAN_HEADER + BREACH, CLEAN_UNIT)
        self.assert_found("pans.h")

    def test_a_breach_among_units_checked_together_is_named_alone(self):
        self.compiled("pans.cpp", "trays.cpp", "lids.cpp")
        (self.tree / "core/lids.cpp").write_text("int lids() { return 2; }\n")
        (self.tree / "core/trays.cpp").write_text(BREACH)
        code, said = self.gate()
        self.assertEqual(code, 1, said)
        self.assertIn("--- core/trays.cpp", said)
        self.assertIn("3 units, 3 checked now", said)
        self.assertIn("1 failed", said)
        self.assertIn("3 units, 1 checked now", self.gate()[1])

    def test_units_with_a_name_in_common_do_no_harm(self):
        self.compiled("pans.cpp", "trays.cpp")
        (self.tree / "core/trays.cpp").write_text(CLEAN_UNIT)
        code, said = self.gate()
        self.assertEqual(code, 0, said)
        self.assertIn("2 units, 2 checked now", said)

    def test_what_passed_is_not_looked_at_again_until_it_changes(self):
        for header, looked_at in ((CLEAN_HEADER, 1), (CLEAN_HEADER, 0), (CLEAN_HEADER + "\n", 1)):
            self.write(header, CLEAN_UNIT)
            code, said = self.gate()
            self.assertEqual(code, 0, said)
            self.assertIn(f"1 units, {looked_at} checked now", said)

    def test_a_clean_checkout_looks_at_what_changed_since_it_was_recorded(self):
        (self.tree / "tests/core/house").mkdir(parents=True)
        self.gate("--remember")
        for header, looked_at in ((CLEAN_HEADER, 0), (CLEAN_HEADER + BREACH, 1)):
            shutil.rmtree(self.tree / "build/house")
            self.write(header, CLEAN_UNIT)
            self.assertIn(f"1 units, {looked_at} checked now", self.gate()[1])

    def test_what_failed_is_not_recorded(self):
        (self.tree / "tests/core/house").mkdir(parents=True)
        self.write(CLEAN_HEADER, CLEAN_UNIT + BREACH)
        self.assertEqual(self.gate("--remember")[0], 1)
        self.assertFalse((self.tree / "tests/core/house/tidied.txt").exists())

    def test_what_failed_is_looked_at_again(self):
        self.write(CLEAN_HEADER, CLEAN_UNIT + BREACH)
        self.gate()
        self.assert_found("pans.cpp")

    def test_a_changed_setting_is_looked_at_with_every_unit(self):
        self.gate()
        with (self.tree / ".clang-tidy").open("a") as settings:
            settings.write("\n# one more line\n")
        self.assertIn("1 checked now", self.gate()[1])

    def test_no_unit_at_all_is_a_failure(self):
        (self.tree / "build/compile_commands.json").write_text("[]")
        self.assertEqual(self.gate()[0], 1)


if __name__ == "__main__":
    each_unit.tool("clang-tidy-14")
    unittest.main()
