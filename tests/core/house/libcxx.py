#!/usr/bin/env python3
"""The whole core also compiles with clang++ 14 and libc++, whose library is older than its
compiler, as on the phones the app is meant for.

    libcxx.py SOURCE_DIRECTORY BUILD_DIRECTORY [--remember]

With --remember, tests/core/house/libcxx.txt then names what passed, for the next clean checkout.
"""

import subprocess
import sys
from pathlib import Path

import each_unit

FLAGS = ["-std=c++20", "-stdlib=libc++", "-Wall", "-Wextra", "-Werror", "-fsyntax-only"]


def main():
    source, build = (Path(argument).resolve() for argument in sys.argv[1:3])
    compiler = each_unit.tool("clang++-14")
    probe = subprocess.run([compiler, *FLAGS, "-x", "c++", "-"], input="#include <version>\n",
                           capture_output=True, text=True)
    if probe.returncode != 0:
        print("skipped: libc++ is not installed (Debian: libc++-dev)")
        return 77

    def command(file, flags):
        return [compiler, *FLAGS, *flags, str(file)]

    failed = each_unit.run_all(build, source, ["core"], build / "house/libcxx", " ".join(FLAGS),
                               command, record=source / "tests/core/house/libcxx.txt",
                               remembers="--remember" in sys.argv[3:])
    return 1 if failed else 0


if __name__ == "__main__":
    sys.exit(main())
