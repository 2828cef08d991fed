"""Checks event files, and what the app writes after reading them, against the published schema with
a general-purpose validator (JSON Schema 2020-12). Broken shapes must be refused by it, too."""

import json
import subprocess
import sys

SKIPPED = 77

try:
    from jsonschema import Draft202012Validator
except ImportError:
    print("skipped: no jsonschema 4 for this Python (Debian: python3-jsonschema)")
    sys.exit(SKIPPED)

schema_file, rewrite, broken_file, *files = sys.argv[1:]
with open(schema_file, encoding="utf-8") as file:
    schema = json.load(file)
Draft202012Validator.check_schema(schema)
validator = Draft202012Validator(schema)

written = json.loads(subprocess.run([rewrite, *files], check=True, capture_output=True).stdout)
bad = 0
for name, again in zip(files, written, strict=True):
    with open(name, encoding="utf-8") as file:
        for what, document in (("as it is", json.load(file)), ("as written", again)):
            for error in validator.iter_errors(document):
                print(f"{name}, {what}: {error.json_path}: {error.message}")
                bad += 1
with open(broken_file, encoding="utf-8") as file:
    if validator.is_valid(json.load(file)):
        print(f"{broken_file}: the schema lets it pass")
        bad += 1
print(f"{len(files)} files, {bad} errors")
sys.exit(1 if bad else 0)
