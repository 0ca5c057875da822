"""Writes rounded_normal.csv: P(shown) = Phi((r+d/2-m)/s) - Phi((r-d/2-m)/s) to 50 digits with mpmath (Debian python3-mpmath)."""
from mpmath import mp, mpf, erfc, log, sqrt

mp.dps = 2000  # the difference of two tails near 300 sigma loses nothing at this length

def tail(z):
    return erfc(z / sqrt(mpf(2))) / 2

# shown, step, mean, standard deviation; all decimals are taken exactly as written here
CASES = [
    ("30.24", "0.01", "30.24", "0.007"), ("30.24", "0.01", "30.2437", "0.007"), ("30.24", "0.01", "30.2512", "0.007"),
    ("30.24", "0.01", "30.31", "0.007"), ("30.24", "0.01", "30.52", "0.007"), ("30.24", "0.01", "32.24", "0.007"),
    ("0", "1", "0", "0.7"), ("0", "1", "40", "1"), ("0", "1", "-40", "1"), ("0", "1", "300", "1"),
    ("0", "1", "0", "0.05"), ("0", "1", "0", "100"), ("0", "1", "250", "100"), ("0", "1", "4000", "100"),
    ("3", "1", "0", "2"), ("5", "1", "-4", "1.2"), ("0", "1", "8.5", "1"), ("0", "1", "8.4999", "1"),
    ("0", "0.0001", "0.5", "0.02"), ("0", "2", "1", "0.001"), ("0", "2", "1.05", "0.001"), ("7", "1", "0", "0.125"),
]
with open("rounded_normal.csv", "w") as out:
    out.write("# Log-probability that a rounded normal quantity shows a value. COMPUTED by rounded_normal.py (mpmath, 2000 digits).\n")
    out.write("shown,step,mean,standard_deviation,log_probability\n")
    for row in CASES:
        r, d, m, s = map(mpf, row)
        low, high = (r - d / 2 - m) / s, (r + d / 2 - m) / s
        if low + high < 0:
            low, high = -high, -low
        out.write(",".join(row) + "," + mp.nstr(log(tail(low) - tail(high)), 20) + "\n")
