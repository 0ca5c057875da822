#!/usr/bin/python3
"""Standard normal draws. usage: normals.py [n]"""
import sys

import numpy as np

from peer import Checks, emit, now

n = int(float(sys.argv[1])) if len(sys.argv) > 1 else 1000000
rng = np.random.default_rng(1)
rng.standard_normal(1000)
t0 = now()
z = rng.standard_normal(n)
t = now() - t0
c = Checks()
c.near("mean", float(z.mean()), 0, 5 / n**0.5, "law")
emit("normals", "numpy", n, t, c)
