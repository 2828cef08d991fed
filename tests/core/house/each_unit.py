"""Runs a checking command on every translation unit and remembers which passed.

Units that see the same include paths and definitions are checked together, as one text that includes
them: most of a checker's time goes into headers that they share. Units that give the same name to
something of their own are kept apart; where that is not seen here, the group fails and is halved
until the unit at fault stands alone, so that it does no harm.

A unit is checked again only when something that could change the answer has changed: its text, the
text of any header of ours it reaches, the checker's settings, or the command itself. What passed is
remembered in the build tree under the hash of all that, so a second run takes seconds. A checker
whose first run takes minutes may also remember in a file of the source tree, so that a clean checkout
looks only at what was changed since that file was written.
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

LARGEST_GROUP = 20  # larger ones leave a core idle at the end
# What a unit keeps to itself, and in it the name that a line at its left edge declares.
OWN = re.compile(r"^namespace \{$(.*?)^\}  // namespace$", re.MULTILINE | re.DOTALL)
DECLARED = re.compile(r"^(?:struct|class|enum class|enum|union)\s+(\w+)|^[\w\[].*?(\w+)\s*(?:\[\w*\])?[({=;]"
                      r"|^using (\w+)", re.MULTILINE)
EVERYWHERE = re.compile(r"^#define (\w+)|^using (?:\w+::)*(\w+)(?: =|;)", re.MULTILINE)
INCLUDE = re.compile(rb'^\s*#\s*include\s*["<]([^">]+)[">]', re.MULTILINE)


class Unit:
    """One entry of compile_commands.json."""

    def __init__(self, entry, source):
        self.file = Path(entry["directory"], entry["file"]).resolve()
        self.directory = entry["directory"]
        self.arguments = entry.get("arguments") or shlex.split(entry["command"])
        self.name = self.file.relative_to(source).as_posix()

    def preprocessor_flags(self):
        """Include paths and definitions, without the compiler and its warnings. What CMake has
        precompiled is left out: a unit includes what it uses."""
        flags, words = [], iter(self.arguments[1:])
        for word in words:
            if word in {"-isystem", "-I", "-D", "-include"}:
                value = next(words)
                if not value.endswith("/cmake_pch.hxx"):
                    flags += [word, value]
            elif word.startswith(("-I", "-D", "-isystem")) or word == "-fPIC":
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
    digest.update(" ".join(unit.preprocessor_flags()).replace(str(source), "").encode())
    return digest.hexdigest()


def own_names(file):
    """Names that may not stand twice in one text, as far as a look at the left edge tells."""
    text = file.read_text(encoding="utf-8")
    declared = [found for own in OWN.findall(text) for found in DECLARED.findall(own)]
    return {name for found in declared + EVERYWHERE.findall(text) for name in found if name}


def groups(jobs):
    """Jobs whose units have the same flags and no name in common, at most LARGEST_GROUP a list."""
    alike = {}
    for job in jobs:
        names = own_names(job[0].file)
        same = alike.setdefault(tuple(job[0].preprocessor_flags()), [])
        for group, taken in same:
            if len(group) < LARGEST_GROUP and not names & taken:
                group.append(job)
                taken |= names
                break
        else:
            same.append(([job], set(names)))
    found = [group for same in alike.values() for group, _ in same]
    return sorted(found, key=len, reverse=True)  # the long ones first


def together(units_of_group, memory):
    """A text that includes the units; one unit is itself."""
    if len(units_of_group) == 1:
        return units_of_group[0].file
    text = "".join(f'#include "{unit.file}"  // NOLINT: to be checked together\n'
                   for unit in units_of_group)
    path = memory / f"together-{hashlib.sha256(text.encode()).hexdigest()[:16]}.cpp"
    path.write_text(text)
    return path


def failures(group, memory, command):
    """Checks a group and stamps what passed; the units that failed, each with what was said."""
    unit = group[0][0]
    file = together([unit for unit, _ in group], memory)
    done = subprocess.run(command(file, unit.preprocessor_flags()), cwd=unit.directory,
                          capture_output=True, text=True)
    if done.returncode == 0:
        for _, stamp in group:
            stamp.touch()
        return []
    if len(group) == 1:
        return [(unit, done.stdout + done.stderr)]
    middle = len(group) // 2
    return (failures(group[:middle], memory, command)
            + failures(group[middle:], memory, command))


def run_all(build, source, folders, memory, salt, command, record=None, remembers=False):
    """Runs command(file, flags) where needed; prints what failed; returns how many units failed.

    `record` is the file of the source tree that names what has passed; with `remembers` it is written
    anew once everything does.
    """
    memory.mkdir(parents=True, exist_ok=True)
    reach = Reach(source)
    recorded = set(record.read_text().split()[1::2]) if record and record.exists() else set()
    todo, all_units, lines = [], units(build, source, folders), []
    for unit in all_units:
        mark = fingerprint(unit, {unit.file} | reach.of(unit.file), salt, source)
        lines.append(f"{unit.name} {mark[:16]}\n")
        if not (memory / mark).exists() and mark[:16] not in recorded:
            todo.append((unit, memory / mark))

    began, failed = time.monotonic(), 0
    with concurrent.futures.ThreadPoolExecutor(len(os.sched_getaffinity(0))) as pool:
        for found in pool.map(lambda group: failures(group, memory, command), groups(todo)):
            for unit, said in found:
                failed += 1
                print(f"--- {unit.name}\n{said}", flush=True)
    took = time.monotonic() - began
    print(f"{len(all_units)} units, {len(todo)} checked now in {took:.0f} s, {failed} failed")
    if not all_units:
        print("no unit found: is compile_commands.json there, and no unity build?")
        return 1
    if record and remembers and not failed:
        record.write_text("".join(lines))
    return failed


def tool(*names):
    """The first of `names` that is installed; ends the test as skipped (77) when none is."""
    for name in names:
        for directory in os.environ.get("PATH", "").split(os.pathsep):
            if os.access(os.path.join(directory, name), os.X_OK):
                return name
    print(f"skipped: none of {', '.join(names)} is installed")
    sys.exit(77)
