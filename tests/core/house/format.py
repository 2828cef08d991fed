#!/usr/bin/env python3
"""Every C++ file is as clang-format 14 leaves it.

    format.py SOURCE_DIRECTORY          says what differs
    format.py SOURCE_DIRECTORY --fix    rewrites it
"""

import subprocess
import sys
from pathlib import Path

import each_unit

FOLDERS = ["core", "qml", "platform", "tests"]


def main():
    source = Path(sys.argv[1]).resolve()
    clang_format = each_unit.tool("clang-format-14")
    files = sorted(str(path) for folder in FOLDERS for path in (source / folder).rglob("*")
                   if path.suffix in {".h", ".cpp", ".mm"})
    mode = ["-i"] if "--fix" in sys.argv else ["--dry-run", "-Werror"]
    done = subprocess.run([clang_format, "--style=file", *mode, *files])
    print(f"{len(files)} files read")
    return 1 if done.returncode or not files else 0


if __name__ == "__main__":
    sys.exit(main())
