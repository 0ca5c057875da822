#!/usr/bin/python3
"""Theory values and worked examples of seven practicals, worked out here from the atomic weights of
../atomic_weights_iupac2021.csv (abridged values) by counting atoms; nothing of the program is read or run.
Writes ../shelf_theory_heating.csv (practical,quantity,value,unit,source) and ../shelf_examples_heating.csv (a practical, readings of
our own invention, the quantities they give)."""
import csv
import os

here = os.path.dirname(os.path.abspath(__file__))
with open(os.path.join(here, "..", "atomic_weights_iupac2021.csv")) as file:
    A = {row["symbol"]: float(row["value"]) for row in csv.DictReader(line for line in file if line[0] != "#") if row["value"]}

H, C, O, Mg, S, Ca, Fe, Cu, Zn = (A[e] for e in ("H", "C", "O", "Mg", "S", "Ca", "Fe", "Cu", "Zn"))
water = 2 * H + O
carbon_dioxide = C + 2 * O
magnesium_sulfate = Mg + S + 4 * O
epsom = magnesium_sulfate + 7 * water
copper_oxide = Cu + O
green_salt = 2 * Cu + C + 3 * O + 2 * (O + H)                 # Cu2CO3(OH)2
zinc_oxide = Zn + O
white_salt = 5 * Zn + 2 * (C + 3 * O) + 6 * (O + H)           # Zn5(CO3)2(OH)6
chalk, lime = Ca + C + 3 * O, Ca + O


def epsom_of(empty, before, after):
    lost, left = before - after, after - empty
    return {"waterMass": lost, "saltMass": left, "massRatio": left / (before - empty),
            "moleRatio": (lost / water) / (left / magnesium_sulfate), "percentWater": 100 * lost / (before - empty)}


def residue_of(metal, oxide, name):
    def of(empty, before, after):
        left = (after - empty) / (before - empty)
        return {"residueMass": after - empty, "residueFraction": left, "percentLoss": 100 * (1 - left), name: 100 * metal / oxide * left}
    return of


def chalk_of(empty, before, after):
    return {"gasMass": before - after, "residueFraction": (after - empty) / (before - empty),
            "shareReacted": 100 * (before - after) / (before - empty) * chalk / carbon_dioxide}


def copper_of(empty, before, after):
    gain = (after - before) / (before - empty)
    return {"massChange": after - before, "percentGain": 100 * gain, "shareReacted": 100 * gain * Cu / O}


def wool_of(empty, before, after):
    return {"massChange": after - before, "percentGain": 100 * (after - before) / (before - empty)}


def reduced_of(empty, before, after):
    lost, left = before - after, after - empty
    return {"copperMass": left, "oxygenMass": lost, "massRatio": left / (before - empty), "moleRatio": (lost / O) / (left / Cu),
            "percentLoss": 100 * lost / (before - empty)}


# What 1 g of the pure sample leaves when all of it reacts, and the invented readings of one group.
practicals = [
    ("copper-in-air", copper_of, copper_oxide / Cu, (17.42, 18.95, 19.14)),
    ("iron-wool-in-air", wool_of, (3 * Fe + 4 * O) / (3 * Fe), (13.08, 14.61, 14.87)),
    ("magnesium-sulfate-hydrate", epsom_of, magnesium_sulfate / epsom, (28.36, 30.91, 29.65)),
    ("basic-copper-carbonate", residue_of(Cu, copper_oxide, "percentCopper"), 2 * copper_oxide / green_salt, (27.15, 29.70, 28.97)),
    ("basic-zinc-carbonate", residue_of(Zn, zinc_oxide, "percentZinc"), 5 * zinc_oxide / white_salt, (29.88, 32.33, 31.68)),
    ("calcium-carbonate", chalk_of, lime / chalk, (13.27, 14.79, 14.26)),
    ("copper-oxide-reduction", reduced_of, Cu / copper_oxide, (78.64, 81.70, 81.10)),
]
units = {"percentWater": "%", "percentLoss": "%", "percentCopper": "%", "percentZinc": "%", "percentGain": "%", "shareReacted": "%"}
amounts = {"waterMass", "saltMass", "residueMass", "gasMass", "massChange", "copperMass", "oxygenMass"}  # go with the sample

with open(os.path.join(here, "..", "shelf_theory_heating.csv"), "w", newline="\n") as file:
    file.write("practical,quantity,value,unit,source\n")
    for practical, of, left, _ in practicals:
        for quantity, value in of(0, 1, left).items():
            if quantity not in amounts:
                file.write(f"{practical},{quantity},{value:.5f},{units.get(quantity, 1)},computed from IUPAC 2021 abridged atomic weights\n")
with open(os.path.join(here, "..", "shelf_examples_heating.csv"), "w", newline="\n") as file:
    file.write("practical,readings,quantities\n")
    for practical, of, _, readings in practicals:
        given = ";".join(f"{name}={value:.2f}" for name, value in zip(("empty", "before", "after"), readings))
        found = ";".join(f"{name}={value:.5f}" for name, value in of(*readings).items())
        file.write(f"{practical},{given},{found}\n")
