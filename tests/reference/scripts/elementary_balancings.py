"""Writes ../computed/elementary_balancings.csv: random equations with all their elementary balancings, found by sympy 1.11.1 (Debian
python3-sympy) the slow way: a set of species has one where the null space of its columns has one dimension and a vector
without zeros or changes of sign. Run in this folder: /usr/bin/python3 elementary_balancings.py (about five minutes)"""
import itertools
import random
from math import gcd

import sympy

SPECIES = {
    "H2": {"H": 2}, "O2": {"O": 2}, "H2O": {"H": 2, "O": 1}, "H2O2": {"H": 2, "O": 2}, "C": {"C": 1},
    "CO": {"C": 1, "O": 1}, "CO2": {"C": 1, "O": 2}, "CH4": {"C": 1, "H": 4}, "C2H6": {"C": 2, "H": 6},
    "C2H5OH": {"C": 2, "H": 6, "O": 1}, "N2": {"N": 2}, "NH3": {"N": 1, "H": 3}, "NO": {"N": 1, "O": 1},
    "NO2": {"N": 1, "O": 2}, "N2O": {"N": 2, "O": 1}, "HNO3": {"H": 1, "N": 1, "O": 3}, "NO3^-": {"N": 1, "O": 3, "q": -1},
    "H^+": {"H": 1, "q": 1}, "OH^-": {"O": 1, "H": 1, "q": -1}, "e^-": {"q": -1}, "NH4^+": {"N": 1, "H": 4, "q": 1},
    "Fe": {"Fe": 1}, "Fe^2+": {"Fe": 1, "q": 2}, "Fe^3+": {"Fe": 1, "q": 3}, "Fe2O3": {"Fe": 2, "O": 3},
    "Fe3O4": {"Fe": 3, "O": 4}, "MnO4^-": {"Mn": 1, "O": 4, "q": -1}, "Mn^2+": {"Mn": 1, "q": 2}, "MnO2": {"Mn": 1, "O": 2},
}


def elementary(left, right):
    columns = [(SPECIES[s], 1) for s in left] + [(SPECIES[s], -1) for s in right]
    rows = sorted({key for atoms, _ in columns for key in atoms})
    matrix = sympy.Matrix([[sign * atoms.get(key, 0) for atoms, sign in columns] for key in rows])
    found = []
    for size in range(1, len(columns) + 1):
        for chosen in itertools.combinations(range(len(columns)), size):
            space = matrix[:, list(chosen)].nullspace()
            if len(space) == 1 and (all(x > 0 for x in space[0]) or all(x < 0 for x in space[0])):
                scaled = [abs(x) * sympy.ilcm(*[y.q for y in space[0]]) for x in space[0]]
                divisor = 0
                for x in scaled:
                    divisor = gcd(divisor, int(x))
                way = [0] * len(columns)
                for place, x in zip(chosen, scaled):
                    way[place] = int(x) // divisor
                found.append(way)
    return sorted(found)


random.seed(20261125)
names = list(SPECIES)
wanted = {"one": 60, "many": 60, "none": 60}
seen = set()
with open("../computed/elementary_balancings.csv", "w", encoding="utf-8") as out:
    out.write(f"# COMPUTED by ../scripts/elementary_balancings.py with sympy {sympy.__version__}. outcome: one, many or none, by positive solutions.\n")
    out.write("equation,outcome,elementary\n")
    while any(wanted.values()):
        chosen = random.sample(names, random.randint(3, 7))
        cut = random.randint(1, len(chosen) - 1)
        text = " + ".join(chosen[:cut]) + " -> " + " + ".join(chosen[cut:])
        ways = elementary(chosen[:cut], chosen[cut:])
        complete = len(ways) > 0 and all(any(way[i] for way in ways) for i in range(len(chosen)))
        outcome = "none" if not complete else "one" if len(ways) == 1 else "many"
        if text in seen or not wanted[outcome]:
            continue
        seen.add(text)
        wanted[outcome] -= 1
        out.write(f"{text},{outcome},{';'.join(' '.join(map(str, way)) for way in ways)}\n")
