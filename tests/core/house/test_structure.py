#!/usr/bin/env python3
"""The structure gate itself is tested: each rule on a tree that breaks it."""

import tempfile
import unittest
from pathlib import Path

import structure


def breaches_of(name, text):
    with tempfile.TemporaryDirectory() as directory:
        path = Path(directory) / name
        path.parent.mkdir(parents=True)
        path.write_text(text)
        (Path(directory) / "core").mkdir(exist_ok=True)
        (Path(directory) / "qml").mkdir(exist_ok=True)
        return [words for _, _, words in structure.breaches(Path(directory))]


class StructureGate(unittest.TestCase):
    def assert_breach(self, name, text, words):
        found = breaches_of(name, text)
        self.assertTrue(any(words in one for one in found), f"{name}: {found}")

    def assert_clean(self, name, text):
        self.assertEqual(breaches_of(name, text), [])

    def test_a_core_file_that_includes_qt_is_named(self):
        for header in ("QString", "QtCore/QString", "QtQml", "QObject"):
            self.assert_breach("core/live/day.cpp", f"#include <{header}>\n", "knows no Qt")

    def test_a_standard_header_is_no_qt_header(self):
        self.assert_clean("core/live/day.cpp", "#include <queue>\n#include <vector>\n")

    def test_siblings_may_not_include_one_another(self):
        self.assert_breach("core/cook/slab.cpp", '#include "plan/problem.h"\n',
                           "cook may not depend on plan")
        self.assert_breach("core/plan/planner.cpp", '#include "cook/slab.h"\n',
                           "plan may not depend on cook")

    def test_building_a_plan_may_include_its_siblings(self):
        self.assert_clean("core/plan/build/join.cpp",
                          '#include "cook/slab.h"\n#include "plan/problem.h"\n')

    def test_planning_may_not_include_what_builds_its_problem(self):
        self.assert_breach("core/plan/planner.cpp", '#include "plan/build/join.h"\n',
                           "plan may not depend on plan/build")

    def test_dependencies_never_point_up(self):
        self.assert_breach("core/base/time.h", '#include "event/event.h"\n', "may not depend")
        self.assert_breach("core/journal/codec.cpp", '#include "live/day.h"\n', "may not depend")
        self.assert_breach("core/sync/peer.cpp", '#include "live/day.h"\n', "may not depend")

    def test_qml_imports_never_point_up(self):
        self.assert_breach("qml/parts/Plate.qml", "import Cinderbell.Models\n", "parts may not")
        self.assert_breach("qml/boards/Fire.qml", "import Cinderbell.Pages\n", "boards may not")
        self.assert_breach("qml/theme/Ink.qml", "import Cinderbell.Parts\n", "theme may not")
        self.assert_clean("qml/pages/Page.qml", "import QtQuick\nimport Cinderbell.Boards\n")

    def test_only_the_store_sees_the_database(self):
        self.assert_breach("core/app/session.cpp", "#include <sqlite3.h>\n", "only journal/sqlite")
        self.assert_breach("core/journal/store.cpp", "#include <SQLiteCpp/SQLiteCpp.h>\n",
                           "only journal/sqlite")
        self.assert_breach("core/app/session.cpp", '#include "journal/sqlite/store.h"\n',
                           "app may not depend on journal/sqlite")
        self.assert_clean("core/journal/sqlite/store.cpp", "#include <sqlite3.h>\n")

    def test_the_time_is_read_in_one_place(self):
        for read in ("std::chrono::system_clock::now()", "std::time(nullptr)",
                     "clock_gettime(CLOCK_REALTIME, &t)", "std::chrono::steady_clock::now()"):
            self.assert_breach("core/live/day.cpp", f"auto t = {read};\n", "clock")
            self.assert_clean("core/base/clock.cpp", f"auto t = {read};\n")

    def test_a_comment_about_clocks_reads_no_clock(self):
        self.assert_clean("core/live/day.cpp", "// not system_clock::now()\n")

    def test_the_face_reads_no_clock(self):
        self.assert_breach("qml/boards/Fire.qml", "text: new Date()\n", "reads a clock")
        self.assert_breach("qml/models/day.cpp", "QDateTime::currentDateTimeUtc();\n",
                           "reads a clock")

    def test_a_header_is_named_from_core(self):
        self.assert_breach("core/live/day.cpp", '#include "day.h"\n', "name it from core/")

    def test_a_folder_outside_the_table_is_named(self):
        self.assert_breach("core/misc/odds.cpp", "int x;\n", "no folder of the dependency table")

    def test_the_top_level_is_fixed(self):
        self.assert_breach("scripts/run.sh", "true\n", "top level is fixed")

    def test_a_path_of_ones_own_machine_is_named(self):
        self.assert_breach("core/live/day.cpp", "// see /" + "root/notes\n", "own machine")


if __name__ == "__main__":
    unittest.main()
