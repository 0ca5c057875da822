#!/usr/bin/python3
"""Straight lines through points uncertain in both directions.
scipy.odr (1.10.1) where the errors of x and y are not correlated; where they are, the sum of squares in the metric of each
point's own covariance, minimised over the line and every true x at once (scipy.optimize.least_squares): nothing of York's
equations is used. usage: python3 york.py OUTPUT_FOLDER      writes york_points.csv, york_lines.csv"""
import sys
from pathlib import Path

import numpy as np
from scipy.odr import ODR, Model, RealData
from scipy.optimize import least_squares

out = Path(sys.argv[1])
rng = np.random.default_rng(2004)


def by_odr(x, ux, y, uy, origin):
    f = (lambda p, x: p[0] * x) if origin else (lambda p, x: p[0] + p[1] * x)
    start = [np.dot(x, y) / np.dot(x, x)] if origin else list(np.polyfit(x, y, 1)[::-1])
    o = ODR(RealData(x, y, sx=ux, sy=uy), Model(f), beta0=start, sstol=1e-15, partol=1e-15, maxit=2000).run()
    u = np.sqrt(np.diag(o.cov_beta))
    return (0, o.beta[0], 0, u[0], o.sum_square) if origin else (*o.beta, *u, o.sum_square)


def by_latent(x, ux, y, uy, r, origin):
    roots = [np.linalg.inv(np.linalg.cholesky([[a * a, c * a * b], [c * a * b, b * b]])) for a, b, c in zip(ux, uy, r)]

    def residuals(p):
        a, b = (0, p[0]) if origin else p[:2]
        t = p[1 if origin else 2:]
        return np.concatenate([m @ [xi - ti, yi - a - b * ti] for m, xi, yi, ti in zip(roots, x, y, t)])
    b0 = np.polyfit(x, y, 1)
    p = np.concatenate([[np.dot(x, y) / np.dot(x, x)] if origin else b0[::-1], x])
    s = least_squares(residuals, p, method="lm", xtol=1e-15, ftol=1e-15, gtol=1e-15, max_nfev=100000)
    u = np.sqrt(np.diag(np.linalg.inv(s.jac.T @ s.jac)))
    return (0, s.x[0], 0, u[0], 2 * s.cost) if origin else (s.x[0], s.x[1], u[0], u[1], 2 * s.cost)


points = ["# points of york_lines.csv, drawn by york.py", "case,x,ux,y,uy,r"]
lines = ["# york.py: scipy.odr 1.10.1, or least squares over all true x where correlated", "case,origin,intercept,slope,u_intercept,u_slope,chi_squared"]
for i in range(24):
    n, origin, tied = int(rng.integers(4, 15)), i % 2, i % 4 > 1
    true = rng.uniform(0.1, 0.4, n)
    ux, uy = rng.uniform(0.003, 0.012, n), rng.uniform(0.003, 0.012, n)
    r = rng.uniform(-0.9, 0.9, n) if tied else np.zeros(n)
    a, b = (0, 0.66) if origin else (0.02, 0.66)
    noise = np.array([rng.multivariate_normal([0, 0], [[p * p, c * p * q], [c * p * q, q * q]]) for p, q, c in zip(ux, uy, r)])
    x, y = np.round(true + noise[:, 0], 5), np.round(a + b * true + noise[:, 1], 5)
    ux, uy, r = np.round(ux, 5), np.round(uy, 5), np.round(r, 3)
    points += [",".join(repr(float(v)) if k else str(i) for k, v in enumerate((i, *row))) for row in zip(x, ux, y, uy, r)]
    found = by_latent(x, ux, y, uy, r, origin) if tied else by_odr(x, ux, y, uy, origin)
    lines.append(",".join([str(i), str(origin)] + [repr(float(v)) for v in found]))
(out / "york_points.csv").write_text("\n".join(points) + "\n")
(out / "york_lines.csv").write_text("\n".join(lines) + "\n")
