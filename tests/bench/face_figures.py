#!/usr/bin/env python3
"""Start-up time, memory and idle processor time of the app on a live board, drawn by software into
no screen. Prints figures; asserts nothing.

    face_figures.py BUILD_DIRECTORY EVENT.json
"""

import os
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


def start(build, event, store, *words):
    environment = dict(os.environ, QT_QPA_PLATFORM="offscreen", QT_QUICK_BACKEND="software")
    begun = time.monotonic()
    app = subprocess.Popen([os.path.join(build, "cinderbell"), "--event", event, "--store", store,
                            "--announce", *words], env=environment, stdout=subprocess.PIPE,
                           stderr=subprocess.DEVNULL, text=True)
    if app.stdout.readline().strip() != "board":
        raise RuntimeError("the app did not come up")
    return app, time.monotonic() - begun


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


if __name__ == "__main__":
    main()
