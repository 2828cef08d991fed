#!/usr/bin/env python3
"""Every alarm is really heard: the player rings into a sound server of our own, whose output is
recorded and searched for the alarm's pitch and rhythm. Without a sound server the player says so.

    RING_EACH=program test_alarm_heard.py
"""

import array
import concurrent.futures
import math
import os
import pathlib
import shutil
import subprocess
import sys
import tempfile
import time
import unittest

RING_EACH = os.environ["RING_EACH"]
RATE = 48000
# The pitch that carries most in each recipe, in the order of live::TimerKind, and how many onsets.
ALARMS = [("turn", 1318.51, 4), ("pull", 1567.98, 3), ("rest over", 739.99, 2),
          ("start now", 1046.50, 4), ("check", 2349.32, 3)]


def strength(samples, hertz):
    """Goertzel, scaled so that a full-scale sine of that pitch throughout gives 1."""
    turn = 2 * math.cos(2 * math.pi * hertz / RATE)
    before = last = 0.0
    for sample in samples:
        before, last = last, sample + turn * last - before
    power = last * last + before * before - turn * last * before
    return math.sqrt(max(power, 0)) * 2 / (32768 * max(len(samples), 1))


def onsets(samples):
    """Sounds that begin after at least 10 ms of near silence."""
    floor = max(map(abs, samples), default=0) / 50
    count, quiet = 0, RATE
    for sample in samples:
        if abs(sample) <= floor:
            quiet += 1
            continue
        count += quiet > RATE / 100
        quiet = 0
    return count


def ring(kind, loudness, environment):
    return subprocess.run([RING_EACH, str(kind), str(loudness)], capture_output=True, text=True,
                          timeout=60, env={**os.environ, **environment})


def wait_until(holds, complaint):
    deadline = time.monotonic() + 20
    while time.monotonic() < deadline:
        if holds():
            return
        time.sleep(0.1)
    raise RuntimeError(complaint)


def hear(kind, loudness):
    """What rings into a sound server of its own, so that several can be heard at a time."""
    with tempfile.TemporaryDirectory() as folder:
        server = SoundServer(folder)
        try:
            return server.record_while(lambda: ring(kind, loudness, server.environment))
        finally:
            server.stop()


def hear_all(rings):
    with concurrent.futures.ThreadPoolExecutor(len(rings)) as pool:
        return list(pool.map(lambda each: hear(*each), rings))


class SoundServer:
    """A PulseAudio of our own with one output that leads nowhere but can be recorded."""

    def __init__(self, folder):
        self.folder = folder
        script = pathlib.Path(folder, "server.pa")
        script.write_text(
            f"load-module module-native-protocol-unix auth-anonymous=1 socket={folder}/pulse.sock\n"
            f"load-module module-null-sink sink_name=alarm rate={RATE} channels=2\n"
            "set-default-sink alarm\n")
        self.environment = {"PULSE_SERVER": f"unix:{folder}/pulse.sock",
                            "XDG_RUNTIME_DIR": folder, "PULSE_RUNTIME_PATH": folder,
                            "HOME": folder}
        self.process = subprocess.Popen(
            ["pulseaudio", "-n", "--daemonize=no", "--exit-idle-time=-1", "--disallow-exit",
             "--use-pid-file=no", f"--file={script}"],
            env={**os.environ, **self.environment}, stdout=subprocess.DEVNULL,
            stderr=subprocess.DEVNULL)
        wait_until(self.answers, "the sound server did not start")

    def answers(self):
        return subprocess.run(["pactl", "info"], env={**os.environ, **self.environment},
                              capture_output=True).returncode == 0

    def record_while(self, action):
        raw = pathlib.Path(self.folder, "heard.raw")
        with raw.open("wb") as heard:
            recorder = subprocess.Popen(
                ["parec", "-d", "alarm.monitor", "--format=s16le", f"--rate={RATE}",
                 "--channels=1", "--raw", "--latency-msec=50"],
                env={**os.environ, **self.environment}, stdout=heard)
        try:
            # A machine under load is slow to connect; what rings before that is not recorded.
            wait_until(lambda: raw.stat().st_size > 0, "nothing is recorded")
            done = action()
            time.sleep(0.5)  # what was played last is still on its way
        finally:
            recorder.terminate()
            recorder.wait()
        samples = raw.read_bytes()
        return done, array.array("h", samples[:len(samples) // 2 * 2])

    def stop(self):
        self.process.terminate()
        self.process.wait()


class AlarmHeard(unittest.TestCase):
    def test_each_alarm_is_heard_at_its_own_pitch_and_in_its_own_rhythm(self):
        faults = {}
        missing = list(range(len(ALARMS)))
        # A machine under load drops samples of its own accord; three silent tries do not.
        for attempt in range(3):
            for kind, heard in zip(missing, hear_all([(kind, 1) for kind in missing])):
                faults[kind] = self.faults_of(kind, *heard)
                print(f"{ALARMS[kind][0]}, try {attempt + 1}: {faults[kind]}")
            missing = [kind for kind in missing if faults[kind]]
            if not missing:
                break
        self.assertEqual({ALARMS[kind][0]: faults[kind] for kind in missing}, {})

    def faults_of(self, kind, done, samples):
        name, _, count = ALARMS[kind]
        strengths = {other: strength(samples, pitch) for other, pitch, _ in ALARMS}
        print(name, {other: round(value, 4) for other, value in strengths.items()})
        others = [value for other, value in strengths.items() if other != name]
        # Averaged over seconds of recording, silence included; a silent one gives 0.
        checks = [(done.returncode == 0, done.stderr), ("audible 1" in done.stdout, done.stdout),
                  (strengths[name] > 0.001, "not heard"),
                  (strengths[name] > 3 * max(others), "another pitch is as strong"),
                  (onsets(samples) == count, f"{onsets(samples)} onsets, not {count}")]
        return [words for holds, words in checks if not holds]

    def test_a_louder_ring_is_louder(self):
        loudnesses = (1, 3, 5)
        tries = hear_all([(0, loudness) for loudness in loudnesses] * 2)
        peaks = [max((abs(value) for _, samples in tries[k::len(loudnesses)] for value in samples),
                     default=0) for k in range(len(loudnesses))]
        self.assertGreater(peaks[1], 1.5 * peaks[0])
        self.assertGreater(peaks[2], 1.5 * peaks[1])

    def test_where_no_tone_can_be_written_the_player_says_so_though_it_could_be_heard(self):
        with tempfile.TemporaryDirectory() as folder:
            server = SoundServer(folder)
            try:
                done = ring(0, 5, {**server.environment, "TMPDIR": f"{folder}/none"})
            finally:
                server.stop()
        self.assertEqual(done.returncode, 0, done.stderr)
        self.assertIn("audible 0", done.stdout)

    def test_without_a_sound_server_the_player_says_so_and_goes_on(self):
        with tempfile.TemporaryDirectory() as folder:
            done = ring(0, 5, {"PULSE_SERVER": f"unix:{folder}/none", "HOME": folder})
        self.assertEqual(done.returncode, 0, done.stderr)
        self.assertIn("audible 0", done.stdout)


if __name__ == "__main__":
    missing = [tool for tool in ("pulseaudio", "parec", "pactl") if shutil.which(tool) is None]
    if missing:
        print(f"skipped: {', '.join(missing)} not installed (Debian: pulseaudio pulseaudio-utils)")
        sys.exit(77)
    unittest.main()
