#!/usr/bin/python3
"""Molar masses by periodictable (Debian's python3-periodictable 1.6.0, run with /usr/bin/python3) of the formulas in
bench/peers/data/formulas.txt. Writes ../computed/molar_masses_peer.csv. The library's own weights are old (zinc 65.409),
so the abridged values of ../atomic_weights_iupac2021.csv (and those of 2024) are put into it. It has no square brackets
and reads the dot of a hydrate as a decimal point (CuSO4.5H2O as O4.5, silently): brackets and dots are rewritten first.
It has no uncertainty: that of our value is not checked here. A row: formula, molar mass in g/mol."""
import csv
import os

import periodictable

here = os.path.dirname(os.path.abspath(__file__))


def rows(name):
    with open(os.path.join(here, "..", name)) as file:
        return list(csv.DictReader(line for line in file if line[0] != "#"))


for row in rows("atomic_weights_iupac2021.csv"):
    element = getattr(periodictable, row["symbol"], None)
    if element is not None and row["value"]:
        element._mass = float(row["value"])
for row in rows("atomic_weights_ciaaw2024_changes.csv"):
    getattr(periodictable, row["symbol"])._mass = float(row["value_2024"])

with open(os.path.join(here, "..", "..", "..", "bench", "peers", "data", "formulas.txt")) as file:
    formulas = " ".join(line for line in file if line[0] != "#").split()
with open(os.path.join(here, "..", "computed", "molar_masses_peer.csv"), "w", newline="\n") as file:
    file.write("# Made by ../scripts/molar_masses.py (periodictable 1.6.0 with IUPAC's abridged weights); see its head.\n")
    file.write("formula,molar_mass\n")
    for formula in formulas:
        plain = formula.replace("[", "(").replace("]", ")").replace(".", "+")
        file.write(f"{formula},{periodictable.formula(plain).mass:.9f}\n")
