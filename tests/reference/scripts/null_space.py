#!/usr/bin/python3
"""Balances equations with sympy's exact null space: Debian's python3-sympy 1.11.1, run with /usr/bin/python3.
Writes ../computed/null_space.csv. 300 equations are made: as many species as elements plus one, drawn with a fixed
seed; where the null space has one dimension, the signs of its vector sort the species to the sides and species with 0
are left out, so that the coefficients are unique. In a further 60, one species is put on the wrong side: none.
A row: equation, coefficients in smallest whole numbers or 'none'."""
import os
import random
import re

from sympy import Matrix, ilcm, igcd

SPECIES = """H2O O2 H2 HCl Cl2 NaCl NaOH KMnO4 MnCl2 MnSO4 KCl K2SO4 H2SO4 H2O2 SO2 SO3 H2S K2Cr2O7 CrCl3 Cr2(SO4)3 Na2SO4
Na2SO3 Na2S2O3 Na2S4O6 I2 KI KIO3 HIO3 HI NaI CO2 CO CH4 C2H5OH CH3COOH C6H12O6 C8H18 Na2CO3 NaHCO3 K2CO3 N2 NH3 NO NO2 HNO3
NaNO3 KNO3 NH4NO3 (NH4)2SO4 (NH4)2Cr2O7 NH4Cl K4Fe(CN)6 K3Fe(CN)6 FeSO4 Fe2(SO4)3 FeCl3 Fe2O3 Fe3O4 P4 P4O10 H3PO4 PH3 NaH2PO2
Ca3(PO4)2 CaSO4 CaCO3 CaO Ca(OH)2 CaCl2 Mg MgO Mg3N2 Mg(OH)2 MgCl2 MgSO4.7H2O CuSO4.5H2O CuSO4 CuO Cu2O Cu(NO3)2 Cu Zn ZnO
Al Al2O3 Al2(SO4)3 KAl(SO4)2.12H2O MnO4^- Mn^2+ Cr2O7^2- Cr^3+ Fe^2+ Fe^3+ H^+ OH^- I^- IO3^- S2O3^2- S4O6^2- NO3^- NH4^+ C2O4^2-
Cl^- ClO3^- SO4^2-""".split()
TOKEN = re.compile(r"([A-Z][a-z]?)(\d*)|(\()|\)(\d*)")


def count(text):
    """Atoms of a part without dots and charge."""
    stack = [{}]
    at = 0
    while at < len(text):
        m = TOKEN.match(text, at)
        at = m.end()
        if m.group(1):
            stack[-1][m.group(1)] = stack[-1].get(m.group(1), 0) + int(m.group(2) or 1)
        elif m.group(3):
            stack.append({})
        else:
            inner = stack.pop()
            for element, number in inner.items():
                stack[-1][element] = stack[-1].get(element, 0) + number * int(m.group(4) or 1)
    return stack[0]


def composition(formula):
    """Atoms by element, charge under '+'."""
    body, _, charge = formula.partition("^")
    total = {}
    for part in body.split("."):
        factor = re.match(r"\d*", part).group()
        for element, number in count(part[len(factor):]).items():
            total[element] = total.get(element, 0) + number * int(factor or 1)
    if charge:
        total["+"] = int(charge[:-1] or 1) * (1 if charge[-1] == "+" else -1)
    return total


def null_space(species):
    parts = [composition(s) for s in species]
    rows = sorted({key for part in parts for key in part})
    return Matrix([[part.get(row, 0) for part in parts] for row in rows]).nullspace()


def whole(vector):
    multiple = ilcm(1, *[x.q for x in vector])
    numbers = [int(x * multiple) for x in vector]
    divisor = igcd(*numbers)
    return [x // divisor for x in numbers]


def draw(choice):
    """Species whose elements number one less than they, or None."""
    species = [choice.choice(SPECIES)]
    while len(species) < 9:
        elements = {key for s in species for key in composition(s)}
        if len(species) > len(elements):
            return species
        near = [s for s in SPECIES if s not in species and elements & set(composition(s))
                and len(set(composition(s)) - elements) <= 1]
        if not near:
            return None
        species.append(choice.choice(near))
    return None


choice = random.Random(20260101)
found = {}
while len(found) < 300:
    species = draw(choice)
    if not species:
        continue
    basis = null_space(species)
    if len(basis) != 1:
        continue
    numbers = whole(basis[0])
    left = [(s, n) for s, n in zip(species, numbers) if n > 0]
    right = [(s, -n) for s, n in zip(species, numbers) if n < 0]
    if len(left) + len(right) > 2:
        equation = " + ".join(s for s, _ in left) + " -> " + " + ".join(s for s, _ in right)
        found[equation] = " ".join(str(n) for _, n in left + right)
turned = []
for equation in found:
    left, right = (side.split(" + ") for side in equation.split(" -> "))
    if len(left) > 1 and len(turned) < 60:
        turned.append(" + ".join(left[1:]) + " -> " + " + ".join(right + left[:1]))

path = os.path.join(os.path.dirname(os.path.abspath(__file__)), "..", "computed", "null_space.csv")
with open(path, "w", newline="\n") as file:
    file.write("# Made by ../scripts/null_space.py (sympy 1.11.1); see its head.\nequation,coefficients\n")
    for equation, numbers in found.items():
        file.write(f"{equation},{numbers}\n")
    for equation in turned:
        file.write(f"{equation},none\n")
