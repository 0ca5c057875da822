"""False alarms of the modified z-score, and the limits at which several quantities have no more than one has at 3.5.

For n normal values the score of each is its distance from the median over 1.482602 times the median distance (B. Iglewicz and
D. C. Hoaglin, How to Detect and Handle Outliers, 1993). Written without sight of the program: only the standard library.
Writes odd_limits.csv: n, share of classes with a score beyond 3.5, and for m = 2 ... 6 independent quantities the limit at which
a class has a false alarm in any of them just as often. Takes about ten seconds.
"""

import pathlib
import random

DRAWS = {5: 120_000, 6: 120_000, 7: 100_000, 8: 100_000, 9: 80_000, 10: 80_000, 12: 80_000, 15: 60_000, 20: 50_000, 30: 40_000}


def middle(values):
    ordered = sorted(values)
    half = len(ordered) // 2
    return ordered[half] if len(ordered) % 2 else (ordered[half - 1] + ordered[half]) / 2


def greatest_score(n, draw):
    values = [draw(0, 1) for _ in range(n)]
    centre = middle(values)
    distances = [abs(v - centre) for v in values]
    return max(distances) / (1.482602 * middle(distances))


def main():
    draw = random.Random(20261126).gauss
    target = pathlib.Path(__file__).parent.parent / "computed" / "odd_limits.csv"
    with target.open("w", newline="\n") as out:
        out.write("groups,alarms,two,three,four,five,six\n")
        for n, count in DRAWS.items():
            greatest = sorted(greatest_score(n, draw) for _ in range(count))
            alarms = sum(g > 3.5 for g in greatest) / count
            limits = [greatest[int((1 - alarms) ** (1 / m) * count)] for m in range(2, 7)]
            out.write(f"{n},{alarms:.4f}," + ",".join(f"{limit:.2f}" for limit in limits) + "\n")


main()
