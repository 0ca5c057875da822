#!/usr/bin/python3
"""Tails and quantiles of the normal, t, chi-squared, F and beta distributions with mpmath at 50 digits.
usage: distribution_tails.py > ../computed/distribution_tails.csv   (needs python3-mpmath)

Each row: distribution, its parameters, a tail (lower or upper), its probability p, and the point x that cuts it off.
x is found by root finding on the 50-digit tail and then rounded to a double; p is recomputed at that double, so that both
directions can be checked: the tail at x, and the quantile of p."""
import mpmath as mp

mp.mp.dps = 60


def normal(x):
    return mp.erfc(-x / mp.sqrt(2)) / 2


def beta_lower(a, b, x):
    return mp.betainc(a, b, 0, x, regularized=True)


def t_upper(x, nu):
    return beta_lower(mp.mpf(nu) / 2, mp.mpf(1) / 2, nu / (nu + x * x)) / 2


def chi_lower(x, nu):
    return mp.gammainc(mp.mpf(nu) / 2, 0, x / 2, regularized=True)


def chi_upper(x, nu):
    return mp.gammainc(mp.mpf(nu) / 2, x / 2, mp.inf, regularized=True)


def f_upper(x, m, n):
    return beta_lower(mp.mpf(n) / 2, mp.mpf(m) / 2, n / (n + m * x))


def f_lower(x, m, n):
    return beta_lower(mp.mpf(m) / 2, mp.mpf(n) / 2, m * x / (n + m * x))


RANGE = {"normal": (-3, 4), "t": (-5, 75), "chi2": (-750, 9), "F": (-150, 150), "beta": (-750, -1e-9)}


def solve(tail, p, rising, bounds):
    """Bisection on ln x (x > 0) for tail(x) = p."""
    lo, hi = mp.mpf(bounds[0]), mp.mpf(bounds[1])
    for _ in range(70):
        mid = (lo + hi) / 2
        if (tail(mp.e**mid) < p) == rising:
            lo = mid
        else:
            hi = mid
    return mp.mpf(float(mp.e**((lo + hi) / 2)))


def row(name, p1, p2, side, tail, p, rising):
    x = solve(tail, mp.mpf(p), rising, RANGE[name])
    if x < 1e-300:
        return
    print(f"{name},{p1},{p2},{side},{mp.nstr(tail(x), 25, min_fixed=1, max_fixed=0)},{float(x)!r}")


print("# mpmath", mp.__version__, "at 60 digits; see scripts/distribution_tails.py")
print("distribution,p1,p2,tail,p,x")
tails = ["1e-300", "1e-100", "1e-30", "1e-10", "1e-4", "0.005", "0.025", "0.1", "0.3", "0.45"]
for p in tails:
    row("normal", "", "", "upper", lambda x: normal(-x), p, False)
for nu in ["1", "2", "3", "4.5", "10", "30", "200", "10000"]:
    for p in tails[2:] if float(nu) < 200 else tails[3:]:
        row("t", nu, "", "upper", lambda x: t_upper(x, mp.mpf(nu)), p, False)
for nu in ["0.5", "1", "2", "7", "50", "1000"]:
    for p in tails[1:]:
        row("chi2", nu, "", "upper", lambda x: chi_upper(x, mp.mpf(nu)), p, False)
        row("chi2", nu, "", "lower", lambda x: chi_lower(x, mp.mpf(nu)), p, True)
for m, n in [("1", "1"), ("1", "8"), ("3", "2"), ("10", "20"), ("2.5", "100"), ("200", "150")]:
    for p in tails[2:]:
        row("F", m, n, "upper", lambda x: f_upper(x, mp.mpf(m), mp.mpf(n)), p, False)
        row("F", m, n, "lower", lambda x: f_lower(x, mp.mpf(m), mp.mpf(n)), p, True)
for a, b in [("0.5", "0.5"), ("0.1", "3"), ("2", "5"), ("30", "0.7"), ("400", "600")]:
    for p in tails[2:]:
        row("beta", a, b, "lower", lambda x: beta_lower(mp.mpf(a), mp.mpf(b), x) if x < 1 else mp.mpf(1), p, True)
