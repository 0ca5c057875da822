#!/usr/bin/python3
"""Judges ../computed/lesson_simpy.csv by two other ways; prints the worst differences and exits 1 beyond 4.5 errors.
usage: lesson_check.py [lessons]   (needs python3-numpy and python3-scipy, not SimPy)

1. The same classes by a list of events in plain Python, its random numbers drawn from another generator.
2. A balance for every group, which has no queue: the end's distribution is a convolution of the steps to the power of
   the groups; the list of events must agree with it."""
import csv
import heapq
import os
import random
import sys
from collections import deque

import numpy as np
from scipy.stats import beta

import lesson_simpy as told

HERE = os.path.dirname(os.path.abspath(__file__))
LIMIT = 4.5


def minutes(rnd, law):
    a, m, b = law
    return a + (b - a) * rnd.betavariate(1 + 4 * (m - a) / (b - a), 1 + 4 * (b - m) / (b - a))


def group(scenario, rnd):
    if scenario == "arrivals":
        a, m, b = told.QUICK_WEIGHING
        return rnd.uniform(0, told.ARRIVING), [("balance", rnd.triangular(a, b, m))]
    start = minutes(rnd, told.LATENESS) if scenario == "late" and rnd.random() < told.LATE else 0.0
    steps = told.SHARED if scenario == "shared" else told.PLAIN
    if scenario == "again" and rnd.random() < told.AGAIN:
        steps = steps + told.ONCE_MORE
    return start, [(kind, minutes(rnd, law)) for kind, law in steps]


def lesson(scenario, groups, balances, rnd):
    """A row as lesson_simpy.block gives them. An event is the minute at which a group ends its step."""
    plans = [group(scenario, rnd) for _ in range(groups)]
    free = {"balance": balances, "burner": told.BURNERS, "teacher": 1}
    queues = {kind: deque() for kind in free}
    at, asked, ends = [-1] * groups, [0.0] * groups, [0.0] * groups
    events = [(start, g) for g, (start, _) in enumerate(plans)]
    heapq.heapify(events)
    waited = busy = visits = 0

    def begin(g, now):
        nonlocal waited, busy, visits
        kind, length = plans[g][1][at[g]]
        if kind == "balance":
            waited, busy, visits = waited + now - asked[g], busy + length, visits + 1
        heapq.heappush(events, (now + length, g))

    while events:
        now, g = heapq.heappop(events)
        steps = plans[g][1]
        held = steps[at[g]][0] if at[g] >= 0 else None
        if held and queues[held]:
            begin(queues[held].popleft(), now)
        elif held:
            free[held] += 1
        at[g] += 1
        if at[g] == len(steps):
            ends[g] = now
            continue
        kind, asked[g] = steps[at[g]][0], now
        if kind is None:
            begin(g, now)
        elif free[kind]:
            free[kind] -= 1
            begin(g, now)
        else:
            queues[kind].append(g)
    end = max(ends)
    stay = sum(e - start for e, (start, _) in zip(ends, plans)) / groups
    return end, sum(ends) / groups, waited, visits, busy / (balances * end), stay


def without_queue(groups, step=0.005):
    """Minutes and the probability that all have finished the plain steps by then."""
    law_of_sum, first = np.ones(1), 0.0
    for _, (a, m, b) in told.PLAIN:
        law = beta(1 + 4 * (m - a) / (b - a), 1 + 4 * (b - m) / (b - a), a, b - a)
        law_of_sum = np.convolve(law_of_sum, np.diff(law.cdf(np.linspace(a, b, round((b - a) / step) + 1))))
        first += a
    # A cell's mass is put at its middle; eight middles, half a cell more to its upper edge.
    upper = first + len(told.PLAIN) * step / 2 + step * (np.arange(len(law_of_sum)) + 0.5)
    return upper, np.cumsum(law_of_sum)**groups


def main(lessons):
    worst = []
    rows = list(csv.DictReader(line for line in open(os.path.join(HERE, "..", "computed", "lesson_simpy.csv"))
                               if not line.startswith("#")))
    for number, case in enumerate(told.CASES):
        rnd = random.Random(1000 + number)
        own = dict(told.statistics(case[0], [lesson(*case, rnd) for _ in range(lessons)]))
        theirs = {r["statistic"]: r for r in rows
                  if (r["scenario"], int(r["groups"]), int(r["balances"])) == case}
        if own.keys() != theirs.keys():
            raise SystemExit(f"{case}: other statistics in the file")
        for name, (value, error) in own.items():
            other = float(theirs[name]["value"])
            z = (value - other) / (error**2 + float(theirs[name]["standard_error"])**2)**0.5
            worst.append((abs(z), f"{case} {name}: events {value:.5g}, SimPy {other:.5g}, {z:+.2f} standard errors"))
    count = len(worst)
    print(f"{count} statistics, root mean square {np.sqrt(np.mean([z * z for z, _ in worst])):.2f} standard errors")
    rnd = random.Random(7)
    at, whole = without_queue(12)
    ends = np.array([lesson("plain", 12, 12, rnd)[0] for _ in range(lessons)])
    for p in (0.1, 0.5, 0.9):
        minute = np.interp(p, whole, at)
        z = ((ends <= minute).mean() - p) / (p * (1 - p) / lessons)**0.5
        worst.append((abs(z), f"no queue, all by {minute:.2f} min: events {(ends <= minute).mean():.4f}, "
                              f"convolution {p}, {z:+.2f} standard errors"))
        print(worst[-1][1])
    for _, text in sorted(worst[:count], reverse=True)[:5]:
        print(text)
    sys.exit(1 if max(worst)[0] > LIMIT else 0)


if __name__ == "__main__":
    main(int(sys.argv[1]) if len(sys.argv) > 1 else told.LESSONS)
