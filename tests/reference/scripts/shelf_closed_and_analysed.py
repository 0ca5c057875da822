"""Theory values and worked examples of six practicals, from the atomic weights alone.

Atomic weights: IUPAC 2021 abridged (Prohaska and others, Pure Appl. Chem. 94 (2022) 573). Stoichiometry is written out
here by hand and shares no code with the program. Run: python3 shelf_closed_and_analysed.py theory|examples > FILE.csv
"""
import sys

A = {"H": 1.008, "C": 12.011, "N": 14.007, "O": 15.999, "Na": 22.990, "Cl": 35.45, "Ca": 40.078}
IUPAC = "computed from IUPAC 2021 abridged atomic weights"
HANDBOOK = "handbook value at 20 degrees from memory (sodium chloride 35.9 g in 100 g of water)"
CONSERVED = "conservation of mass: nothing enters or leaves a closed vessel"

CO2 = A["C"] + 2 * A["O"]
H2O = 2 * A["H"] + A["O"]
CACO3 = A["Ca"] + A["C"] + 3 * A["O"]
NAHCO3 = A["Na"] + A["H"] + A["C"] + 3 * A["O"]
NACL = A["Na"] + A["Cl"]
WAX = 25 * A["C"] + 52 * A["H"]


def theory():
    yield "practical,quantity,value,unit,source"
    yield f"carbonate-purity,massRatio,{CO2 / CACO3:.6f},1,{IUPAC}"
    yield f"carbonate-purity,percentPurity,{100:.6f},%,a pure sample by definition of purity"
    yield f"solubility-by-evaporation,solubility,35.9,g,{HANDBOOK}"
    yield f"solubility-by-evaporation,percentSalt,{100 * 35.9 / 135.9:.6f},%,computed from the handbook value above"
    yield f"solubility-by-evaporation,massRatio,{35.9 / 135.9:.8f},1,computed from the handbook value above"
    yield f"precipitation-in-closed-flask,massChange,0,g,{CONSERVED}"
    yield f"precipitation-in-closed-flask,massRatio,1,1,{CONSERVED}"
    yield f"tablet-in-water,closedChange,0,g,{CONSERVED}"
    # One tablet of 3.50 g with a share of 0.40 of sodium hydrogencarbonate, every mole of which gives one of gas.
    yield f"tablet-in-water,openChange,{-3.50 * 0.40 * CO2 / NAHCO3:.6f},g,{IUPAC}"
    yield f"tablet-in-water,openMore,{3.50 * 0.40 * CO2 / NAHCO3:.6f},g,{IUPAC}"
    yield f"candle-open-and-closed,closedChange,0,g,{CONSERVED}"


def row(practical, readings, quantities):
    left = ";".join(f"{k}={v}" for k, v in readings.items())
    right = ";".join(f"{k}={v:.8g}" for k, v in quantities.items())
    return f"{practical},{left},{right}"


def examples():
    yield "practical,readings,expected"
    r = {"empty": "134.62", "before": "136.10", "after": "135.51"}
    e, b, a = (float(r[k]) for k in r)
    n = (b - a) / CO2
    yield row("carbonate-purity", r, {
        "sampleMass": b - e, "massChange": a - b, "gasMass": b - a, "massRatio": (b - a) / (b - e),
        "carbonateMass": n * CACO3, "percentPurity": 100 * n * CACO3 / (b - e)})
    r = {"empty": "41.37", "before": "46.52", "after": "42.74"}
    e, b, a = (float(r[k]) for k in r)
    yield row("solubility-by-evaporation", r, {
        "solutionMass": b - e, "massChange": a - b, "saltMass": a - e, "waterMass": b - a, "massRatio": (a - e) / (b - e),
        "solubility": 100 * (a - e) / (b - a), "percentSalt": 100 * (a - e) / (b - e)})
    r = {"empty": "19.83", "before": "24.91", "dried": "24.14", "ashed": "23.80"}
    e, b, d, a = (float(r[k]) for k in r)
    yield row("moisture-and-ash", r, {
        "soilMass": b - e, "massChange": d - b, "ashingChange": a - d, "waterMass": b - d, "ashMass": a - e,
        "percentMoisture": 100 * (b - d) / (b - e), "percentAsh": 100 * (a - e) / (b - e),
        "percentOrganic": 100 * (d - a) / (d - e)})
    r = {"before": "128.44", "after": "128.43"}
    b, a = (float(r[k]) for k in r)
    yield row("precipitation-in-closed-flask", r, {"allMass": b, "massChange": a - b, "massRatio": a / b})
    r = {"openBefore": "143.18", "openAfter": "142.52", "closedBefore": "126.07", "closedAfter": "126.06"}
    ob, oa, cb, ca = (float(r[k]) for k in r)
    yield row("tablet-in-water", r, {
        "closedChange": ca - cb, "openChange": oa - ob, "bottleMass": cb, "openMore": (ca - cb) - (oa - ob)})
    r = {"openBefore": "36.21", "openAfter": "35.34", "closedBefore": "402.55", "closedAfter": "402.54"}
    ob, oa, cb, ca = (float(r[k]) for k in r)
    yield row("candle-open-and-closed", r, {
        "closedChange": ca - cb, "openChange": oa - ob, "jarMass": cb, "openMore": (ca - cb) - (oa - ob)})


if __name__ == "__main__":
    for line in {"theory": theory, "examples": examples}[sys.argv[1]]():
        print(line)
