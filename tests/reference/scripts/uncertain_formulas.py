"""Writes ../computed/uncertain_formulas.csv: formulas of three uncertain inputs evaluated by the Python library
uncertainties 3.1.6 (Debian python3-uncertainties). Run in this folder: python3 uncertain_formulas.py"""
import random
import uncertainties
from uncertainties import correlated_values, ufloat, umath

FORMULAS = [
    "a + b - c", "a - a + b", "a * b / c", "(a - b) / (a + b)", "(a - b) / (c - b)", "2 * a^2 - 3 * b^2", "-a^2 + b",
    "a^b", "a^-0.5 * c", "2^a / b", "a^3^0.5", "sqrt(a * b) - c", "ln(a / b)", "log10(a + c)^2", "exp(-a / b)",
    "ln(exp(a) + exp(b))", "abs(a - 10) * b", "a * (1 + b * (1 / c - 1 / a))", "(a + b)^2 / (a^2 + b^2)",
    "sqrt(a^2 + b^2 + c^2)", "100 * (b - a) / (c - a)", "a / (b / (c / (a + b)))", "exp(ln(a) + ln(b) - ln(c))",
    "1.5e-3 * a * b * c + 2E2",
]
FUNCTIONS = {"ln": umath.log, "log10": umath.log10, "exp": umath.exp, "sqrt": umath.sqrt, "abs": abs}
R = {("a", "b"): 0.6, ("a", "c"): 0.0, ("b", "c"): -0.3}
NAMES = ["a", "b", "c"]


def evaluate(formula, inputs):
    return eval(formula.replace("^", "**"), {"__builtins__": {}}, {**FUNCTIONS, **inputs})


def correlated(values, spreads):
    def r(i, j):
        first, second = sorted((NAMES[i], NAMES[j]))
        return 1.0 if i == j else R[first, second]
    covariance = [[r(i, j) * spreads[i] * spreads[j] for j in range(3)] for i in range(3)]
    return dict(zip(NAMES, correlated_values(values, covariance)))


random.seed(20261125)
with open("../computed/uncertain_formulas.csv", "w", encoding="utf-8") as out:
    out.write(f"# COMPUTED by ../scripts/uncertain_formulas.py with Python uncertainties {uncertainties.__version__}.\n")
    out.write("# correlated_u: the same with r(a,b) = 0.6, r(a,c) = 0, r(b,c) = -0.3.\n")
    out.write("formula,a,ua,b,ub,c,uc,value,u,by_a,by_b,by_c,correlated_u\n")
    for formula in FORMULAS:
        for _ in range(3):
            values = [round(random.uniform(0.5, 5), 4) for _ in NAMES]
            spreads = [round(random.uniform(0.001, 0.3), 4) for _ in NAMES]
            inputs = {name: ufloat(v, u) for name, v, u in zip(NAMES, values, spreads)}
            y = evaluate(formula, inputs)
            by = [y.derivatives.get(inputs[name], 0.0) for name in NAMES]
            together = evaluate(formula, correlated(values, spreads))
            numbers = [x for pair in zip(values, spreads) for x in pair]
            numbers += [y.nominal_value, y.std_dev, *by, together.std_dev]
            out.write(",".join([formula, *map(repr, numbers)]) + "\n")
