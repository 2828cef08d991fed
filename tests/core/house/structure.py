#!/usr/bin/env python3
"""The dependency rule of DEVELOPERS.md, checked on the text of every source file.

The linker keeps Qt out of the core as long as nobody links it; this keeps the reason visible: it
names the line that reaches where its folder must not. Exit code 0 when the house stands, 1 with one
line per breach.

    structure.py SOURCE_DIRECTORY
"""

import re
import sys
from pathlib import Path

SIBLINGS = {"quantity", "grate", "cook", "service", "safety", "plan"}

# What each folder of core/ may include beside itself and base/.
MAY_INCLUDE = {
    "base": set(),
    "event": set(),
    **{sibling: {"event"} for sibling in SIBLINGS},
    "quantity/build": {"event", "quantity", "grate", "cook"},
    "plan/build": {"event", "quantity", "grate", "cook", "plan"},
    "journal": {"event"} | SIBLINGS,
    "journal/sqlite": {"journal"},
    "live": {"event", "journal", "plan/build"} | SIBLINGS,
    "learn": {"event", "journal", "plan/build", "live"} | SIBLINGS,
    "report": {"event", "journal", "quantity/build", "plan/build", "live"} | SIBLINGS,
    "sync": {"journal"},
    "app": {"event", "journal", "quantity/build", "plan/build", "live", "learn", "report",
            "sync"} | SIBLINGS,
}

# What the QML of each folder may import of ours. Measure hands the theme the screen's density.
MAY_IMPORT = {
    "theme": {"Measure"},
    "parts": {"Measure", "Theme"},
    "boards": {"Measure", "Theme", "Parts", "Models"},
    "pages": {"Measure", "Theme", "Parts", "Models", "Boards"},
    "shell": {"Measure", "Theme", "Parts", "Models", "Boards", "Pages"},
}

TOP_LEVEL = {"CMakeLists.txt", "README.md", "DEVELOPERS.md", "LICENSE", "core", "qml", "platform",
             "assets", "tests", "demo-data"}

IMPORT = re.compile(r"^\s*import\s+Cinderbell\.(\w+)")
INCLUDE = re.compile(r'^\s*#\s*include\s*([<"])([^>"]+)[>"]')
WALL_CLOCK = re.compile(
    r"(system|steady)_clock\s*::\s*now|high_resolution_clock|clock_gettime|gettimeofday|"
    r"\bstd::time\s*\(|\btime\s*\(\s*(nullptr|NULL|0)\s*\)|\blocaltime|\bgmtime")
QT_CLOCK = re.compile(r"currentDateTime|currentMSecsSinceEpoch|currentSecsSinceEpoch|"
                      r"QTime::currentTime|QDate::currentDate")
QML_CLOCK = re.compile(r"\bnew\s+Date\b|\bDate\.now\b|\bDate\s*\(")
# A developer's machine has no business in a file everybody gets.
OWN_PATH = re.compile(r"(?<![\w.])/(?:work|root|home)/\w")


def folder_of(path_in_core, folders=MAY_INCLUDE):
    """'plan/build/join.h' -> 'plan/build': the deepest known folder a file lies in."""
    parts = path_in_core.split("/")[:-1]
    while parts:
        if "/".join(parts) in folders:
            return "/".join(parts)
        parts.pop()
    return None


def without_comments(line):
    return line.split("//", 1)[0]


def lines_of(path):
    return path.read_text(encoding="utf-8", errors="replace").splitlines()


def breaches_in_core_file(name, lines):
    """Forbidden includes and clock reads of one file; `name` is its path inside core/."""
    folder = folder_of(name)
    if folder is None:
        yield 1, "lies in no folder of the dependency table"
        return
    for number, line in enumerate(lines, 1):
        code = without_comments(line)
        included = INCLUDE.match(line)
        if included:
            yield from ((number, text) for text in breaches_of_include(folder, *included.groups()))
        if name != "base/clock.cpp" and WALL_CLOCK.search(code):
            yield number, "reads the system clock; take an Instant, or ask a Clock in app/"


def breaches_of_include(folder, bracket, target):
    if re.match(r"Qt?[A-Z]\w*(/|$)", target) or target.startswith(("QtCore/", "QtGui/")):
        yield f"includes {target}: the core knows no Qt"
    if re.match(r"(sqlite3\.h|SQLiteCpp/)", target) and folder != "journal/sqlite":
        yield f"includes {target}: only journal/sqlite may"
    if target.startswith(("qml/", "platform/", "models/")):
        yield f"includes {target}: the core knows neither face nor device"
    other = folder_of(target)
    if other and other not in {folder, "base"} and other not in MAY_INCLUDE[folder]:
        yield f"includes {target}: {folder} may not depend on {other}"
    if bracket == '"' and "/" not in target and folder != "base":
        # Headers are named from core/ so that the folder, and with it the rule, can be seen.
        yield f'includes "{target}": name it from core/, as "{folder}/{target}"'


def breaches_of_imports(folder, lines):
    for number, line in enumerate(lines, 1):
        imported = IMPORT.match(line)
        if imported and imported.group(1) not in MAY_IMPORT.get(folder, set()):
            yield number, f"imports Cinderbell.{imported.group(1)}: {folder} may not"


def breaches(source):
    """(file, line, words) for every breach in the tree."""
    core = source / "core"
    for path in sorted(core.rglob("*")):
        if path.suffix in {".h", ".cpp"}:
            name = path.relative_to(core).as_posix()
            for number, text in breaches_in_core_file(name, lines_of(path)):
                yield path, number, text
    for path in sorted((source / "qml").rglob("*")):
        if path.suffix in {".h", ".cpp", ".qml", ".js"}:
            pattern = QML_CLOCK if path.suffix in {".qml", ".js"} else QT_CLOCK
            for number, line in enumerate(lines_of(path), 1):
                if pattern.search(without_comments(line)):
                    yield path, number, "the face reads a clock; the Session hands it the time"
            if path.suffix == ".qml":
                for number, text in breaches_of_imports(path.parent.name, lines_of(path)):
                    yield path, number, text
            if path.suffix == ".js":
                yield path, 1, "a JavaScript file: QML binds, C++ computes"
    for path in sorted(source.iterdir()):
        if path.name not in TOP_LEVEL and not path.name.startswith("."):
            yield path, 1, "the top level is fixed"
    yield from own_paths(source)


def own_paths(source):
    for top in sorted(TOP_LEVEL | {".ci", ".presets"}):
        root = source / top
        files = sorted(root.rglob("*")) if root.is_dir() else [root]
        for path in files:
            if not path.is_file() or path.suffix in {".png", ".ttf", ".wav", ".db", ".bin"}:
                continue
            if "__pycache__" in path.parts or path.name == Path(__file__).name:
                continue
            for number, line in enumerate(lines_of(path), 1):
                if OWN_PATH.search(line):
                    yield path, number, "names a path of somebody's own machine"


def main():
    source = Path(sys.argv[1]).resolve()
    found = list(breaches(source))
    for path, number, text in found:
        print(f"{path.relative_to(source)}:{number}: {text}")
    if found:
        return 1
    print("every include, clock read and top-level name is where it may be")
    return 0


if __name__ == "__main__":
    sys.exit(main())
