"""Runs a checking command on every translation unit and remembers which passed.

A unit is checked again only when something that could change the answer has changed: its text, the
text of any header of ours it reaches, the checker's settings, or the command itself. What passed is
remembered in the build tree under the hash of all that, so a second run takes seconds.
"""

import concurrent.futures
import hashlib
import json
import os
import re
import shlex
import subprocess
import sys
import time
from pathlib import Path

INCLUDE = re.compile(rb'^\s*#\s*include\s*["<]([^">]+)[">]', re.MULTILINE)


class Unit:
    """One entry of compile_commands.json."""

    def __init__(self, entry, source):
        self.file = Path(entry["directory"], entry["file"]).resolve()
        self.directory = entry["directory"]
        self.arguments = entry.get("arguments") or shlex.split(entry["command"])
        self.name = self.file.relative_to(source).as_posix()

    def preprocessor_flags(self):
        """Include paths and definitions, without the compiler and its warnings."""
        flags, words = [], iter(self.arguments[1:])
        for word in words:
            if word in {"-isystem", "-I", "-D", "-include"}:
                flags += [word, next(words)]
            elif word.startswith(("-I", "-D", "-isystem")):
                flags.append(word)
        return flags


def units(build, source, folders):
    """The units that lie in one of `folders` of the source tree, generated ones left out."""
    entries = json.loads((build / "compile_commands.json").read_text())
    found = {}
    for entry in entries:
        file = Path(entry["directory"], entry["file"]).resolve()
        if any((source / folder) in file.parents for folder in folders) and file.exists():
            unit = Unit(entry, source)
            found[unit.name] = unit
    return [found[name] for name in sorted(found)]


class Reach:
    """What a file pulls in of ours, by reading the #include lines; system headers stay out."""

    def __init__(self, source):
        self.roots = [source / "core", source / "qml", source]
        self.known = {}

    def of(self, file):
        if file not in self.known:
            self.known[file] = set()  # breaks include cycles
            reached = {file}
            for target in INCLUDE.findall(file.read_bytes()):
                for root in [file.parent, *self.roots]:
                    path = (root / os.fsdecode(target)).resolve()
                    if path.is_file():
                        reached |= {path} | self.of(path)
                        break
            self.known[file] = reached
        return self.known[file]


def fingerprint(unit, reached, salt, source):
    digest = hashlib.sha256(salt.encode())
    for path in sorted(reached):
        digest.update(path.relative_to(source).as_posix().encode())
        digest.update(path.read_bytes())
    # The tree may be checked out anywhere.
    digest.update(" ".join(unit.arguments).replace(str(source), "").encode())
    return digest.hexdigest()


def run_all(build, source, folders, memory, salt, command):
    """Runs command(unit) where needed; prints what failed; returns the number of failed units."""
    memory.mkdir(parents=True, exist_ok=True)
    reach = Reach(source)
    todo, all_units = [], units(build, source, folders)
    for unit in all_units:
        stamp = memory / fingerprint(unit, {unit.file} | reach.of(unit.file), salt, source)
        if not stamp.exists():
            todo.append((unit, stamp))

    def check(job):
        unit, stamp = job
        done = subprocess.run(command(unit), cwd=unit.directory, capture_output=True, text=True)
        if done.returncode == 0:
            stamp.touch()
        return unit, done

    began, failed = time.monotonic(), 0
    with concurrent.futures.ThreadPoolExecutor(len(os.sched_getaffinity(0))) as pool:
        for unit, done in pool.map(check, todo):
            if done.returncode != 0:
                failed += 1
                print(f"--- {unit.name}\n{done.stdout}{done.stderr}", flush=True)
    took = time.monotonic() - began
    print(f"{len(all_units)} units, {len(todo)} checked now in {took:.0f} s, {failed} failed")
    if not all_units:
        print("no unit found: is compile_commands.json there, and no unity build?")
        return 1
    return failed


def tool(*names):
    """The first of `names` that is installed; ends the test as skipped (77) when none is."""
    for name in names:
        for directory in os.environ.get("PATH", "").split(os.pathsep):
            if os.access(os.path.join(directory, name), os.X_OK):
                return name
    print(f"skipped: none of {', '.join(names)} is installed")
    sys.exit(77)
