#!/usr/bin/python3
"""A class at work: when has the last of 12 groups finished, with 2 balances as one queue, first come first served?
usage: lesson.py [n] [impl ...] [--seed=s]     n = lessons; impl: simpy numpy (default: both)
Every group starts at 0: set-up, weigh, heat, cool, weigh, reheat, cool, weigh. Minutes (least, likely, most), modified
PERT: set-up 4 6 12, weigh 1 2 4, heat 8 10 15, cool 5 7 10, reheat 3 5 7. numpy does all lessons in lockstep."""
import math
import sys

import numpy as np

from peer import Checks, emit, now

SETUP, WEIGH, HEAT, COOL, REHEAT = (4, 6, 12), (1, 2, 4), (8, 10, 15), (5, 7, 10), (3, 5, 7)
BEFORE = ((SETUP,), (HEAT, COOL), (REHEAT, COOL))      # the steps that lead to each weighing
GROUPS, BALANCES, BELL = 12, 2, 56.0
BLOCK = 2000                                           # lessons in lockstep: their arrays stay in the cache


def pert(rng, law, size):
    a, m, b = law
    return a + (b - a) * rng.beta(1 + 4 * (m - a) / (b - a), 1 + 4 * (b - m) / (b - a), size)


def run_simpy(n, seed):
    from SimPy.Simulation import Process, Resource, Simulation, hold, release, request
    rng = np.random.default_rng(seed)
    ends = []

    class Group(Process):
        def work(self, balances, steps):
            for kind, minutes in steps:
                if kind == "weigh":
                    yield request, self, balances
                    yield hold, self, minutes
                    yield release, self, balances
                else:
                    yield hold, self, minutes
            ends.append(self.sim.now())

    kinds, laws = [], []
    for before in BEFORE:
        kinds += ["work"] * len(before) + ["weigh"]
        laws += [*before, WEIGH]
    t0 = now()
    last = np.empty(n)
    for i in range(n):
        if i % 500 == 0:                               # numpy draws many at once; one by one would be slower
            size = (min(500, n - i), GROUPS)
            times = np.stack([pert(rng, law, size) for law in laws], axis=2).tolist()
        ends.clear()
        sim = Simulation()
        sim.initialize()
        balances = Resource(capacity=BALANCES, sim=sim)
        for minutes in times[i % 500]:
            group = Group(sim=sim)
            sim.activate(group, group.work(balances, zip(kinds, minutes)))
        sim.simulate(until=1e6)
        last[i] = max(ends)
    return last, now() - t0


def lockstep(k, rng):
    """Each round serves, in every lesson, the group that joins the queue next. A group served joins again only after
    its weighing, so no later arrival can come before one already served: the order is that of the queue."""
    size = (k, GROUPS)
    between = [sum(pert(rng, law, size) for law in before) for before in BEFORE]
    joins = between[0]
    # What follows the weighing of each stage; after the third a group stays away.
    away = np.stack([between[1], between[2], np.full(size, np.inf)], axis=2).ravel()
    weighing = pert(rng, WEIGH, (*size, 3)).ravel()
    stage = np.zeros(size, dtype=np.intp)
    row = np.arange(k) * GROUPS
    sooner, later = np.zeros(k), np.zeros(k)           # when the two balances are free again
    flat, done = joins.ravel(), stage.ravel()
    for _ in range(3 * GROUPS):
        who = row + joins.argmin(axis=1)
        at = 3 * who + done[who]
        end = np.maximum(flat[who], sooner) + weighing[at]
        flat[who] = end + away[at]
        done[who] += 1
        sooner, later = np.minimum(end, later), np.maximum(end, later)
    return later


def run_numpy(n, seed):
    rng = np.random.default_rng(seed)
    t0 = now()
    last = np.concatenate([lockstep(min(BLOCK, n - first), rng) for first in range(0, n, BLOCK)])
    return last, now() - t0


RUN = dict(simpy=run_simpy, numpy=run_numpy)
OTHER = dict(simpy=("numpy", 20000), numpy=("simpy", 1000))


def run(impl, n, seed):
    last, t = RUN[impl](n, seed)
    name, m = OTHER[impl]
    other, _ = RUN[name](m, seed + 1000)
    p, q = float((last <= BELL).mean()), float((other <= BELL).mean())
    both = (n * p + m * q) / (n + m)
    c = Checks()
    c.near("P(all done in %.0f min)" % BELL, p, q, 4.5 * math.sqrt(both * (1 - both) * (1 / n + 1 / m)), name)
    c.near("mean end", float(last.mean()), float(other.mean()),
           4.5 * math.sqrt(float(other.var()) * (1 / n + 1 / m)), name)
    emit("lesson", impl, n, t, c, p_done=p, mean_end=float(last.mean()), sd_end=float(last.std()), groups=GROUPS,
         balances=BALANCES, bell=BELL, replications_per_s=n / t)


if __name__ == "__main__":
    seed = next((int(a[7:]) for a in sys.argv if a.startswith("--seed=")), 1)
    args = [a for a in sys.argv[1:] if not a.startswith("--")]
    n = int(float(args[0])) if args else 5000
    for impl in args[1:] or ["simpy", "numpy"]:
        run(impl, n, seed)
