"""Accepted values and worked examples of the first three practicals, from the abridged atomic weights (IUPAC 2021):
python3 shelf.py writes ../shelf_theory.csv and ../shelf_examples.csv. Own stoichiometry; nothing of the program is used."""
from pathlib import Path

H, C, O, NA, MG, S, CU = 1.008, 12.011, 15.999, 22.990, 24.305, 32.06, 63.546
MGO = MG + O
WATER = 2 * H + O
SALT = CU + S + 4 * O
CRYSTALS = SALT + 5 * WATER
BICARBONATE = NA + H + C + 3 * O
CARBONATE = 2 * NA + C + 3 * O
SOURCE = "computed from IUPAC 2021 abridged atomic weights"

theory = [
    ("magnesium-oxide", "moleRatio", 1.0, "1"),
    ("magnesium-oxide", "percentOxygen", 100 * O / MGO, "%"),
    ("magnesium-oxide", "massRatio", MGO / MG, "1"),
    ("magnesium-oxide", "yield", 100.0, "%"),
    ("copper-sulfate-hydrate", "moleRatio", 5.0, "1"),
    ("copper-sulfate-hydrate", "percentWater", 100 * 5 * WATER / CRYSTALS, "%"),
    ("copper-sulfate-hydrate", "massRatio", SALT / CRYSTALS, "1"),
    ("sodium-hydrogencarbonate", "residueFraction", CARBONATE / (2 * BICARBONATE), "1"),
    ("sodium-hydrogencarbonate", "percentLoss", 100 * (1 - CARBONATE / (2 * BICARBONATE)), "%"),
    ("sodium-hydrogencarbonate", "yield", 100.0, "%"),
]


def readings(empty, before, after):
    return f"empty={empty:.2f};before={before:.2f};after={after:.2f}"


def expected(**values):
    return ";".join(f"{k}={v:.5f}" for k, v in values.items())


e, b, a = 24.17, 24.41, 24.55
mg, ox = b - e, a - b
one = ("magnesium-oxide", readings(e, b, a), expected(
    sampleMass=mg, massChange=ox, moleRatio=(ox / O) / (mg / MG), percentOxygen=100 * ox / (mg + ox), yield_=100 * (mg + ox) / (mg * MGO / MG)).replace("yield_", "yield"))
e, b, a = 17.83, 20.31, 19.46
two = ("copper-sulfate-hydrate", readings(e, b, a), expected(
    waterMass=b - a, saltMass=a - e, moleRatio=((b - a) / WATER) / ((a - e) / SALT), percentWater=100 * (b - a) / (b - e)))
e, b, a = 21.06, 23.58, 22.71
three = ("sodium-hydrogencarbonate", readings(e, b, a), expected(
    residueFraction=(a - e) / (b - e), percentLoss=100 * (b - a) / (b - e)))

folder = Path(__file__).resolve().parent.parent
(folder / "shelf_theory.csv").write_text(
    "practical,quantity,value,unit,source\n" + "".join(f"{p},{q},{v:.5f},{u},{SOURCE}\n" for p, q, v, u in theory))
(folder / "shelf_examples.csv").write_text(
    "practical,readings,quantities\n" + "".join(",".join(x) + "\n" for x in (one, two, three)))
