#!/usr/bin/python3
"""Means, standard deviations and nineteen equally spaced quantiles of the input distributions.
usage: input_distributions.py > ../computed/input_distributions.csv   (needs python3-scipy)

scipy.stats for all but the curvilinear trapezoid, whose distribution function is integrated here over its inexact limit
(JCGM 101:2008, 6.4.3)."""
import math

import numpy as np
import scipy
from scipy import integrate, optimize, stats

P = [i / 20 for i in range(1, 20)]


def row(name, params, mean, sd, quantiles):
    print(name, *(list(params) + [""] * (4 - len(params))), repr(float(mean)), repr(float(sd)),
          *(repr(float(q)) for q in quantiles), sep=",")


def frozen(name, params, law):
    row(name, params, law.mean(), law.std(), law.ppf(P))


def curvilinear(a, b, d):
    mid, half = (a + b) / 2, (b - a) / 2

    def cdf(x):
        inside = lambda h: min(max((x - mid + h) / (2 * h), 0.0), 1.0) / (2 * d)
        kink = abs(x - mid)
        points = [kink] if half - d < kink < half + d else None
        return integrate.quad(inside, half - d, half + d, points=points, epsabs=1e-13)[0]

    q = [optimize.brentq(lambda x: cdf(x) - p, mid - half - d, mid + half + d, xtol=1e-14) for p in P]
    second = integrate.quad(lambda h: h * h / 3 / (2 * d), half - d, half + d)[0]
    row("curvilinear", [a, b, d], mid, math.sqrt(second), q)


print("# scipy", scipy.__version__, "; see scripts/input_distributions.py")
print("law,p1,p2,p3,p4,mean,sd," + ",".join(f"q{p:.2f}" for p in P))
frozen("normal", [10, 0.5], stats.norm(10, 0.5))
frozen("rectangular", [-2, 5], stats.uniform(-2, 7))
frozen("triangular", [1, 2, 5], stats.triang(0.25, 1, 4))
frozen("triangular", [0, 0, 3], stats.triang(0, 0, 3))
frozen("trapezoidal", [0, 1, 3, 7], stats.trapezoid(1 / 7, 3 / 7, 0, 7))
frozen("trapezoidal", [-1, -1, 0, 0.5], stats.trapezoid(0, 1 / 1.5, -1, 1.5))
frozen("arcsine", [-0.5, 0.5], stats.arcsine(-0.5, 1))
frozen("t", [3, 0.2, 5], stats.t(5, 3, 0.2))
frozen("t", [0, 1, 2.5], stats.t(2.5))
frozen("beta", [2, 5, 0, 1], stats.beta(2, 5))
frozen("beta", [0.3, 0.6, 10, 12], stats.beta(0.3, 0.6, 10, 2))
frozen("exponential", [4], stats.expon(0, 4))
frozen("gamma", [6, 1], stats.gamma(6))
frozen("gamma", [0.4, 3], stats.gamma(0.4, 0, 3))
curvilinear(-1.0, 1.0, 0.5)
curvilinear(20.0, 21.0, 0.1)
