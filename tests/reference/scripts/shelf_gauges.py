"""Accepted values and worked examples of the practicals with readings of other quantities than mass, by stoichiometry of its
own: nothing of the program is used. Run in tests/reference: python3 scripts/shelf_gauges.py
Atomic weights: IUPAC 2021, abridged to five figures. Faraday constant: CODATA 2018, exact. Enthalpy of combustion of ethanol
-1367 kJ/mol, specific heat capacity of water 4.18 J/(g K) and 1 g/cm3: from memory."""

CU, C, H, O = 63.546, 12.011, 1.0080, 15.999
FARADAY = 96485.33212
ETHANOL = 2 * C + 6 * H + O
COMPUTED = "computed from IUPAC 2021 abridged atomic weights and the Faraday constant (CODATA 2018)"
MEMORY = "from memory: -1367 kJ/mol; molar mass from IUPAC 2021 abridged atomic weights"


def figures(value):
    return f"{value:.9g}"


theory = [
    ("copper-electrolysis", "electrons", 2, "1", COMPUTED),
    ("copper-electrolysis", "electronsAnode", 2, "1", COMPUTED),
    ("copper-electrolysis", "perCoulomb", 1000 * CU / (2 * FARADAY), "mg/C", COMPUTED),
    ("copper-electrolysis", "massRatio", 1, "1", COMPUTED),
    ("copper-electrolysis", "cathodeGain", 0.40 * 1200 / FARADAY / 2 * CU, "g", COMPUTED),
    ("alcohol-combustion", "enthalpy", -1367, "kJ/mol", MEMORY),
    ("alcohol-combustion", "massRatio", 1367 / ETHANOL, "kJ/g", MEMORY),
    ("alcohol-combustion", "caughtShare", 100, "%", MEMORY),
]


def electrolysis(anode1, cathode1, amperes, seconds, cathode2, anode2):
    coulombs = amperes * seconds
    electrons = coulombs / FARADAY
    gain, loss = cathode2 - cathode1, anode1 - anode2
    return {
        "cathodeGain": gain, "anodeLoss": loss, "together": gain - loss, "chargePassed": coulombs, "copperDue": electrons / 2 * CU,
        "massRatio": gain / loss, "electrons": electrons / (gain / CU), "electronsAnode": electrons / (loss / CU),
        "perCoulomb": 1000 * gain / coulombs,
    }


def combustion(volume, before, start, end, after):
    joules = volume * 4.18 * (end - start)
    fuel = before - after
    moles = fuel / ETHANOL
    return {
        "fuelBurnt": fuel, "rise": end - start, "heat": joules / 1000, "massRatio": joules / 1000 / fuel,
        "enthalpy": -joules / 1000 / moles, "caughtShare": 100 * joules / 1000 / (moles * 1367),
    }


with open("shelf_theory_gauges.csv", "w", encoding="utf-8") as out:
    out.write("practical,quantity,value,unit,source\n")
    for practical, quantity, value, unit, source in theory:
        out.write(f"{practical},{quantity},{figures(value)},{unit},{source}\n")

examples = [
    ("copper-electrolysis", {"anodeBefore": 12.83, "cathodeBefore": 10.47, "current": 0.38, "time": 1260, "cathodeAfter": 10.61, "anodeAfter": 12.67}, electrolysis),
    ("copper-electrolysis", {"anodeBefore": 9.215, "cathodeBefore": 8.904, "current": 0.42, "time": 1203, "cathodeAfter": 9.067, "anodeAfter": 9.046}, electrolysis),
    ("alcohol-combustion", {"volume": 100, "before": 143.27, "start": 19.5, "end": 43.0, "after": 142.53}, combustion),
]

with open("shelf_examples_gauges.csv", "w", encoding="utf-8") as out:
    out.write("practical,readings,quantities\n")
    for practical, readings, work in examples:
        found = work(*readings.values())
        out.write(f"{practical},{';'.join(f'{k}={v}' for k, v in readings.items())},{';'.join(f'{k}={figures(round(v, 9))}' for k, v in found.items())}\n")
