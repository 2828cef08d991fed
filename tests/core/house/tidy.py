#!/usr/bin/env python3
"""clang-tidy 14 with the settings of .clang-tidy finds nothing in core/, qml/models and platform/.

    tidy.py SOURCE_DIRECTORY BUILD_DIRECTORY [--remember]

With --remember, tests/core/house/tidied.txt then names what passed, for the next clean checkout.
"""

import sys
from pathlib import Path

import each_unit

FOLDERS = ["core", "platform", "qml/models"]


def main():
    source, build = (Path(argument).resolve() for argument in sys.argv[1:3])
    clang_tidy = each_unit.tool("clang-tidy-14")
    settings = source / ".clang-tidy"

    def command(file, flags):
        # The flags are g++'s; what only g++ understands must not count against us.
        return [clang_tidy, "--quiet", f"--config-file={settings}", str(file), "--", "-std=c++20",
                "-Wno-unknown-warning-option", *flags]

    return each_unit.run_all(build, source, FOLDERS, build / "house/tidy", settings.read_text(),
                             command, record=source / "tests/core/house/tidied.txt",
                             remembers="--remember" in sys.argv[3:])


if __name__ == "__main__":
    sys.exit(1 if main() else 0)
