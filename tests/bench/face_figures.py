#!/usr/bin/env python3
"""Start-up time, memory, idle processor time and frame times of the app on a live board, drawn by
software into no screen. Prints figures; asserts nothing.

    face_figures.py BUILD_DIRECTORY EVENT.json
"""

import os
import re
import statistics
import subprocess
import sys
import tempfile
import time


def processor_seconds(pid):
    with open(f"/proc/{pid}/stat", encoding="ascii") as file:
        fields = file.read().rsplit(")", 1)[1].split()
    return (int(fields[11]) + int(fields[12])) / os.sysconf("SC_CLK_TCK")


def peak_megabytes(pid):
    with open(f"/proc/{pid}/status", encoding="ascii") as file:
        for line in file:
            if line.startswith("VmHWM"):
                return int(line.split()[1]) / 1024
    raise RuntimeError("no VmHWM")


# What Qt's software render loop says of every frame it has drawn.
FRAME = re.compile(r"rendered with 'software' renderloop in (\d+)ms")


def start(build, event, store, *words, log=subprocess.DEVNULL):
    environment = dict(os.environ, QT_QPA_PLATFORM="offscreen", QT_QUICK_BACKEND="software")
    if log is not subprocess.DEVNULL:
        environment["QT_LOGGING_RULES"] = "qt.scenegraph.time.renderloop=true"
    begun = time.monotonic()
    app = subprocess.Popen([os.path.join(build, "cinderbell"), "--event", event, "--store", store,
                            "--announce", *words], env=environment, stdout=subprocess.PIPE,
                           stderr=log, text=True)
    if app.stdout.readline().strip() != "board":
        raise RuntimeError("the app did not come up")
    return app, time.monotonic() - begun


def frames_at_sixty(build, event, store, board):
    """Frame times in ms, in order of size, and the seconds in which they were drawn."""
    with tempfile.TemporaryFile("w+", encoding="utf-8") as log:
        app, _ = start(build, event, store, "--board", board, "--rehearse", "60", log=log)
        time.sleep(60)
        app.terminate()
        app.wait()
        log.seek(0)
        return sorted(int(found) for found in FRAME.findall(log.read())), 60


def main():
    build, event = sys.argv[1:3]
    with tempfile.TemporaryDirectory() as store:
        # The first start plans the event and is not the one that counts.
        app, first = start(build, event, store, "--board", "lead")
        app.terminate()
        app.wait()
        print(f"first start, planning the event: {first * 1000:.0f} ms")
        starts = []
        for _ in range(7):
            app, took = start(build, event, store, "--board", "lead")
            starts.append(took * 1000)
            app.terminate()
            app.wait()
        print(f"start to first board: median {statistics.median(starts):.0f} ms, "
              f"worst of {len(starts)}: {max(starts):.0f} ms")
        for board in ("lead", "fire", "buffet"):
            app, _ = start(build, event, store, "--board", board, "--rehearse", "1")
            time.sleep(5)
            before, since = processor_seconds(app.pid), time.monotonic()
            time.sleep(20)
            share = (processor_seconds(app.pid) - before) / (time.monotonic() - since)
            print(f"{board} board, rehearsal at life's speed: {share * 100:.2f} % of one core, "
                  f"peak memory {peak_megabytes(app.pid):.0f} MB")
            app.terminate()
            app.wait()
        for board in ("lead", "fire", "buffet"):
            frames, seconds = frames_at_sixty(build, event, store, board)
            if not frames:
                print(f"{board} board at 60 times life: no frame was told of")
                continue
            over = sum(1 for frame in frames if frame > 16)
            print(f"{board} board, rehearsal at 60 times life: {len(frames)} frames in {seconds} s, "
                  f"median {statistics.median(frames):.0f} ms, "
                  f"95 of 100 within {frames[len(frames) * 95 // 100]} ms, "
                  f"longest {frames[-1]} ms, {over} over 16 ms")


if __name__ == "__main__":
    main()
