"""Wrong workings of the magnesium and hydrate practicals on two sets of readings, worked out by hand, each by its own formula.
The list of what students do is common practice, no source; the values are this script's. python3 scripts/wrong_workings.py > computed/wrong_workings.csv"""

m1, m2, m3 = 30.00, 30.24, 30.38
Mg, O = 24.3, 16.0
mg, o, mgo = m2 - m1, m3 - m2, m3 - m1
n, k = mg / Mg, o / O
c, h, a = 25.00, 27.50, 26.62
salt, water = 159.6, 18.0
w, s, hyd = h - a, a - c, h - c

ROWS = [
    ("magnesium-oxide", "ratio", "inverted", k / n, 3),
    ("magnesium-oxide", "ratio", "moles-skipped", mg / o, 4),
    ("magnesium-oxide", "ratio", "atomic-number", (mg / 12) / (o / 8), 4),
    ("magnesium-oxide", "ratio", "molar-mass-over-mass", (Mg / mg) / (O / o), 3),
    ("magnesium-oxide", "ratio", "molecule-for-atom", n / (o / 32), 4),
    ("magnesium-oxide", "ratio", "vessel-not-subtracted", (m2 / Mg) / k, 3),
    ("magnesium-oxide", "ratio", "wrong-mass", n / (mgo / O), 3),
    ("magnesium-oxide", "ratio", "molar-masses-swapped", (mg / O) / (o / Mg), 4),
    ("magnesium-oxide", "ratio", "multiplied-for-divided", (mg * Mg) / (o * O), 4),
    ("magnesium-oxide", "ratio", "one-molar-mass", (mg / (Mg + O)) / (o / (Mg + O)), 4),
    ("magnesium-oxide", "ratio", "rounded-early", 0.01 / 0.01, 3),
    ("magnesium-oxide", "ratio", "rounded-early", 0.01 / 0.009, 3),
    ("magnesium-oxide", "ratio", "rounded-to-whole", round(n / k), 1),
    ("magnesium-oxide", "massOxygen", "subtracted-backwards", m2 - m3, 2),
    ("magnesium-oxide", "molesMagnesium", "vessel-not-subtracted", m2 / Mg, 4),
    ("magnesium-oxide", "molesMagnesium", "atomic-number", mg / 12, 3),
    ("magnesium-oxide", "molesMagnesium", "molar-mass-over-mass", Mg / mg, 3),
    ("magnesium-oxide", "molesMagnesium", "multiplied-for-divided", mg * Mg, 3),
    ("magnesium-oxide", "molesMagnesium", "gas-volume", mg / 24, 3),
    ("magnesium-oxide", "molesOxygen", "molecule-for-atom", o / 32, 3),
    ("magnesium-oxide", "molesOxygen", "unit-slip", 1000 * o / O, 3),
    ("magnesium-oxide", "percentOxygen", "wrong-denominator", 100 * o / mg, 3),
    ("magnesium-oxide", "yield", "inverted", 100 * n / (mgo / (Mg + O)), 4),
    ("magnesium-oxide", "yield", "moles-skipped", 100 * mgo / mg, 3),
    ("magnesium-oxide", "yield", "coefficient-misplaced", 100 * (mgo / (Mg + O)) / n * 2, 3),
    ("magnesium-oxide", "yield", "coefficient-misplaced", 100 * (mgo / (Mg + O)) / n / 2, 3),
    ("magnesium-oxide", "yield", "other-charge", 100 * (mgo / (Mg + O)) / n * 1.5, 3),
    ("copper-sulfate-hydrate", "x", "wrong-mass", (w / water) / (hyd / salt), 3),
    ("copper-sulfate-hydrate", "x", "wrong-molar-mass", (w / water) / (s / (salt + 5 * water)), 3),
    ("copper-sulfate-hydrate", "percentWater", "wrong-denominator", 100 * w / s, 3),
    ("copper-sulfate-hydrate", "x", "inverted", (s / salt) / (w / water), 3),
    ("copper-sulfate-hydrate", "x", "moles-skipped", w / s, 3),
    ("copper-sulfate-hydrate", "x", "vessel-not-subtracted", (w / water) / (a / salt), 3),
    ("copper-sulfate-hydrate", "x", "wrong-molar-mass", (w / 16) / (s / salt), 3),
    ("copper-sulfate-hydrate", "x", "wrong-molar-mass", (w / 17) / (s / salt), 3),
    ("copper-sulfate-hydrate", "x", "atomic-number", (w / 10) / (s / salt), 3),
    ("copper-sulfate-hydrate", "x", "rounded-early", 0.05 / 0.01, 2),
    ("sodium-hydrogencarbonate", "massCarbonate", "coefficient-ignored", 2.00 / 84.0 * 106.0, 4),
    ("sodium-hydrogencarbonate", "percentResidue", "inverted", 100 * 2.00 / 1.26, 4),
]

print("practical,answer,idea,value")
for practical, answer, idea, value, figures in ROWS:
    digits = f"{value:.{figures - 1}e}"
    print(f"{practical},{answer},{idea},{float(digits):.{max(0, figures - 1 - int(digits.split('e')[1]))}f}")
