#!/usr/bin/python3
"""Groups at a bench of another making: classes that heat something in a crucible, with the truth about every group.

Written without a look at the model in src/ or at the practicals: mechanisms, sizes and rates are one chemist's judgement, with
no source unless one is named, and on purpose wider than a textbook would have them. What comes out is not a picture of how
often things go wrong in schools (the causes are spread evenly, to have enough of each); it shows whether causes are
recognised on groups that come from somewhere else.

usage: python3 other_bench.py OUTPUT_FOLDER
writes NAME.csv (readings as written) and NAME.truth.csv (group,cause,reading,size,unit,gross) for the sets at the end of this file.

The truth. D = (last reading - reading with sample) - K (reading with sample - empty reading), K the change in mass that a gram
of sample should show. Each cause is put alone into an otherwise perfect run, without noise, and the shift of D is its effect.
Limit: two divisions or 5 % of the expected change, whichever is larger.
- A missing part or a slip of the pen larger than the limit is the cause, in whichever reading it stands.
- Else the largest effect, if it is over the limit.
- Else, where only all together are over the limit, the largest of the effects that pull the same way.
- Else as-expected.
So an injected fault that is too small, or that a reheat has mended, leaves the group as-expected.

`size`, for shares (unit 1): magnesium unreacted at the last reading, of the magnesium; water left, of the water; hydrogencarbonate
left, of the powder; product lost, of the product at that moment; magnesium gone into nitride or glaze; salt decomposed; film,
wetness or carbonate, of the sample as weighed. In g: water of the vessel at the first reading; water regained and soot at
the last reading; apparent change at the named reading for a crumb, warmth, other zero, slip, missing part. ' onwards' behind a
reading: it and all later ones. Only random() is drawn from and all shapes are made from it here, so that any version of Python
gives the same file."""
import csv
import math
import random
import sys
from pathlib import Path
from statistics import NormalDist

# Relative atomic masses: IUPAC abridged values (from memory, as in any data book).
H, C, N, O, NA, MG, S, CU = 1.008, 12.011, 14.007, 15.999, 22.990, 24.305, 32.06, 63.546
WATER = 2 * H + O
SALT = CU + S + 4 * O
HYDRATE = SALT + 5 * WATER
SO3 = S + 3 * O
HYDROGENCARBONATE = NA + H + C + 3 * O
GAS = (H * 2 + O + C + 2 * O) / 2  # water and carbon dioxide that leave with each NaHCO3
OXIDE_PER_G, NITRIDE_PER_G = 1 + O / MG, 1 + 2 * N / (3 * MG)


class Draw:
    """Shapes made from uniform numbers; the generator behind them is specified, its derived shapes in a library are not."""

    def __init__(self, seed):
        self.u = random.Random(seed).random

    def between(self, low, high):
        return low + (high - low) * self.u()

    def log_between(self, low, high):
        return low * (high / low) ** self.u()

    def skewed(self, high, power):
        """0 to high, the small ones more often the higher the power."""
        return high * self.u() ** power

    def few(self, mean, cap):
        """Exponential, cut off: most hardly any, now and then a good deal."""
        return min(-mean * math.log(1 - self.u()), cap)

    def normal(self, sd):
        return NormalDist(0, sd).inv_cdf(min(max(self.u(), 1e-12), 1 - 1e-12))

    def chance(self, p):
        return self.u() < p

    def one_of(self, values, weights=None):
        weights = weights or [1] * len(values)
        at = self.u() * sum(weights)
        for value, weight in zip(values, weights):
            at -= weight
            if at < 0:
                return value
        return values[-1]


# ---------------------------------------------------------------------------------------------------------------------
# What happens in the vessel. Each function takes the sample, the number of heatings and the state {cause: settings}; a cause that
# is not in the state did not happen. It gives the mass of the contents after each heating. Lists have one entry a heating.

def burn(sample, heatings, state):
    """Magnesium in five places: metal, oxide, nitride, metal gone into the glaze, and the old crust it came with."""
    film = state.get("tarnished-sample", {"share": 0, "loss": 0})
    left = state.get("not-all-reacted", {"left": [0] * heatings})["left"]
    lost = state.get("product-lost", {"smoke": 0, "kept": [1] * heatings})
    side = state.get("side-reaction", {"nitride": 0, "glaze": 0, "mended": 0})
    start = metal = sample * (1 - film["share"])
    # An old coil carries hydroxide and basic carbonate as well as oxide: its crust not only gains nothing, it loses water and
    # carbon dioxide in the first fire.
    crust = sample * film["share"] * (1 - film["loss"])
    oxide = nitride = glaze = 0.0
    masses = []
    kept = 1.0
    for i in range(heatings):
        burnt = max(metal - start * left[i], 0)
        metal -= burnt
        # Nitride is slowly burnt to oxide when air gets at it in a reheat; metal in the glaze stays there for good (its oxygen
        # came out of the porcelain, so the balance sees no gain).
        oxide += side["mended"] * nitride / NITRIDE_PER_G * OXIDE_PER_G if i else 0
        nitride *= 1 - side["mended"] if i else 1
        nitride += side["nitride"] * burnt * NITRIDE_PER_G
        glaze += side["glaze"] * burnt
        # Smoke is made only where metal burns, so a reheat of burnt-out oxide loses none. A knock or a draught takes some of
        # everything at the moment it happens.
        oxide += (1 - side["nitride"] - side["glaze"]) * burnt * OXIDE_PER_G * (1 - lost["smoke"])
        kept *= lost["kept"][i]
        masses.append((metal + oxide + nitride + glaze + crust) * kept)
    return masses


def dehydrate(sample, heatings, state):
    """Copper(II) sulfate: four waters go easily, the fifth needs a hotter flame; far too hot a flame takes sulfur trioxide too."""
    wet = state.get("tarnished-sample", {"share": 0})["share"]
    left = state.get("not-all-reacted", {"four": [0] * heatings, "fifth": [0] * heatings})
    kept = state.get("product-lost", {"kept": [1] * heatings})["kept"]
    burnt = state.get("overheated", {"share": [0] * heatings})["share"]
    regained = state.get("regained-water", {"water": [0] * heatings})["water"]
    moles = sample * (1 - wet) / HYDRATE
    masses = []
    still = 1.0
    for i in range(heatings):
        still *= kept[i]
        water = (4 * left["four"][i] + left["fifth"][i]) * WATER
        masses.append(moles * (SALT + water - burnt[i] * SO3) * still + regained[i] * still)
    return masses


def decompose(sample, heatings, state):
    """Sodium hydrogencarbonate: one step, and a part of an old tub that has taken it already."""
    old = state.get("tarnished-sample", {"share": 0})["share"]
    left = state.get("not-all-reacted", {"left": [0] * heatings})["left"]
    kept = state.get("product-lost", {"kept": [1] * heatings})["kept"]
    fresh = sample * (1 - old)
    masses = []
    still = 1.0
    for i in range(heatings):
        still *= kept[i]
        masses.append((sample - fresh * (1 - left[i]) * GAS / HYDROGENCARBONATE) * still)
    return masses


def readings_without_noise(contents, empty, sample, heatings, state):
    """On the pan at each reading: vessel and contents, the water of the vessel, what sticks to it, and what the balance adds."""
    count = 2 + heatings
    pan = [empty, empty + sample] + [empty + mass for mass in contents(sample, heatings, state)]
    for cause in ("damp-vessel", "extra-mass", "weighed-warm", "zero-shifted", "part-left-off", "misread"):
        added = state.get(cause, {"added": [0] * count})["added"]
        pan = [mass + more for mass, more in zip(pan, added)]
    return pan


# ---------------------------------------------------------------------------------------------------------------------
# Ordinary imperfections: what also happens to groups with nothing to explain. `care` of the class scales all of them.

def vessel_water(draw, grams, heatings, count):
    """A little dries off on the bench before the second reading. The first fire takes the rest; seldom a film under the base
    or in the rim of the lid waits for the reheat."""
    second = grams * (1 - draw.skewed(0.2, 2))
    third = grams * draw.skewed(0.15, 1) if draw.chance(0.12) else 0
    return {"added": ([grams, second, third] + [0] * heatings)[:count], "size": grams, "unit": "g"}


def soot(draw, grams, heatings, count):
    """Each heating in a smoky flame adds some; a blue flame in the reheat may burn a part off again."""
    added = [0, 0, grams]
    for _ in range(heatings - 1):
        added.append(added[-1] * (draw.between(0.2, 0.9) if draw.chance(0.25) else 1 + draw.between(0, 0.7)))
    return {"added": added[:count], "size": added[count - 1], "unit": "g"}


def shrinking(draw, first, heatings, quick):
    """What is left after each heating: a reheat takes its share of what was left, which share depends on how it sits."""
    left = [first]
    for _ in range(heatings - 1):
        left.append(left[-1] * (1 - draw.between(*quick)))
    return left


def ordinary(draw, practical, klass, sample, heatings):
    care, count = klass["care"], 2 + heatings
    state = {}
    # Rushed groups that will not reheat heat longer; groups that will, stop earlier and finish then.
    first = draw.few(0.007, 0.025) * care if heatings == 1 else draw.skewed(0.10, 2) * care
    left = shrinking(draw, first, heatings, (0.5, 0.95))
    if practical == "magnesium":
        state["not-all-reacted"] = {"left": left, "size": left[-1], "unit": "1"}
        smoke = draw.few(0.005, 0.02) * care  # a lid lifted a little too long
        state["product-lost"] = {"smoke": smoke, "kept": [1] * heatings, "size": smoke, "unit": "1"}
        nitride = draw.skewed(0.04, 2) * care
        state["side-reaction"] = {"nitride": nitride, "glaze": 0, "mended": draw.between(0, 0.4), "size": nitride, "unit": "1"}
        film = klass["film"] * draw.between(0.5, 1.5)  # all groups cut from the same coil, and rub it more or less well
        state["tarnished-sample"] = {"share": film, "loss": draw.between(0, 0.45), "size": film, "unit": "1"}
    else:
        lost = draw.few(0.003, 0.012) * care
        state["product-lost"] = {"kept": [1 - lost] + [1] * (heatings - 1), "size": lost, "unit": "1"}
        film = klass["film"] * draw.between(0.5, 1.5)
        state["tarnished-sample"] = {"share": film, "size": film, "unit": "1"}
        if practical == "hydrate":
            fifth = [min(3 * x, 1) for x in left]
            state["not-all-reacted"] = {"four": [0] * heatings, "fifth": fifth, "size": fifth[-1] / 5, "unit": "1"}
            burnt = draw.skewed(0.006, 3) * care
            state["overheated"] = {"share": [burnt] * heatings, "size": burnt, "unit": "1"}
            # White salt takes up water from the room as it cools, every time anew.
            water = [draw.few(0.02, 0.08) * care * sample / HYDRATE * WATER for _ in range(heatings)]
            state["regained-water"] = {"water": water, "size": water[-1], "unit": "g"}
        else:
            state["not-all-reacted"] = {"left": left, "size": left[-1], "unit": "1"}
    damp = draw.few(0.0002 if klass["fired"] else 0.0015, 0.006) * care
    state["damp-vessel"] = vessel_water(draw, damp, heatings, count)
    state["extra-mass"] = soot(draw, draw.few(0.0003, 0.002) * care, heatings, count)
    # A vessel that still warms the hand reads a milligram or so low: 0.1 to 0.2 mg for each kelvin, of the size Blade reported
    # for a porcelain crucible (Anal. Chem., Differential Temperature Error in Weighing).
    warm = [-draw.few(0.0012, 0.006) * care for _ in range(count)]
    warm[1] = 0
    warm[0] *= klass["fired"]
    state["weighed-warm"] = {"added": warm, "size": warm[-1], "unit": "g", "at": count - 1, "on": False}
    return state


# ---------------------------------------------------------------------------------------------------------------------
# Injected causes. Each replaces the ordinary settings of its cause.

def inject_not_all_reacted(draw, practical, klass, sample, heatings, count):
    # Three in ten sit under a crust or in a lump that a reheat hardly reaches; the others go on reacting.
    quick = (0, 0.15) if draw.chance(0.3) else (0.1, 0.9)
    if practical != "hydrate":
        left = shrinking(draw, draw.skewed(0.8, 0.8), heatings, quick)
        return {"left": left, "size": left[-1], "unit": "1"}
    # Stops towards the monohydrate: the fifth water stays in part or whole. In four of ten the middle is still blue as well.
    fifth = shrinking(draw, draw.between(0.15, 1), heatings, quick)
    four = shrinking(draw, draw.skewed(0.75, 1.5) if draw.chance(0.4) else 0, heatings, (0.4, 0.95))
    return {"four": four, "fifth": fifth, "size": (4 * four[-1] + fifth[-1]) / 5, "unit": "1"}


def inject_product_lost(draw, practical, klass, sample, heatings, count):
    kept = [1.0] * heatings
    if practical == "magnesium" and draw.chance(0.7):
        # Lid off while it blazes: from a few per cent to open burning.
        smoke = draw.skewed(0.4, 1.3)
        return {"smoke": smoke, "kept": kept, "size": smoke, "unit": "1"}
    # Powder tipped or blown out, crystals that crackle and jump, solid that leaves on the stirring rod. Mostly in the first
    # heating; lost in a reheat, the mass drops there.
    when = 0 if draw.chance(0.7) else heatings - 1
    share = draw.skewed(0.4, 1.8)
    kept[when] = 1 - share
    return {"smoke": 0, "kept": kept, "size": share, "unit": "1"}


def inject_side_reaction(draw, practical, klass, sample, heatings, count):
    # Three of four starve the fire of oxygen and make nitride, rarely most of it; one of four has the metal melt into an old glaze.
    nitride, glaze = (draw.skewed(0.6, 1.2), 0) if draw.chance(0.75) else (0, draw.skewed(0.3, 1.2))
    return {"nitride": nitride, "glaze": glaze, "mended": draw.between(0, 0.4), "size": nitride + glaze, "unit": "1"}


def inject_tarnished_sample(draw, practical, klass, sample, heatings, count):
    # A coil kept for years in a damp cupboard; crystals straight from the filter; an old tub, or powder once dried in an oven.
    share = draw.skewed({"magnesium": 0.4, "hydrate": 0.3, "hydrogencarbonate": 0.6}[practical], 1.3)
    return {"share": share, "loss": draw.between(0, 0.45), "size": share, "unit": "1"}


def inject_overheated(draw, practical, klass, sample, heatings, count):
    # Decomposes where the flame bites: in the first heating already and further in the next, or in the reheat only.
    start = draw.skewed(0.4, 1.3)
    if heatings > 1 and draw.chance(0.35):
        share = [0] * (heatings - 1) + [start]
    else:
        share = [start]
        for _ in range(heatings - 1):
            share.append(min(share[-1] * (1 + draw.between(0, 0.8)), 1))
    return {"share": share, "size": share[-1], "unit": "1"}


def inject_regained_water(draw, practical, klass, sample, heatings, count):
    # Left to cool uncovered over a break: 0.05 to 2 of the five waters come back. Driven off by the reheat, and taken up again
    # about as much in the next cooling, unless the group was quicker then.
    moles = draw.log_between(0.05, 2)
    water = []
    for _ in range(heatings):
        water.append(moles * sample / HYDRATE * WATER)
        moles *= draw.between(0.05, 0.4) if draw.chance(0.3) else draw.between(0.6, 1.4)
    return {"water": water, "size": water[-1], "unit": "g"}


def inject_damp_vessel(draw, practical, klass, sample, heatings, count):
    # From a wiped crucible to one with drops in it.
    return vessel_water(draw, draw.log_between(0.004, 0.1), heatings, count)


def inject_weighed_warm(draw, practical, klass, sample, heatings, count):
    # 4 to 80 mg low: warm to the touch, up to straight off the triangle with rising air on the pan.
    low = -draw.log_between(0.004, 0.08)
    added = [0.0] * count
    if klass["fired"] and draw.chance(0.2):
        # Hot from being fired empty, and not quite cold when the sample goes in.
        added[0], added[1] = low, low * draw.skewed(0.6, 2)
        return {"added": added, "size": low, "unit": "g", "at": 0, "on": False}
    if heatings > 1 and draw.chance(0.3):
        for i in range(2, count):  # the same hurry each time
            added[i] = low * (draw.between(0.6, 1.4) if i < count - 1 else 1)
        return {"added": added, "size": low, "unit": "g", "at": 2, "on": True}
    at = count - 1 if draw.chance(0.75) else int(draw.between(2, count))
    added[at] = low
    return {"added": added, "size": low, "unit": "g", "at": at, "on": False}


def one_or_onwards(draw, count, alone):
    """A reading by itself, or it and all later ones. From the first onwards would be all of them, and shows nothing."""
    if draw.chance(alone):
        at = int(draw.between(0, count))
        return at, [at]
    at = int(draw.between(1, count))
    return at, list(range(at, count))


def at_readings(count, size, at, where):
    return {"added": [size if i in where else 0 for i in range(count)], "size": size, "unit": "g", "at": at, "on": len(where) > 1}


def inject_part_left_off(draw, practical, klass, sample, heatings, count):
    # The lid is a quarter to two fifths of a set: forgotten once, or broken or mislaid from then on.
    return at_readings(count, -klass["lid"], *one_or_onwards(draw, count, 0.65))


def inject_zero_shifted(draw, practical, klass, sample, heatings, count):
    # The queue was shorter at the other balance; or somebody pressed the zero key with crumbs on the pan.
    size = draw.log_between(max(0.6 * klass["d"], 0.002), 0.1) * draw.one_of([-1, 1])
    return at_readings(count, size, *one_or_onwards(draw, count, 0.6))


def inject_extra_mass(draw, practical, klass, sample, heatings, count):
    if draw.chance(0.5):
        return soot(draw, draw.log_between(0.002, 0.08), heatings, count)
    # A crumb of the mat, of pipe-clay or of rust from the tripod sticks to the base; some fall off before the next weighing.
    size = draw.log_between(0.008, 0.3)
    at = 2 if draw.chance(0.75) else int(draw.between(1, count))
    end = at + 1 if draw.chance(0.3) else count  # fallen off before the end, it counts only if it was there with the sample
    added = [size if at <= i < end else 0 for i in range(count)]
    return {"added": added, "size": size, "unit": "g", "at": at, "on": end - at > 1}


INJECT = {
    "not-all-reacted": inject_not_all_reacted, "product-lost": inject_product_lost, "side-reaction": inject_side_reaction,
    "tarnished-sample": inject_tarnished_sample, "overheated": inject_overheated, "regained-water": inject_regained_water,
    "damp-vessel": inject_damp_vessel, "weighed-warm": inject_weighed_warm, "part-left-off": inject_part_left_off,
    "zero-shifted": inject_zero_shifted, "extra-mass": inject_extra_mass,
}

# Digits that look alike in a hurried hand or on a seven-segment display.
ALIKE = {"0": "689", "1": "74", "2": "73", "3": "82", "4": "91", "5": "63", "6": "58", "7": "12", "8": "360", "9": "484"}


def slip(draw, written, gross):
    """Another number in place of the one on the display. gross: a gram or more out. Tries again until it is another number."""
    while True:
        digits = list(written)
        point = digits.index(".")
        kind = draw.one_of(["swap", "digit", "gram", "ten"], [4, 3, 2, 2] if gross else [1, 1, 0, 0])
        places = [i for i in range(len(digits)) if i != point]
        if kind == "swap":
            k = int(draw.between(0, len(places) - 1))
            a, b = places[k], places[k + 1]
            digits[a], digits[b] = digits[b], digits[a]
        elif kind == "digit":
            at = draw.one_of(places)
            near = str((int(digits[at]) + draw.one_of([-1, 1])) % 10)
            digits[at] = draw.one_of(list(ALIKE[digits[at]])) if draw.chance(0.6) else near
        else:
            step = draw.one_of([1, -1, 2, -2], [4, 4, 1, 1]) if kind == "gram" else draw.one_of([10, -10])
            digits = list(f"{float(written) + step:.{len(digits) - point - 1}f}")
        other = "".join(digits)
        size = float(other) - float(written)
        if digits[0] not in "0-" and abs(size) > 1e-9 and (abs(size) > 0.9999) == gross:
            return other, size


# ---------------------------------------------------------------------------------------------------------------------
# Classes, groups and their truth

PRACTICALS = {
    "magnesium": {
        "headings": ["Mass of empty crucible and lid / g", "Mass of crucible, lid and magnesium / g",
                     "Mass after heating / g", "Mass after reheating / g", "Mass after reheating 2 / g"],
        "contents": burn, "change": O / MG, "lid": True, "reheats": ([0, 1, 2], [3, 4, 4]),
        "targets": [0.12, 0.15, 0.18, 0.2, 0.25, 0.3, 0.4], "spread": 0.14, "film": 0.005},
    "hydrate": {
        "headings": ["Mass of empty crucible / g", "Mass of crucible and blue crystals / g",
                     "Mass after heating / g", "Mass after reheating / g"],
        "contents": dehydrate, "change": -5 * WATER / HYDRATE, "lid": False, "reheats": ([0, 1], [1, 2]),
        "targets": [1.2, 1.5, 2.0, 2.5, 3.0], "spread": 0.09, "film": 0.003},
    "hydrogencarbonate": {
        "headings": ["Mass of empty crucible and lid / g", "Mass of crucible, lid and sodium hydrogencarbonate / g",
                     "Mass after heating / g", "Mass after reheating / g"],
        "contents": decompose, "change": -GAS / HYDROGENCARBONATE, "lid": True, "reheats": ([0, 1], [1, 2]),
        "targets": [1.2, 1.5, 2.0, 2.5, 3.0, 4.0], "spread": 0.09, "film": 0.005},
}


def new_class(draw, practical, d):
    """What the groups of one lesson share: amount asked for, stock, habits, and how steady the balance stands."""
    p = PRACTICALS[practical]
    return {
        "d": d,
        "target": draw.one_of(p["targets"]),
        "reheats": draw.one_of(*p["reheats"]),
        "fired": 1 if draw.chance(0.45) else 0,  # crucible fired empty first
        "film": draw.skewed(2 * p["film"], 1) * (0.6 if d < 0.005 else 1),
        # Where there is a milligram balance people take more trouble; it would show anything else.
        "care": draw.between(0.6, 1.4) * (0.5 if d < 0.005 else 1),
        "noise": draw.between(0.4, 0.9) * d,  # before the display rounds; a shaky bench, a draught
    }


def written(mass, d):
    return f"{mass:.{2 if d > 0.005 else 3}f}"


def attempt(draw, practical, klass, cause):
    """One group, with its readings and its truth. cause: None, an id, or misread-small / misread-gross."""
    p = PRACTICALS[practical]
    d = klass["d"]
    # Two makes of crucible in the cupboard, a broad heap each.
    body = draw.between(11.5, 17) if draw.chance(0.6) else draw.between(16, 24.5)
    lid = body * draw.between(0.33, 0.7) if p["lid"] else 0
    klass["lid"] = lid
    sample = klass["target"] * min(max(1 + draw.normal(p["spread"]), 0.6), 1.5)

    heatings = 1 + klass["reheats"]
    seed = draw.u()
    while True:
        # Same luck for fewer heatings: the second reheat is only made if the first changed the mass, mostly.
        luck = Draw(seed)
        count = 2 + heatings
        state = ordinary(luck, practical, klass, sample, heatings)
        if cause in INJECT:
            state[cause] = INJECT[cause](luck, practical, klass, sample, heatings, count)
        pan = readings_without_noise(p["contents"], body + lid, sample, heatings, state)
        shown = [written(mass + draw.normal(klass["noise"]), d) for mass in pan]
        if heatings == 3 and abs(float(shown[3]) - float(shown[2])) < 2.5 * d and draw.chance(0.7):
            heatings = 2
            continue
        break

    if cause in ("misread-small", "misread-gross"):
        at = int(draw.between(0, count))
        shown[at], size = slip(draw, shown[at], cause == "misread-gross")
        state["misread"] = at_readings(count, size, at, [at])
    return shown, truth(p, body + lid, sample, heatings, state, d)


def truth(p, empty, sample, heatings, state, d):
    def result(of):
        pan = readings_without_noise(p["contents"], empty, sample, heatings, of)
        return pan[-1] - pan[1] - p["change"] * (pan[1] - pan[0])

    limit = max(2 * d, 0.05 * abs(p["change"]) * sample) + 1e-9
    perfect = result({})
    effects = {cause: result({cause: state[cause]}) - perfect for cause in state}
    together = result(state) - perfect
    named = None
    for cause in ("part-left-off", "misread"):
        if cause in state and abs(state[cause]["size"]) > limit:
            named = cause
    if named is None and max(map(abs, effects.values())) > limit:
        named = max(effects, key=lambda cause: abs(effects[cause]))
    if named is None and abs(together) > limit:
        named = max(effects, key=lambda cause: effects[cause] * together)
    if named is None:
        return ["as-expected", "", "", "", "no"]
    s = state[named]
    reading = p["headings"][s["at"]] + (" onwards" if s["on"] else "") if "at" in s else ""
    gross = named == "part-left-off" or named == "misread" and abs(s["size"]) > 0.9999
    return [named, reading, f"{s['size']:.4f}", s["unit"], "yes" if gross else "no"]


def group(draw, practical, klass, cause):
    """Five of six injected faults are drawn again until they count; the sixth stays as it falls, so that faults too small to
    matter occur too. Sound groups are never drawn again."""
    must = cause is not None and draw.chance(5 / 6)
    for _ in range(60):
        shown, true = attempt(draw, practical, klass, cause)
        if not must or true[0] == (cause if cause in INJECT else "misread"):
            break
    return shown, true


def write_set(folder, name, practical, d, causes):
    draw = Draw("another bench, " + name)
    wanted = [cause for cause, times in causes.items() for _ in range(times)]
    wanted = [cause for _, cause in sorted((draw.u(), cause) for cause in wanted)]  # shuffled: each class sees a bit of all
    groups, truths = [], []
    for i, cause in enumerate(wanted):
        if i % 12 == 0:
            klass = new_class(draw, practical, d)
        shown, true = group(draw, practical, klass, None if cause == "sound" else cause)
        label = f"C{i // 12 + 1:02}G{i % 12 + 1:02}"
        groups.append([label] + shown)
        truths.append([label] + true)
    width = max(map(len, groups))
    headings = ["group"] + PRACTICALS[practical]["headings"]
    save(folder / f"{name}.csv", headings[:width], [row + [""] * (width - len(row)) for row in groups])
    save(folder / f"{name}.truth.csv", ["group", "cause", "reading", "size", "unit", "gross"], truths)


def save(path, headings, rows):
    with open(path, "w", newline="", encoding="utf-8") as file:
        csv.writer(file, lineterminator="\n").writerows([headings] + rows)


SETS = [
    ("magnesium-0.01", "magnesium", 0.01, {
        "sound": 180, "not-all-reacted": 50, "product-lost": 50, "side-reaction": 30, "tarnished-sample": 30, "damp-vessel": 40,
        "weighed-warm": 30, "part-left-off": 50, "zero-shifted": 40, "misread-small": 20, "misread-gross": 50, "extra-mass": 30}),
    ("magnesium-0.001", "magnesium", 0.001, {
        "sound": 90, "not-all-reacted": 25, "product-lost": 25, "side-reaction": 20, "tarnished-sample": 20, "damp-vessel": 20,
        "weighed-warm": 20, "part-left-off": 20, "zero-shifted": 20, "misread-small": 12, "misread-gross": 13, "extra-mass": 15}),
    ("hydrate-0.01", "hydrate", 0.01, {
        "sound": 90, "not-all-reacted": 30, "overheated": 22, "product-lost": 22, "regained-water": 20, "tarnished-sample": 20,
        "damp-vessel": 16, "weighed-warm": 14, "zero-shifted": 16, "misread-small": 12, "misread-gross": 24, "extra-mass": 14}),
    # No water is regained and nothing is overheated here: dry sodium carbonate takes up water too slowly to matter in a lesson
    # and stands any Bunsen flame.
    ("hydrogencarbonate-0.01", "hydrogencarbonate", 0.01, {
        "sound": 90, "not-all-reacted": 34, "product-lost": 28, "tarnished-sample": 26, "damp-vessel": 20, "weighed-warm": 16,
        "part-left-off": 24, "zero-shifted": 18, "misread-small": 12, "misread-gross": 18, "extra-mass": 14}),
]

if __name__ == "__main__":
    target = Path(sys.argv[1])
    target.mkdir(parents=True, exist_ok=True)
    for each in SETS:
        write_set(target, *each)
