"""Writes ../computed/compositions.csv: random formulas counted by periodictable 1.6.0 (Debian
python3-periodictable). Run in this folder: /usr/bin/python3 compositions.py
periodictable reads '.' as a decimal point, knows no square brackets, and lets a leading number count only up to the next
bracket, so it is given round brackets instead: (H2O)5 for .5H2O."""
import random

import periodictable

ELEMENTS = "H C N O F Na Mg Al Si P S Cl K Ca Cr Mn Fe Co Ni Cu As Br Sr Ag I Cs Ba La Pt Au Bi U".split()


def part(depth):
    text = ""
    for _ in range(random.randint(1, 4)):
        if depth < 3 and random.random() < 0.25:
            opening = random.choice(["(", "["])
            text += opening + part(depth + 1) + {"(": ")", "[": "]"}[opening] + number(2)
        else:
            text += random.choice(ELEMENTS) + number(1)
    return text


def number(least):
    count = random.choice([1, 1, 2, 3, 4, 6, 12, 30])
    return str(count) if count > 1 else "" if least == 1 else "2"


def formula():
    """The formula as written, and as the other tool is given it."""
    text = other = part(0)
    while random.random() < 0.3:
        count, water = number(1), part(0)
        text += f".{count}{water}"
        other += f"({water}){count or 1}"
    return text, other.replace("[", "(").replace("]", ")")


random.seed(20261125)
seen = set()
with open("../computed/compositions.csv", "w", encoding="utf-8") as out:
    out.write(f"# COMPUTED by ../scripts/compositions.py with periodictable {periodictable.__version__}.\n")
    out.write("formula,composition\n")
    while len(seen) < 300:
        text, other = formula()
        if text in seen or len(text) > 80:
            continue
        seen.add(text)
        read = periodictable.formula(other)
        atoms = " ".join(f"{element}:{count}" for element, count in sorted((str(e), c) for e, c in read.atoms.items()))
        out.write(f"{text},{atoms}\n")
