"""Theory values and one worked example for each of six practicals in which a product (or what is left) is weighed.

Prints tests/reference/shelf_theory_products.csv, or with 'examples' shelf_examples_products.csv. The stoichiometry is written out
here, mole by mole; atomic weights are read from atomic_weights_iupac2021.csv. Needs Python 3 only.

    python3 tests/reference/scripts/shelf_products.py > tests/reference/shelf_theory_products.csv
    python3 tests/reference/scripts/shelf_products.py examples > tests/reference/shelf_examples_products.csv
"""
import csv
import pathlib
import sys

SOURCE = "computed from IUPAC 2021 abridged atomic weights"
TABLE = pathlib.Path(__file__).resolve().parent.parent / "atomic_weights_iupac2021.csv"


def weights():
    with open(TABLE, encoding="utf-8") as file:
        rows = csv.DictReader(line for line in file if not line.startswith("#"))
        return {row["symbol"]: float(row["value"]) for row in rows if row["value"]}


A = weights()
SULFATE = A["S"] + 4 * A["O"]
SODIUM_SULFATE = 2 * A["Na"] + SULFATE
BARIUM_SULFATE = A["Ba"] + SULFATE


def theory():
    """practical, quantity, value, unit: what a complete reaction of the pure substance gives."""
    # Fe + Cu(2+) -> Fe(2+) + Cu: one mole of copper for one mole of iron.
    yield "copper-by-iron", "massRatio", A["Cu"] / A["Fe"], "1"
    yield "copper-by-iron", "moleRatio", 1, "1"
    yield "copper-by-iron", "yield", 100, "%"
    # Zn + Cu(2+) -> Zn(2+) + Cu.
    yield "copper-by-zinc", "massRatio", A["Cu"] / A["Zn"], "1"
    yield "copper-by-zinc", "moleRatio", 1, "1"
    yield "copper-by-zinc", "yield", 100, "%"
    # Cu + 2Ag(+) -> Cu(2+) + 2Ag.
    yield "silver-by-copper", "massRatio", 2 * A["Ag"] / A["Cu"], "1"
    yield "silver-by-copper", "moleRatio", 2, "1"
    # Zn + I2 -> ZnI2.
    yield "zinc-iodide", "massRatio", A["Zn"] / (2 * A["I"]), "1"
    yield "zinc-iodide", "moleRatio", 2, "1"
    # Ba(2+) + SO4(2-) -> BaSO4, from pure Na2SO4.
    yield "barium-sulfate", "percentSulfate", 100 * SULFATE / SODIUM_SULFATE, "%"
    yield "barium-sulfate", "purity", 100, "%"
    yield "barium-sulfate", "massRatio", BARIUM_SULFATE / SODIUM_SULFATE, "1"
    # Zn + 2HCl -> ZnCl2 + H2.
    yield "zinc-chloride", "massRatio", (A["Zn"] + 2 * A["Cl"]) / A["Zn"], "1"
    yield "zinc-chloride", "moleRatio", 2, "1"
    yield "zinc-chloride", "percentZinc", 100 * A["Zn"] / (A["Zn"] + 2 * A["Cl"]), "%"


def examples():
    """practical, readings, what they give: readings invented for the purpose."""
    iron, copper = 30.52 - 30.01, 30.61 - 30.01
    yield "copper-by-iron", {"empty": "30.01", "before": "30.52", "after": "30.61"}, {
        "sampleMass": iron,
        "copperMass": copper,
        "massRatio": copper / iron,
        "moleRatio": (copper / A["Cu"]) / (iron / A["Fe"]),
        "yield": 100 * (copper / A["Cu"]) / (iron / A["Fe"]),
    }
    zinc, copper = 42.67 - 42.15, 42.64 - 42.15
    yield "copper-by-zinc", {"empty": "42.15", "before": "42.67", "after": "42.64"}, {
        "sampleMass": zinc,
        "copperMass": copper,
        "massRatio": copper / zinc,
        "moleRatio": (copper / A["Cu"]) / (zinc / A["Zn"]),
        "yield": 100 * (copper / A["Cu"]) / (zinc / A["Zn"]),
    }
    lost, silver = 1.62 - 1.43, 36.04 - 35.41
    yield "silver-by-copper", {"empty": "35.41", "coilBefore": "1.62", "coilAfter": "1.43", "after": "36.04"}, {
        "copperMass": lost,
        "silverMass": silver,
        "massRatio": silver / lost,
        "moleRatio": (silver / A["Ag"]) / (lost / A["Cu"]),
    }
    iodine, used = 30.13 - 29.68, 29.68 - 29.56
    yield "zinc-iodide", {"empty": "29.22", "before": "29.68", "both": "30.13", "after": "29.56"}, {
        "zincMass": 29.68 - 29.22,
        "iodineMass": iodine,
        "zincUsed": used,
        "massRatio": used / iodine,
        "moleRatio": (iodine / A["I"]) / (used / A["Zn"]),
    }
    salt, precipitate = 14.873 - 14.462, 19.004 - 18.337
    yield "barium-sulfate", {"full": "14.873", "emptied": "14.462", "empty": "18.337", "after": "19.004"}, {
        "sampleMass": salt,
        "precipitateMass": precipitate,
        "sulfateMass": precipitate / BARIUM_SULFATE * SULFATE,
        "percentSulfate": 100 * precipitate / BARIUM_SULFATE * SULFATE / salt,
        "purity": 100 * precipitate / BARIUM_SULFATE * SODIUM_SULFATE / salt,
        "massRatio": precipitate / salt,
    }
    zinc, chlorine = 36.49 - 35.88, 37.14 - 36.49
    yield "zinc-chloride", {"empty": "35.88", "before": "36.49", "after": "37.14"}, {
        "sampleMass": zinc,
        "massChange": chlorine,
        "productMass": zinc + chlorine,
        "massRatio": (zinc + chlorine) / zinc,
        "moleRatio": (chlorine / A["Cl"]) / (zinc / A["Zn"]),
        "percentZinc": 100 * zinc / (zinc + chlorine),
    }


def pairs(values):
    return ";".join(f"{name}={value if isinstance(value, str) else format(value, '.9g')}" for name, value in values.items())


def main():
    out = csv.writer(sys.stdout, lineterminator="\n")
    if sys.argv[1:] == ["examples"]:
        out.writerow(["practical", "readings", "quantities"])
        out.writerows([practical, pairs(readings), pairs(quantities)] for practical, readings, quantities in examples())
    else:
        out.writerow(["practical", "quantity", "value", "unit", "source"])
        out.writerows([practical, quantity, format(value, ".9g"), unit, SOURCE] for practical, quantity, value, unit in theory())


if __name__ == "__main__":
    main()
