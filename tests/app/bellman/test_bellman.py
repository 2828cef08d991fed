#!/usr/bin/env python3
"""bellman from outside: what it prints, what it returns, and that bad input harms nothing.

    BELLMAN=path SOURCE=tree test_bellman.py
"""

import csv
import json
import os
import pathlib
import sqlite3
import subprocess
import tempfile
import unittest

BELLMAN = os.environ["BELLMAN"]
DEMO = pathlib.Path(os.environ["SOURCE"], "demo-data")
SUPPER = DEMO / "pruning-day-supper.json"
LUNCH = DEMO / "orchard-harvest-lunch.json"


def bellman(*words, **settings):
    return subprocess.run([BELLMAN, *map(str, words)], capture_output=True, text=True, timeout=120,
                          **settings)


class Bellman(unittest.TestCase):
    def setUp(self):
        folder = tempfile.TemporaryDirectory()
        self.addCleanup(folder.cleanup)
        self.folder = pathlib.Path(folder.name)

    def file(self, text):
        path = self.folder / "event.json"
        path.write_bytes(text if isinstance(text, bytes) else text.encode())
        return path

    def changed(self, change):
        event = json.loads(LUNCH.read_text())
        change(event)
        return self.file(json.dumps(event))

    def assert_fails(self, done, code, *words):
        self.assertEqual(done.returncode, code, done.stderr[:2000] + done.stdout[:500])
        for word in words:
            self.assertIn(word, done.stderr)

    # --- the command line itself

    def test_help_names_every_exit_code(self):
        done = bellman("--help")
        self.assertEqual(done.returncode, 0)
        for code in (0, 2, 3, 4, 5, 6, 7, 8, 9):
            self.assertRegex(done.stdout, rf"(?m)(^|\s)  {code}  \w")

    def test_a_wrong_command_line_names_the_word(self):
        self.assert_fails(bellman(), 2, "--help")
        self.assert_fails(bellman("paln", LUNCH), 2, '"paln"')
        self.assert_fails(bellman("plan"), 2, "needs a file")
        self.assert_fails(bellman("plan", LUNCH, "--seeds", "1"), 2, '"--seeds"')
        self.assert_fails(bellman("plan", LUNCH, "--seed", "many"), 2, '"many"', "whole number")
        self.assert_fails(bellman("verify", LUNCH, "--json"), 2, '"--json"')

    # --- good events

    def test_every_demo_event_is_without_fault_and_its_plan_keeps_every_rule(self):
        for demo in sorted(DEMO.glob("*.json")):
            self.assertEqual(bellman("check", demo).returncode, 0, demo)
            planned = bellman("plan", demo)
            self.assertEqual(planned.returncode, 0, planned.stderr)
            self.assertIn("checker: every rule holds", planned.stdout)
            self.assertIn("latest arrival", planned.stdout)

    def test_the_same_seed_gives_the_same_plan(self):
        plans = [json.loads(bellman("plan", LUNCH, "--json", "--seed", 7, "--schedules", 300).stdout)
                 for _ in range(2)]
        self.assertEqual(plans[0]["tasks"], plans[1]["tasks"])

    def test_the_json_run_sheet_is_whole_and_in_order(self):
        plan = json.loads(bellman("plan", LUNCH, "--json").stdout)
        self.assertEqual(plan["guests"], 96)
        self.assertEqual(plan["violations"], [])
        starts = [task["startSecondsFromBell"] for task in plan["tasks"]]
        self.assertEqual(starts, sorted(starts))
        self.assertLess(starts[0], 0)
        self.assertTrue(any(task["handsOn"] for task in plan["tasks"]))

    def test_names_come_in_the_language_asked_for(self):
        self.assertIn("Comida de cosecha", bellman("plan", LUNCH, "--language", "es").stdout)

    # --- lists

    def test_the_lists_of_every_demo_event_are_whole(self):
        for demo in sorted(DEMO.glob("*.json")):
            done = bellman("lists", demo)
            self.assertEqual(done.returncode, 0, done.stderr)
            self.assertIn("nothing is missing and nothing contradicts", done.stdout)

    def test_the_lists_as_json_open_down_to_the_field(self):
        lists = json.loads(bellman("lists", LUNCH, "--json").stdout)
        self.assertEqual(lists["faults"], [])
        slaw = lists["dishes"][0]["portions"]
        self.assertEqual(slaw["inputs"][0]["source"], "/guests/adults")
        self.assertEqual(lists["leaveBy"], "2027-09-18T10:05:00-04:00")
        self.assertEqual(lists["line"]["shortByMm"], 0)

    def test_one_list_as_csv_is_read_by_others(self):
        done = subprocess.run([BELLMAN, "lists", LUNCH, "--csv", "purchase"], capture_output=True)
        rows = list(csv.reader(done.stdout.decode().splitlines()))
        self.assertEqual(rows[0], ["Buy", "What", "Needed", "For"])
        self.assertTrue(done.stdout.endswith(b"\r\n"))
        self.assertTrue(all(len(row) == 4 for row in rows))
        self.assert_fails(bellman("lists", LUNCH, "--csv", "soup"), 2, '"soup"', "purchase")
        self.assert_fails(bellman("plan", LUNCH, "--csv", "pack"), 2, '"--csv"')

    def test_the_lists_speak_spanish_and_pounds(self):
        done = bellman("lists", LUNCH, "--language", "es", "--customary")
        self.assertIn("Lista de compras", done.stdout)
        self.assertIn(" lb", done.stdout)

    def test_what_is_missing_is_named_and_the_rest_is_still_listed(self):
        path = self.changed(lambda event: event["menu"][0]["serving"].pop("takePercent"))
        done = bellman("lists", path)
        self.assertEqual(done.returncode, 0)
        self.assertIn("/menu/0/serving/takePercent is missing", done.stdout)
        self.assertIn("New potatoes", done.stdout)

    # --- bad events

    def test_truncated_anywhere_it_is_a_bad_event(self):
        whole = LUNCH.read_bytes()
        for share in (0, 1, 7, 50, 99):
            self.assert_fails(bellman("check", self.file(whole[:len(whole) * share // 100])), 3)

    def test_a_huge_file_is_refused_without_being_read_whole(self):
        path = self.folder / "huge.json"
        with path.open("wb") as huge:
            huge.truncate(3 << 30)
        self.assert_fails(bellman("check", path), 3, "1 fault")

    def test_deep_nesting_is_refused(self):
        self.assert_fails(bellman("check", self.file("[" * 200000)), 3)
        self.assert_fails(bellman("plan", self.file('{"a":' * 5000 + "1" + "}" * 5000)), 3)

    def test_hostile_bytes_are_refused(self):
        for text in (b"\xff\xfe\x00", b'{"version":1e999}', b'{"version":1,"version":1}',
                     b"\x00" * 100, b'{"serve":"\xed\xa0\x80"}'):
            self.assert_fails(bellman("check", self.file(text)), 3)

    def test_no_crew_is_named_by_its_path(self):
        path = self.changed(lambda event: event.update(crew=[]))
        self.assert_fails(bellman("plan", path), 3, "/crew")

    def test_negative_guests_are_named_with_the_value_found(self):
        path = self.changed(lambda event: event["guests"].update(adults=-5))
        self.assert_fails(bellman("check", path), 3, "/guests/adults", "-5")

    def test_an_impossible_time_is_named(self):
        path = self.changed(lambda event: event.update(serve="2027-02-30T13:00:00-04:00"))
        self.assert_fails(bellman("check", path), 3, "/serve", "2027-02-30")

    def test_faults_as_json_carry_path_and_remedy(self):
        path = self.changed(lambda event: event.update(serve="noon"))
        done = bellman("check", path, "--json")
        self.assertEqual(done.returncode, 3)
        answer = json.loads(done.stdout)
        self.assertFalse(answer["isValid"])
        self.assertEqual(answer["faults"][0]["path"], "/serve")
        self.assertIn("noon", answer["faults"][0]["found"])

    def test_a_crew_that_arrives_too_late_is_told_by_how_much(self):
        def late(event):
            event["site"]["arrival"] = "2027-09-18T12:40:00-04:00"
        self.assert_fails(bellman("plan", self.changed(late)), 4, "min")

    def test_a_file_that_is_not_there_or_a_folder(self):
        self.assert_fails(bellman("check", self.folder / "none.json"), 6, "none.json")
        self.assert_fails(bellman("check", self.folder), 6, "folder")

    # --- stores

    def played(self):
        store = self.folder / "day.store"
        done = bellman("play", SUPPER, "--store", store)
        self.assertEqual(done.returncode, 0, done.stderr)
        return store, done

    def test_a_played_day_ends_and_its_record_is_whole(self):
        store, done = self.played()
        self.assertIn("the day is over", done.stdout)
        self.assertIn("turned 1 of", done.stdout)
        self.assertIn("as it was written", bellman("verify", store).stdout)
        self.assertRegex(bellman("events", store).stdout, r"pruning-day-supper")

    def test_an_altered_record_is_found(self):
        store, _ = self.played()
        self.altered(store)
        self.assert_fails(bellman("verify", store), 7, "entry")

    def altered(self, store):
        database = sqlite3.connect(store)
        tables = [name for (name, sql) in
                  database.execute("SELECT name, sql FROM sqlite_master WHERE type = 'table'")
                  if "body" in sql]
        for (trigger,) in database.execute(
                "SELECT name FROM sqlite_master WHERE type = 'trigger'").fetchall():
            database.execute(f"DROP TRIGGER {trigger}")
        database.execute(f"UPDATE {tables[0]} SET body = '{{}}'")
        database.commit()
        database.close()

    def test_a_store_from_a_newer_version_is_shown_and_left_as_it_is(self):
        store, _ = self.played()
        database = sqlite3.connect(store)
        database.execute("PRAGMA user_version = 9999")
        database.close()
        before = store.read_bytes()
        shown = bellman("events", store)
        self.assertEqual(shown.returncode, 0, shown.stderr)
        self.assertIn("newer", shown.stdout)
        self.assert_fails(bellman("play", SUPPER, "--store", store), 5, "read-only")
        self.assertEqual(store.read_bytes(), before)

    def test_a_store_is_copied_and_taken_back_without_losing_what_is_there(self):
        store, _ = self.played()
        copy, other = self.folder / "copy.store", self.folder / "other.store"
        self.assertEqual(bellman("backup", store, "--to", copy).returncode, 0)
        self.assertEqual(bellman("play", LUNCH, "--store", other).returncode, 0)
        done = bellman("restore", other, "--from", copy)
        self.assertEqual(done.returncode, 0, done.stderr)
        self.assertIn("2 events", done.stdout)
        self.assertIn("0 entries", bellman("restore", other, "--from", copy).stdout)
        listed = bellman("events", other).stdout
        self.assertIn("pruning-day-supper", listed)
        self.assertIn("orchard", listed)
        self.assertIn("as it was written", bellman("verify", other).stdout)
        self.assert_fails(bellman("restore", other, "--from", self.folder / "none"), 5, "none")
        self.assert_fails(bellman("backup", store), 2, "--to")

    def test_a_copy_takes_the_place_of_no_store(self):
        store, _ = self.played()
        other, copy = self.folder / "other.store", self.folder / "copy.store"
        self.assertEqual(bellman("play", SUPPER, "--store", other).returncode, 0)
        self.assertEqual(bellman("backup", store, "--to", copy).returncode, 0)
        log = self.folder / "copy.store-wal"
        log.write_bytes(b"what was written last")
        for target in (other, copy, store):
            before = target.read_bytes()
            self.assert_fails(bellman("backup", store, "--to", target), 5, target.name,
                              "left as it is", "another file")
            self.assertEqual(target.read_bytes(), before)
        self.assertEqual(log.read_bytes(), b"what was written last")
        log.unlink()
        self.assertIn("checked", bellman("backup", store, "--to", copy).stdout)

    def test_an_altered_record_is_copied_and_named(self):
        store, _ = self.played()
        self.altered(store)
        copy = self.folder / "copy.store"
        done = bellman("backup", store, "--to", copy)
        self.assertEqual(done.returncode, 0, done.stderr)
        self.assertIn("checked", done.stdout)
        self.assertRegex(done.stdout, "event .*, device .*, entry .* is not the one")
        self.assert_fails(bellman("verify", copy), 7, "entry")

    def test_a_damaged_store_is_named_not_where_the_copy_was_to_go(self):
        store, _ = self.played()
        whole = bytearray(store.read_bytes())
        whole[len(whole) // 2:len(whole) // 2 + 8192] = b"Z" * 8192
        store.write_bytes(whole)
        copy = self.folder / "copy.store"
        self.assert_fails(bellman("backup", store, "--to", copy), 5, f"store {store}", "damaged")
        self.assertFalse(copy.exists())

    def test_what_could_not_be_printed_is_not_passed_off_as_done(self):
        with open("/dev/full", "wb") as full:
            for words in (["plan", LUNCH], ["lists", LUNCH], ["--help"],
                          ["check", self.file("{}"), "--json"]):
                done = subprocess.run([BELLMAN, *map(str, words)], stdout=full,
                                      stderr=subprocess.PIPE, text=True)
                self.assertEqual(done.returncode, 9, words)
                self.assertIn("printed", done.stderr)

    def test_a_full_disk_is_said_and_loses_nothing(self):
        store, _ = self.played()
        size = store.stat().st_size // 1024
        done = bellman("play", LUNCH, "--store", store, "--store-limit", size + 40)
        self.assert_fails(done, 5, "room")
        self.assertIn("as it was written", bellman("verify", store).stdout)
        self.assertIn("pruning-day-supper", bellman("events", store).stdout)

    def test_what_is_no_store_is_left_as_it_is(self):
        text = b"not a database, but somebody's notes" * 100
        path = self.file(text)
        self.assert_fails(bellman("verify", path), 5, "not a store")
        self.assert_fails(bellman("play", SUPPER, "--store", path), 5, "not a store")
        self.assertEqual(path.read_bytes(), text)

    def test_looking_for_a_store_makes_none(self):
        path = self.folder / "none.store"
        self.assert_fails(bellman("events", path), 5, "none.store")
        self.assertFalse(path.exists())


if __name__ == "__main__":
    unittest.main()
