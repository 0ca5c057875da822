#!/usr/bin/env python3
"""Theory values and worked examples of the practicals with mass against time: own stoichiometry, abridged atomic weights of
IUPAC 2021 (Pure Appl. Chem. 2022, 94, 573). Prints shelf_theory_series.csv, or with 'examples' shelf_examples_series.csv."""
import sys

C, CL, H, O = 12.011, 35.45, 1.008, 15.999
HCL, CO2, H2O2, O2 = H + CL, C + 2 * O, 2 * H + 2 * O, 2 * O

# Shares by mass of the solutions that the sheets give, and the masses of solution that a group takes.
ACID, ACID_MASS = 0.03587, 40.66
PEROXIDE, PEROXIDE_MASS = 0.0557, 50.9


def gas_due(share, solution, dissolved, gas):
    """Two of what is dissolved make one of gas."""
    return share * solution / dissolved / 2 * gas


def theory():
    source = "computed from IUPAC 2021 abridged atomic weights"
    print("practical,quantity,value,unit,source")
    due = gas_due(ACID, ACID_MASS, HCL, CO2)
    for quantity, value, unit in (("massLost", due, "g"), ("gasDue", due, "g"), ("percentGas", 100, "%")):
        print(f"marble-and-acid,{quantity},{value:.5f},{unit},{source}")
    due = gas_due(PEROXIDE, PEROXIDE_MASS, H2O2, O2)
    for quantity, value, unit in (("massLost", due, "g"), ("oxygenDue", due, "g"), ("percentOxygen", 100, "%")):
        print(f"hydrogen-peroxide,{quantity},{value:.5f},{unit},{source}")


def example(practical, readings, share, dissolved, gas, names):
    flask, solution, start, end = readings.values()
    mass, lost = solution - flask, start - end
    due = gas_due(share, mass, dissolved, gas)
    values = (mass, end - start, lost, due, 100 * lost / due)
    given = ";".join(f"{k}={v:.2f}" for k, v in readings.items())
    print(f"{practical},{given},{';'.join(f'{n}={v:.5f}' for n, v in zip(names, values))}")


def examples():
    print("practical,readings,quantities")
    example("marble-and-acid", {"flask": 78.43, "withAcid": 119.12, "start": 136.57, "end": 135.74}, ACID, HCL, CO2,
            ("acidMass", "massChange", "massLost", "gasDue", "percentGas"))
    example("hydrogen-peroxide", {"flask": 112.07, "withPeroxide": 162.88, "start": 165.61, "end": 164.31}, PEROXIDE, H2O2, O2,
            ("solutionMass", "massChange", "massLost", "oxygenDue", "percentOxygen"))


examples() if "examples" in sys.argv else theory()
