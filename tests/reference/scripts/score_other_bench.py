#!/usr/bin/python3
"""How well causes were recognised on groups whose truth is known.

usage: python3 score_other_bench.py ANALYSIS.json NAME.truth.csv        ('-' reads the analysis from standard input)
ANALYSIS.json: what `calx analyse` prints as JSON; groups[i] has "group" and "causes": [{"cause", "probability"}, ...].
A group of the truth that the analysis lacks, or that has no causes in it, counts as wrong everywhere: not left out. Exit code 1
if there is one."""
import csv
import json
import math
import sys
from collections import Counter, defaultdict

FLOOR = 1e-6  # probability taken for a cause given none: the logarithm of nothing would drown all other groups
HELD = 0.9
BINS = 10


def smallest_set(ranked):
    """Causes from the likeliest down until together they hold 90 %."""
    held, causes = 0.0, []
    for cause, probability in ranked:
        if held >= HELD - 1e-9:
            break
        held += probability
        causes.append(cause)
    return causes


def calibration_error(pairs):
    """Mean distance between what was said and what was so, over ten bins of equal width, each by its number of pairs."""
    bins = defaultdict(list)
    for probability, so in pairs:
        bins[min(int(probability * BINS), BINS - 1)].append((probability, so))
    gaps = (abs(sum(p for p, _ in b) - sum(so for _, so in b)) for b in bins.values())
    return sum(gaps) / len(pairs) if pairs else math.nan


def share(hits):
    hits = list(hits)
    return f"{sum(hits) / len(hits):.3f} ({sum(hits)} of {len(hits)})" if hits else "none"


def main(analysis, truth_file):
    with sys.stdin if analysis == "-" else open(analysis, encoding="utf-8-sig") as file:
        answered = {}
        for group in json.load(file)["groups"]:
            of = Counter()
            for entry in group.get("causes") or []:
                of[entry["cause"]] += entry["probability"]
            answered[str(group["group"])] = sorted(of.items(), key=lambda item: -item[1])
    with open(truth_file, newline="", encoding="utf-8") as file:
        truth = list(csv.DictReader(file))

    rows, pairs, silent, never, total_off = [], [], 0, 0, 0
    for true in truth:
        ranked = answered.get(true["group"], [])
        silent += not ranked
        of = dict(ranked)
        total_off += bool(ranked) and abs(sum(of.values()) - 1) > 1e-3
        never += of.get(true["cause"], 0) < FLOOR
        pairs += [(p, cause == true["cause"]) for cause, p in ranked]
        rows.append((true["cause"], ranked[0][0] if ranked else "(nothing)", smallest_set(ranked),
                     math.log(max(of.get(true["cause"], 0), FLOOR)), true["gross"] == "yes"))

    print(f"groups                                          {len(rows)}")
    print(f"gross: cause ranked first                       {share(c == top for c, top, _, _, gross in rows if gross)}")
    print(f"true cause in the smallest set holding 90 %     {share(c in held for c, _, held, _, _ in rows)}")
    print(f"mean size of that set                           {sum(len(held) for _, _, held, _, _ in rows) / len(rows):.2f}")
    print(f"as-expected, but another cause ranked first     "
          f"{share(top != c for c, top, _, _, _ in rows if c == 'as-expected')}")
    print(f"true cause ranked first                         {share(c == top for c, top, _, _, _ in rows)}")
    print(f"mean log score (natural, floor {FLOOR:g})           {sum(log for _, _, _, log, _ in rows) / len(rows):.3f}")
    print(f"expected calibration error                      {calibration_error(pairs):.4f}")
    print(f"true cause given less than the floor            {never}")
    print(f"groups without causes in the analysis           {silent}")
    print(f"groups whose probabilities do not add up to 1   {total_off}")

    # Coverage by cause shows which of them a good total hides.
    causes = sorted({row[0] for row in rows} | {row[1] for row in rows}, key=lambda c: (c != "as-expected", c))
    table, inside = Counter((row[0], row[1]) for row in rows), Counter(row[0] for row in rows if row[0] in row[2])
    print("\ntrue cause (down) against cause ranked first (across)")
    print(" " * 18 + "".join(f"{c[:8]:>9}" for c in causes) + f"{'all':>7}{'in 90 %':>9}{'mean log':>10}")
    for c in causes:
        logs = [row[3] for row in rows if row[0] == c]
        if logs:
            print(f"{c:18}" + "".join(f"{table[c, top] or '.':>9}" for top in causes)
                  + f"{len(logs):>7}{inside[c] / len(logs):>9.2f}{sum(logs) / len(logs):>10.2f}")
    return 1 if silent else 0


if __name__ == "__main__":
    sys.exit(main(*sys.argv[1:3]))
