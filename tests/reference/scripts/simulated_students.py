"""Writes simulated_students.csv: 5,000 invented students who worked out the answers of two weighing practicals, with the
truth about each: what went wrong, and where. Whoever judges a marker compares its findings with that truth.
Run: python3 simulated_students.py [folder for the file]   (Python 3.9 or newer, standard library only, about two minutes)

A student is one way of working (atomic weights, figures, digits carried or not, way of writing) and at most two mistakes.
A mistake changes the formula of one answer, or of two where the idea concerns both; all that comes later is rightly worked
out from it. A mistake that cannot be seen (the answer is written as by a student without it) is drawn again.

Columns: student, class (another group's readings come from the same class of 25), practical, readings in g, the answers as
written; table, figures, carry: the way of working; kind: right, idea, two-ideas, slip (of the pen), unexplained;
answer: the first written answer at which the mistake shows; idea: what was wrong; clash: other ideas that, alone, would
have been written the same at that answer. Two ideas that show at two answers: all three columns have two parts, joined by +.
Shares, weights and laws are judgement: no source counts such mistakes. They say nothing about real students."""
import csv
import math
import random
import sys
from fractions import Fraction as F
from types import SimpleNamespace

from student_workings import (PRACTICALS, TABLES, clashes, exchanged, fixed, mistakes, molar_masses, render,
                              right_formulas, work, write)

SEED, STUDENTS, CLASS = 20261126, 5000, 25
KINDS = {"right": 0.40, "idea": 0.45, "two-ideas": 0.07, "slip": 0.05, "unexplained": 0.03}
WEIGHTS = {  # how often each idea is tried; one that the student's practical or readings do not allow is drawn again
    "inverted": 10, "moles-skipped": 9, "molecule-for-atom": 9, "wrong-molar-mass": 8, "wrong-mass": 7, "wrong-denominator": 7,
    "molar-mass-over-mass": 6, "multiplied-for-divided": 6, "earlier-weighing": 12, "one-molar-mass": 5, "atomic-number": 5,
    "vessel-not-subtracted": 5, "rounded-to-whole": 5, "rounded-early": 5, "power-of-ten": 5, "unit-slip": 4,
    "molar-masses-swapped": 4, "subtracted-backwards": 4, "copied-digit": 4, "other-group": 4}
READINGS = ["empty", "before", "after", "after 2"]
ANSWERS = ["massMagnesium", "massOxygen", "molesMagnesium", "molesOxygen", "ratio",
           "massWater", "massSalt", "molesWater", "molesSalt", "x", "percentWater"]


# ---- Drawing ----

def draw_readings(rng, practical):
    """Readings of one group in g, the last of them 'after'; the first weighing after heating where there were two."""
    cents = lambda x: F(round(100 * x), 100)
    while True:
        if practical == "magnesium-oxide":   # unburnt metal and smoke make the gain too small
            empty, sample = rng.gauss(28, 4), rng.uniform(0.15, 0.30)
            burnt = rng.betavariate(*rng.choices([(60, 2), (12, 2), (2, 3)], [62, 28, 10])[0])
            lost = min(0.35, rng.lognormvariate(math.log(0.035), 0.9))
            after = empty + sample * (burnt * (40.3 / 24.3) * (1 - lost) + 1 - burnt)
            first = after - rng.randint(1, 5) / 100
        else:                                # water that stayed makes the loss too small
            empty, sample = rng.gauss(18, 3), rng.uniform(1.5, 3.0)
            after = empty + sample * (1 - 0.3607 * rng.betavariate(40, 2))
            first = after + rng.randint(1, 20) / 100
        r = {"empty": cents(empty), "before": cents(empty + sample), "after": cents(after)}
        first = cents(first) if rng.random() < 0.25 else None
        least = min(abs(r["after"] - r["before"]), abs((first or r["after"]) - r["before"]))
        gained = min(r["after"], first or r["after"]) > r["before"]
        if r["empty"] > 9 and least >= F(3, 100) and (gained or practical != "magnesium-oxide"):
            return r, first


def draw_way(rng, s):
    s.table = rng.choices(list(TABLES), [60, 25, 15])[0]
    s.figures, s.carry = rng.choices([2, 3, 4], [20, 60, 20])[0], rng.choices(["digits", "rounded"], [65, 35])[0]
    s.mark, s.power = rng.choices([".", ","], [80, 20])[0], rng.choices(["", "e", "x"], [65, 15, 20])[0]
    s.unit = rng.choices(["none", "spaced", "close"], [70, 20, 10])[0]
    s.form = rng.choices(["{}", "{}:1", "1 : {}"], [60, 20, 20])[0]
    s.molar = molar_masses(TABLES[s.table])
    s.formulas = right_formulas(s.practical, s.molar)
    on_the_way = [n for n in s.formulas if n.startswith("m")]
    share = 0.5 if s.kind == "two-ideas" else 0.2   # pairs show best where little is written
    kept = on_the_way if rng.random() >= share else rng.sample(on_the_way, rng.randint(0, len(on_the_way) - 1))
    s.shown = [n for n in s.formulas if n in kept or n not in on_the_way]
    s.right_values = {n: set() for n in s.formulas}   # as written with any table, digits carried or not
    for table in TABLES.values():
        for carry in ("digits", "rounded"):
            other = SimpleNamespace(**{**vars(s), "carry": carry})
            for n, w in work(other, {}, {}, formulas=right_formulas(s.practical, molar_masses(table)))[0].items():
                s.right_values[n].add(w.value)


def pick(rng, s):
    """One mistake: first the idea, then the answer, then one of its forms, so that many forms do not make an idea frequent."""
    ideas = sorted({x.idea for x in s.mistakes}, key=list(WEIGHTS).index)
    idea = rng.choices(ideas, [WEIGHTS[i] for i in ideas])[0]
    names = list(s.formulas)
    start = lambda x: min(names.index(n) for n in x.changes)
    at = rng.choice(sorted({start(x) for x in s.mistakes if x.idea == idea}))
    return rng.choice([x for x in s.mistakes if x.idea == idea and start(x) == at]), at


def mistaken(rng, s):
    """Sheet of a student with one or two mistaken ideas; None where they do not show."""
    chosen = sorted((pick(rng, s) for _ in range(2 if s.kind == "two-ideas" else 1)), key=lambda c: c[1])
    ids = [x.idea for x, _ in chosen]
    touched = [n for x, _ in chosen for n in x.changes]
    if len(set(ids)) < len(ids) or len(set(touched)) < len(touched):
        return None
    shown = [n for n in s.shown if not ("moles-skipped" in ids and "moles" in n)]
    changes, places = {}, {}
    for x, _ in chosen:
        changes, places = {**changes, **x.changes}, {**places, **x.places}
    try:
        sheet, hand = work(s, changes, places)
        alone = [work(s, x.changes, x.places)[0] for x, _ in chosen]
    except ZeroDivisionError:
        return None
    names, where = list(s.formulas), []
    for k, (x, at) in enumerate(chosen):
        without = [s.right_values] if len(chosen) == 1 else [s.right_values, {n: {w.value} for n, w in alone[1 - k].items()}]
        seen = [n for n in shown if names.index(n) >= at and all(sheet[n].value not in w[n] for w in without)]
        if not seen or (names[at] in shown and seen[0] != names[at]):
            return None
        where.append(seen[0])
    s.shown = shown
    if len(set(where)) == 1:
        return sheet, where[0], "+".join(ids), clashes(s, where[0], sheet, hand, ids)
    both = "+".join(clashes(s, a, sheet, hand, [i]) for a, i in zip(where, ids))
    return sheet, "+".join(where), "+".join(ids), both


def one_value_wrong(rng, s):
    """Sheet with a slip of the pen or a number from nowhere at one written answer; None where that does not show."""
    answer = rng.choice(s.shown)
    right = work(s, {}, {})[0][answer]
    if s.kind == "slip":
        new = [w for w in (render(s, c, *right[3:]) for c in exchanged(right.core)) if w.value not in s.right_values[answer]]
        if not new:
            return None
        sheet, hand = work(s, {}, {}, {answer: rng.choice(new)}, rng.random() < 0.5)
        return sheet, answer, "copied-digit", clashes(s, answer, sheet, hand, ["copied-digit"])
    new = write(s, answer, right.value * F(math.exp(rng.uniform(-2, 2))), {})
    if not new.value or new.value in s.right_values[answer]:
        return None
    sheet, hand = work(s, {}, {}, {answer: new})
    return None if clashes(s, answer, sheet, hand, []) else (sheet, answer, "", "")


def main():
    rng = random.Random(SEED)
    kinds = [k for k, share in KINDS.items() for _ in range(round(share * STUDENTS))]
    rng.shuffle(kinds)
    with open((sys.argv[1] if len(sys.argv) > 1 else ".") + "/simulated_students.csv", "w", newline="", encoding="utf-8") as file:
        out = csv.writer(file, lineterminator="\n")
        out.writerow(["student", "class", "practical"] + READINGS + ANSWERS + "table figures carry answer idea kind clash".split())
        for number in range(STUDENTS // CLASS):
            practical = list(PRACTICALS)[number % 2]
            name = f"{practical[0].upper()}{number // 2 + 1:03d}"
            drawn = [draw_readings(rng, practical) for _ in range(CLASS)]
            for i, (readings, first) in enumerate(drawn):
                s = SimpleNamespace(practical=practical, readings=readings, first_after=first, kind=kinds.pop())
                s.others = [o for o, _ in drawn if o != readings]
                found = None
                while not found:
                    draw_way(rng, s)
                    s.mistakes = mistakes(s) if s.kind != "right" else []
                    found = (work(s, {}, {})[0], "", "", "") if s.kind == "right" else \
                        mistaken(rng, s) if "idea" in s.kind else one_value_wrong(rng, s)
                sheet, answer, idea, clash = found
                weighings = [readings["empty"], readings["before"]] + ([first] if first else []) + [readings["after"]]
                texts = [fixed(x, 2) for x in weighings] + [""] * (4 - len(weighings))
                out.writerow([f"{name}-{i + 1:02d}", name, practical] + texts
                             + [sheet[a].text if a in s.shown else "" for a in ANSWERS]
                             + [s.table, s.figures, s.carry, answer, idea, s.kind, clash])


if __name__ == "__main__":
    main()
