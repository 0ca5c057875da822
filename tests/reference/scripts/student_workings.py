"""How a student works out the answers of a weighing practical, rightly or with a mistake, and how the numbers are written.
Used by simulated_students.py. Every idea is written down here as changed formulas, without regard to any marker; numbers are
exact fractions, half a unit of the last place is rounded up."""
import math
from collections import namedtuple
from decimal import Decimal
from fractions import Fraction as F

TABLES = {  # relative atomic masses as school tables print them; nitrogen is wanted for the nitride only
    "one decimal": {"Mg": F("24.3"), "O": F(16), "Cu": F("63.5"), "S": F("32.1"), "H": F(1), "N": F(14)},
    "whole, Cu 63.5": {"Mg": F(24), "O": F(16), "Cu": F("63.5"), "S": F(32), "H": F(1), "N": F(14)},
    "whole, Cu 64": {"Mg": F(24), "O": F(16), "Cu": F(64), "S": F(32), "H": F(1), "N": F(14)}}
PRACTICALS = {
    "magnesium-oxide": {
        "differences": {"massMagnesium": ("before", "empty"), "massOxygen": ("after", "before")}, "third": ("after", "empty"),
        "moles": {"molesMagnesium": ("massMagnesium", "Mg"), "molesOxygen": ("massOxygen", "O")}, "ratio": "ratio",
        "compound": "MgO", "atomicNumbers": {"Mg": 12, "O": 8},
        "others": {"Mg": ["MgO", "O2", "O", "Mg3N2"], "O": ["MgO", "Mg"]}},
    "copper-sulfate-hydrate": {
        "differences": {"massWater": ("before", "after"), "massSalt": ("after", "empty")}, "third": ("before", "empty"),
        "moles": {"molesWater": ("massWater", "H2O"), "molesSalt": ("massSalt", "CuSO4")}, "ratio": "x",
        "compound": "CuSO4.5H2O", "atomicNumbers": {"H2O": 10, "CuSO4": 77},
        "others": {"H2O": ["16", "17", "CuSO4", "CuSO4.5H2O"], "CuSO4": ["CuSO4.5H2O", "CuSO4.H2O", "CuO", "H2O"]}}}
Written = namedtuple("Written", "text value core exponent unit form")
Mistake = namedtuple("Mistake", "idea changes places")  # changed formulas by answer; decimals by answer where they are forced


def molar_masses(a):
    water, salt = 2 * a["H"] + a["O"], a["Cu"] + a["S"] + 4 * a["O"]
    return {"Mg": a["Mg"], "O": a["O"], "O2": 2 * a["O"], "MgO": a["Mg"] + a["O"], "Mg3N2": 3 * a["Mg"] + 2 * a["N"],
            "H2O": water, "CuSO4": salt, "CuSO4.5H2O": salt + 5 * water, "CuSO4.H2O": salt + water, "CuO": a["Cu"] + a["O"],
            "16": F(16), "17": F(17)}


def difference(a, b):
    return lambda h: h[a] - h[b]


def right_formulas(practical, m):
    """The formula of each answer, in order, over the numbers at hand: readings and earlier answers by their names."""
    p = PRACTICALS[practical]
    formulas = {name: difference(a, b) for name, (a, b) in p["differences"].items()}
    for name, (mass, substance) in p["moles"].items():
        formulas[name] = lambda h, mass=mass, substance=substance: h[mass] / m[substance]
    first, second = p["moles"]
    formulas[p["ratio"]] = lambda h: h[first] / h[second]
    if practical == "copper-sulfate-hydrate":
        formulas["percentWater"] = lambda h: 100 * h["massWater"] / (h["before"] - h["empty"])
    return formulas


# ---- How a number is written ----

def fixed(value, decimals):
    digits = str(math.floor(abs(value) * 10 ** decimals + F(1, 2))).zfill(decimals + 1)   # half a unit is rounded up
    text = digits[:len(digits) - decimals] + ("." + digits[len(digits) - decimals:] if decimals else "")
    return "-" + text if value < 0 and int(digits) else text


def order(value):
    return (Decimal(abs(value.numerator)) / value.denominator).adjusted() if value else 0


def render(s, core, exponent, unit, form):
    if exponent is not None:
        core_text = f"{core}e{exponent}" if s.power == "e" else f"{core} x 10^{exponent}"
    else:
        core_text = core
    value = F(core) * F(10) ** (exponent or 0)
    text = form.format(core_text.replace(".", s.mark)) + unit
    return Written(text, 1 / value if form == "1 : {}" else value, core, exponent, unit, form)


def write(s, answer, value, places):
    """What the student writes for a value: two decimals for a difference, else the student's figures, unless forced."""
    value, form, exponent, mass = F(value), "{}", None, answer.startswith("mass")
    if answer == "ratio" and value > 0:
        form = s.form if answer not in places else s.form.replace("1 : {}", "{} : 1")
        value = 1 / value if form == "1 : {}" else value
    if answer in places or mass:
        core = fixed(value, places.get(answer, 2))
    else:
        power = order(F(fixed(value, max(0, s.figures - 1 - order(value)))))   # rounding may lift 9.97 to 10.0
        exponent = power if power < -5 or (s.power and "moles" in answer and power < -1) else None
        core = fixed(value, max(0, s.figures - 1 - power)) if exponent is None else fixed(value / F(10) ** power, s.figures - 1)
    name = "g" if mass else "mol" if "moles" in answer else "%" if answer == "percentWater" else ""
    gap = " " if s.unit == "close" and exponent is not None else {"none": "", "spaced": " ", "close": ""}[s.unit]
    return render(s, core, exponent, gap + name if name and s.unit != "none" else "", form)


def exchanged(core):
    """The number with two neighbouring digits exchanged, each way there is; zeros in front count for nothing."""
    places = [i for i, c in enumerate(core) if c.isdigit()]
    while places and core[places[0]] == "0":
        places.pop(0)
    for i, j in zip(places, places[1:]):
        new = core[:i] + core[j] + core[i + 1:j] + core[i] + core[j + 1:]
        if core[i] != core[j] and not (new.lstrip("-")[0] == "0" and new.lstrip("-")[1:2].isdigit()) and F(new):
            yield new


# ---- Mistakes ----

def mistakes(s):
    p, m, right, found = PRACTICALS[s.practical], s.molar, s.formulas, []
    moles, (first, second), ratio = p["moles"], p["moles"], p["ratio"]
    masses = {**p["differences"], "third": p["third"]}

    def add(idea, changes, places=None):
        found.append(Mistake(idea, changes, places or {}))

    for name, (a, b) in p["differences"].items():
        if b == "empty":
            add("vessel-not-subtracted", {name: lambda h, a=a: h[a]})
        add("subtracted-backwards", {name: difference(b, a)})
        for other in masses:
            if other != name:
                add("wrong-mass", {name: difference(*masses[other])})
        for reading in (a, b):   # a reading copied into the working with two digits exchanged; less than nothing would be seen
            for new in exchanged(fixed(s.readings[reading], 2)):
                if right[name]({**s.readings, reading: F(new)}) <= 0:
                    continue
                add("copied-digit", {name: lambda h, r=reading, new=new, f=right[name]: f({**h, r: F(new)})})
    uses_after = [name for name, pair in p["differences"].items() if "after" in pair]
    if s.first_after not in (None, s.readings["after"]):
        add("earlier-weighing", {n: lambda h, f=right[n]: f({**h, "after": s.first_after}) for n in uses_after})
    for o in s.others:   # all readings of another student, or only those of one answer
        whole = [n for n in right if n in p["differences"] or n == "percentWater"]
        for names in [whole] + [[n] for n in p["differences"]]:
            add("other-group", {n: lambda h, o=o, f=right[n]: f({**h, **o}) for n in names})
    for name, (mass, own) in moles.items():
        other = moles[second if name == first else first][1]
        per = lambda molar, mass=mass: lambda h: h[mass] / molar
        add("atomic-number", {name: per(p["atomicNumbers"][own])})
        add("one-molar-mass", {name: per(m[other])})
        if own == "O":
            add("molecule-for-atom", {name: per(m["O2"])})
        for wrong in p["others"][own]:
            add("wrong-molar-mass", {name: per(m[wrong])})
        for wrong in masses:
            if wrong != mass:
                add("wrong-mass", {name: lambda h, pair=masses[wrong], own=own: difference(*pair)(h) / m[own]})
        add("molar-mass-over-mass", {name: lambda h, mass=mass, own=own: m[own] / h[mass]})
        add("multiplied-for-divided", {name: lambda h, mass=mass, own=own: m[own] * h[mass]})
    add("one-molar-mass", {n: lambda h, mass=mass: h[mass] / m[p["compound"]] for n, (mass, _) in moles.items()})
    substances = dict(zip(moles, reversed([own for _, own in moles.values()])))
    add("molar-masses-swapped", {n: lambda h, n=n: h[moles[n][0]] / m[substances[n]] for n in moles})
    add("rounded-early", {n: lambda h, f=right[n]: F(fixed(f(h), 2)) for n in moles}, {n: 2 for n in moles})
    add("inverted", {ratio: lambda h: h[second] / h[first]})
    add("multiplied-for-divided", {ratio: lambda h: h[second] * h[first]})
    add("moles-skipped", {ratio: lambda h: h[moles[first][0]] / h[moles[second][0]]})
    add("rounded-to-whole", {ratio: lambda h: F(fixed(right[ratio](h), 0))}, {ratio: 0})
    if "percentWater" in right:
        hydrate = lambda h: h["before"] - h["empty"]
        add("wrong-denominator", {"percentWater": lambda h: 100 * h["massWater"] / h["massSalt"]})
        add("wrong-denominator", {"percentWater": lambda h: 100 * h["massWater"] / h["before"]})
        add("vessel-not-subtracted", {"percentWater": lambda h: 100 * h["massWater"] / h["before"]})
        add("wrong-mass", {"percentWater": lambda h: 100 * h["massSalt"] / hydrate(h)})
        add("inverted", {"percentWater": lambda h: 100 * hydrate(h) / h["massWater"]})
    for name in right:
        for shift in (1, -1, 1, -1, 2, -2):
            add("power-of-ten", {name: lambda h, k=F(10) ** shift, f=right[name]: k * f(h)},
                {name: max(0, 2 - shift)} if "mass" in name else None)
        for shift in (3, -3) if name.startswith("mass") or name in moles else ():
            add("unit-slip", {name: lambda h, k=F(10) ** shift, f=right[name]: k * f(h)},
                {name: max(0, 2 - shift)} if "mass" in name else None)
    return found


def work(s, changes, places, replaced=None, goes_on=True, formulas=None):
    """All answers as the student would write them, and the numbers then at hand. 'replaced' is what the pen wrote instead."""
    hand, sheet = dict(s.readings), {}
    for name, right in (formulas or s.formulas).items():
        value = changes.get(name, right)(hand)
        sheet[name] = write(s, name, value, places)
        hand[name] = sheet[name].value if s.carry == "rounded" else value
        if replaced and name in replaced:
            sheet[name] = replaced[name]
            hand[name] = sheet[name].value if goes_on else hand[name]
    return sheet, hand


def clashes(s, answer, sheet, hand, own):
    """Other ideas that end at the same written value: from the readings on, or in the last step from the earlier answers that
    stand on the sheet, as written or with the digits the student carried (answers left empty rightly worked out from these)."""
    as_written, carried = dict(s.readings), dict(s.readings)
    for name in list(sheet)[:list(sheet).index(answer)]:
        as_written[name] = sheet[name].value if name in s.shown else s.formulas[name](as_written)
        carried[name] = hand[name] if name in s.shown else s.formulas[name](carried)
    ids, seen = set(), sheet[answer].value
    for idea, changes, places in s.mistakes:
        if idea in own or idea in ids:
            continue
        try:
            values = [work(s, changes, places)[0][answer].value]
            if answer in changes:
                values += [write(s, answer, changes[answer](h), places).value for h in (carried, as_written)]
        except ZeroDivisionError:
            continue
        if seen in values:
            ids.add(idea)
    if "copied-digit" not in own:
        for h in (work(s, {}, {})[1], carried, as_written):
            right = write(s, answer, s.formulas[answer](h), {})
            if any(render(s, c, *right[3:]).value == seen for c in exchanged(right.core)):
                ids.add("copied-digit")
    return " ".join(sorted(ids))
