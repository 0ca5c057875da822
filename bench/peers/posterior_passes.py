#!/usr/bin/python3
"""posterior.py's brute force over its five groups, told as passes: n is 1, seconds is the time of one pass."""
import json
import subprocess
import sys

line = subprocess.run(["/usr/bin/python3", "posterior.py", "200000", "numpy", *sys.argv[1:]], capture_output=True, text=True).stdout
answer = json.loads([text for text in line.splitlines() if text.startswith("{")][-1])
answer["n"] = 1
print(json.dumps(answer))
