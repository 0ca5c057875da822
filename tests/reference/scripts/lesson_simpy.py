#!/usr/bin/python3
"""A class at work, simulated with SimPy 2.3: when the lesson ends, how long groups wait, how busy the balances are.
usage: lesson_simpy.py [lessons] > ../computed/lesson_simpy.csv   (needs python3-simpy and python3-numpy)

Minutes as (least, likely, most), modified PERT unless said: Beta(1 + 4(m-a)/(b-a), 1 + 4(b-m)/(b-a)) over [a, b].
Whatever is shared is one queue, first come first served; a group holds it for that one step. The scenarios:
  plain     set-up, weigh, heat, cool, weigh, reheat, cool, weigh; every group starts at 0
  arrivals  each group arrives uniformly within 0 to 3 min and weighs once, triangular 25, 45, 120 seconds
  shared    plain; after the first weighing the one teacher looks at the set-up, and each heating needs one of 8 burners
            (cooling does not)
  again     plain; after the third weighing a group reheats, cools and weighs once more with probability 0.3
  late      plain; a group starts late with probability 0.1, by 1, 4, 10 min
Statistics: 'end' is when the last group has finished; balance_wait is a visit's minutes before the balance is free;
balance_use is busy minutes of the balances over their number times the end, a mean over lessons; time_to_weighed runs
from arrival to the end of the weighing. The times are common practice, no source. lesson_check.py judges the file."""
import sys
from multiprocessing import Pool

import numpy as np

SEED, DATE, LESSONS, BLOCK = 20261125, "2026-11-25", 20000, 500
SETUP, WEIGH, HEAT, COOL, REHEAT = (4, 6, 12), (1, 2, 4), (8, 10, 15), (5, 7, 10), (3, 5, 7)
LOOK, LATENESS, QUICK_WEIGHING, ARRIVING = (0.2, 0.5, 1), (1, 4, 10), (25 / 60, 45 / 60, 120 / 60), 3
AGAIN, LATE, BURNERS = 0.3, 0.1, 8

# A step is (what is held meanwhile or None, minutes).
PLAIN = [(None, SETUP), ("balance", WEIGH), (None, HEAT), (None, COOL), ("balance", WEIGH),
         (None, REHEAT), (None, COOL), ("balance", WEIGH)]
ONCE_MORE = PLAIN[-3:]
SHARED = [(None, SETUP), ("balance", WEIGH), ("teacher", LOOK), ("burner", HEAT), (None, COOL), ("balance", WEIGH),
          ("burner", REHEAT), (None, COOL), ("balance", WEIGH)]
STEPS = dict(plain=PLAIN, arrivals=[("balance", QUICK_WEIGHING)], shared=SHARED, again=PLAIN + ONCE_MORE, late=PLAIN)
CASES = ([("plain", g, b) for g, b in ((12, 2), (15, 1), (15, 2), (18, 3), (8, 1))]
         + [("arrivals", g, b) for g in (8, 10, 15) for b in (1, 2, 3, 4)]
         + [("shared", 12, 2), ("again", 12, 2), ("late", 12, 2)])


def pert(rng, law, size):
    a, m, b = law
    return a + (b - a) * rng.beta(1 + 4 * (m - a) / (b - a), 1 + 4 * (b - m) / (b - a), size)


def draw(scenario, groups, lessons, rng):
    """Starts [lesson][group], minutes [lesson][group][step] and how many of the steps each group does."""
    size = (lessons, groups)
    law = (lambda r, t, s: r.triangular(*t, s)) if scenario == "arrivals" else pert
    minutes = np.stack([law(rng, t, size) for _, t in STEPS[scenario]], axis=2)
    start, done = np.zeros(size), np.full(size, minutes.shape[2])
    if scenario == "arrivals":
        start = rng.uniform(0, ARRIVING, size)
    if scenario == "late":
        start = np.where(rng.random(size) < LATE, pert(rng, LATENESS, size), 0.0)
    if scenario == "again":
        done = np.where(rng.random(size) < AGAIN, len(PLAIN + ONCE_MORE), len(PLAIN))
    return start.tolist(), minutes.tolist(), done.tolist()


def block(job):
    """One row a lesson: end, mean end of a group, waited minutes, visits, balance use, mean time from the start."""
    from SimPy.Simulation import Process, Resource, Simulation, hold, release, request
    number, (scenario, groups, balances), lessons, part = job
    starts, minutes, done = draw(scenario, groups, lessons, np.random.default_rng([SEED, number, part]))
    held = [kind for kind, _ in STEPS[scenario]]

    class Group(Process):
        def work(self, start, times, kit, log):
            yield hold, self, start
            for kind, minutes in zip(held, times):
                if kind is None:
                    yield hold, self, minutes
                    continue
                asked = self.sim.now()
                yield request, self, kit[kind]
                if kind == "balance":
                    log["waits"].append(self.sim.now() - asked)
                    log["busy"] += minutes
                yield hold, self, minutes
                yield release, self, kit[kind]
            log["ends"].append(self.sim.now())
            log["stays"].append(self.sim.now() - start)

    rows = []
    for i in range(lessons):
        sim = Simulation()
        sim.initialize()
        kit = {kind: Resource(capacity=units, sim=sim)
               for kind, units in (("balance", balances), ("burner", BURNERS), ("teacher", 1))}
        log = dict(waits=[], busy=0.0, ends=[], stays=[])
        for g in range(groups):
            one = Group(sim=sim)
            sim.activate(one, one.work(starts[i][g], minutes[i][g][:done[i][g]], kit, log))
        sim.simulate(until=1e6)
        if len(log["ends"]) != groups:
            raise RuntimeError("a group never finished")
        end = max(log["ends"])
        rows.append((end, sum(log["ends"]) / groups, sum(log["waits"]), len(log["waits"]),
                     log["busy"] / (balances * end), sum(log["stays"]) / groups))
    return rows


def mean(v):
    return v.mean(), v.std(ddof=1) / len(v)**0.5


def deviation(v):
    d = v - v.mean()
    s = v.std(ddof=1)
    return s, ((d**4).mean() - s**4)**0.5 / (2 * s * len(v)**0.5)


def quantile(v, p):
    """Standard error from the order statistics two binomial standard deviations either side."""
    v = np.sort(v)
    n, reach = len(v), 2 * (len(v) * p * (1 - p))**0.5
    low, high = (v[min(max(int(round(n * p + s * reach)), 0), n - 1)] for s in (-1, 1))
    return np.quantile(v, p), (high - low) / 4


def share(v):
    """A share of 0 or 1 is given the error of one lesson in all of them."""
    p = v.mean()
    return p, (max(p * (1 - p), 1 / len(v)) / len(v))**0.5


def ratio(total, count):
    r = total.sum() / count.sum()
    return r, (total - r * count).std(ddof=1) / count.mean() / len(total)**0.5


def statistics(scenario, rows):
    end, group_end, waited, visits, use, stay = np.array(rows).T
    yield "mean_end", mean(end)
    yield "sd_end", deviation(end)
    for p in (10, 50, 90):
        yield f"q{p}_end", quantile(end, p / 100)
    yield "mean_group_end", mean(group_end)
    yield "mean_balance_wait", ratio(waited, visits)
    yield "balance_use", mean(use)
    for minute in (50, 55, 60):
        yield f"p_by_{minute}", share(end <= minute)
    if scenario == "arrivals":
        yield "mean_time_to_weighed", mean(stay)


def main(lessons):
    from SimPy import __version__
    print(f"# When a class ends, waits and weighs. SimPy {__version__}, seed {SEED}, {lessons} lessons a case, {DATE}; "
          "see scripts/lesson_simpy.py. Minutes.")
    print("scenario,groups,balances,statistic,value,standard_error")
    with Pool(2) as pool:
        for number, case in enumerate(CASES):
            sizes = [min(BLOCK, lessons - first) for first in range(0, lessons, BLOCK)]
            jobs = [(number, case, size, part) for part, size in enumerate(sizes)]
            rows = [row for part in pool.map(block, jobs, chunksize=1) for row in part]
            for name, (value, error) in statistics(case[0], rows):
                print(*case, name, f"{value:.8g}", f"{error:.3g}", sep=",", flush=True)


if __name__ == "__main__":
    main(int(sys.argv[1]) if len(sys.argv) > 1 else LESSONS)
