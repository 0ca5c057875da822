"""Wrong workings of other practicals (gases, limiting reagent, charge of an ion, electrolysis, combustion, solubility, purity), each on
numbers of its own and worked out by hand here. The list of what students do is common practice, no source; the values are this script's.
python3 scripts/wrong_workings_elsewhere.py > computed/wrong_workings_elsewhere.csv"""

# what, readings 'id value unit' (earlier weighings first), right formula, substances, differences that the practical asks for, idea, wrong value
ROWS = [
    ("percent error over the own value", "found 1.129 1;accepted 1.00 1", "100 * abs(found - accepted) / accepted", "", "",
     "wrong-denominator", 100 * (1.129 - 1.00) / 1.129),
    ("dot of a hydrate as times", "dish 25.00 g;filled 27.50 g", "(filled - dish) / M(CuSO4.5H2O)", "CuSO4.5H2O;H2O;CuSO4", "",
     "dot-as-times", 2.50 / (159.6 * 5 * 18.0)),
    ("one heating for the whole", "before 27.50 g;after 26.80 26.62 g", "before - after", "", "", "earlier-weighing", 27.50 - 26.80),
    ("molar volume for a mass", "before 30.00 g;after 29.12 g", "(before - after) / M(CO2)", "CaCO3;CO2;CaO", "", "gas-volume", 0.88 / 24),
    ("the other reagent as limiting", "iron 1.12 g;salt 1.60 g", "min(iron / M(Fe), salt / M(CuSO4)) * M(Cu)", "Fe;CuSO4;Cu", "",
     "limiting-ignored", 1.12 / 55.8 * 63.5),
    ("iron as 3+", "iron 1.00 g", "iron / M(Fe) * M(Cu)", "Fe;Cu", "", "other-charge", 1.00 / 55.8 * 63.5 * 1.5),
    ("iodine as atoms", "iodine 0.50 g", "iodine / M(I2)", "Zn;I2;ZnI2", "", "atom-for-molecule", 0.50 / 126.9),
    ("atoms of iodine as molecules", "iodine 0.50 g", "iodine / M(I)", "Zn;I;ZnI2", "", "molecule-for-atom", 0.50 / 253.8),
    ("minutes for seconds", "current 0.20 A;time 30 min", "current * time * 60 / (2 * 96485)", "Cu", "", "unit-slip", 0.20 * 30 / (2 * 96485)),
    ("two electrons forgotten", "current 0.20 A;time 30 min", "current * time * 60 / (2 * 96485)", "Cu", "", "coefficient-ignored", 0.20 * 30 * 60 / 96485),
    ("273 added to a rise", "cold 21.5 °C;warm 46.0 °C;water 100.0 g", "water * 4.18 * (warm - cold)", "", "", "kelvin-added", 100.0 * 4.18 * (24.5 + 273)),
    ("joules for kilojoules", "cold 21.5 °C;warm 46.0 °C;water 100.0 g", "water * 4.18 * (warm - cold) / 1000", "", "", "unit-slip", 100.0 * 4.18 * 24.5),
    ("mass of the fuel for that of the water", "cold 21.5 °C;warm 46.0 °C;water 100.0 g;fuel 0.80 g", "water * 4.18 * (warm - cold)", "", "",
     "wrong-mass", 0.80 * 4.18 * 24.5),
    ("per 100 g of solution", "dish 40.00 g;solution 53.60 g;dry 43.60 g", "100 * (dry - dish) / (solution - dry)", "", "solution - dish",
     "wrong-denominator", 100 * 3.60 / 13.60),
    ("molar mass of the carbonate for its gas", "before 30.00 g;after 29.12 g", "(before - after) / M(CO2)", "CaCO3;CO2;CaO", "", "wrong-molar-mass", 0.88 / 100.1),
    ("milligrams as grams", "empty 20.000 g;filled 20.240 g", "filled - empty", "", "", "unit-slip", 240),
    ("purity as a share of what is left", "empty 20.00 g;before 22.50 g;after 21.45 g", "100 * (before - after) / M(CO2) * M(CaCO3) / (before - empty)",
     "CaCO3;CO2", "after - empty", "wrong-denominator", 100 * 1.05 / 44.0 * 100.1 / 1.45),
    ("the gas's mass taken for the carbonate's", "empty 20.00 g;before 22.50 g;after 21.45 g", "100 * (before - after) / M(CO2) * M(CaCO3) / (before - empty)",
     "CaCO3;CO2", "after - empty", "moles-skipped", 100 * 1.05 / 2.50 * 1),
]

print("what,readings,formula,substances,differences,idea,value")
for what, readings, formula, substances, differences, idea, value in ROWS:
    power = int(f"{value:.2e}".split("e")[1])
    print(f'{what},{readings},"{formula}",{substances},{differences},{idea},{value:.{max(0, 2 - power)}f}')
