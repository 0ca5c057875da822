"""Writes reference_marks.csv: the answers of simulated_students.csv marked by the rules of docs/methods/marking.md in the
slowest and most obvious way, to judge a marker that was written apart from this one. Exact fractions, no floating point.
Run: python3 reference_marker.py [folder of both files]   (Python 3.9 or newer, standard library only, under a minute)

Verdicts: right, rounded-early, carried (each earns the mark), wrong, missing. At most one mark off a paper for figures, none
for units. The file's truth is not read: only readings and answers are. An answer is compared with the own readings first, then
with the earlier answers, values left out rounded to three figures, then (where it has two figures) to two.

Where the page leaves a choice, the plainest reading is taken; each is marked below with 'Choice'."""
import csv
import re
import sys
from fractions import Fraction as F

# One table for a whole formula, never mixed: school tables to one decimal and whole, and the abridged IUPAC values.
TABLES = [
    {"Mg": F("24.3"), "O": F("16.0"), "H": F("1.0"), "S": F("32.1"), "Cu": F("63.5")},
    {"Mg": F(24), "O": F(16), "H": F(1), "S": F(32), "Cu": F("63.5")},
    {"Mg": F(24), "O": F(16), "H": F(1), "S": F(32), "Cu": F(64)},
    {"Mg": F("24.305"), "O": F("15.999"), "H": F("1.008"), "S": F("32.06"), "Cu": F("63.546")}]
MOLECULES = {"Mg": {"Mg": 1}, "O": {"O": 1}, "H2O": {"H": 2, "O": 1}, "CuSO4": {"Cu": 1, "S": 1, "O": 4}}
FORMULAS = {  # of the practicals' files: a reading or earlier answer, a molar mass, a number, or (operation, left, right)
    "magnesium-oxide": {
        "massMagnesium": ("-", "before", "empty"), "massOxygen": ("-", "after", "before"),
        "molesMagnesium": ("/", "massMagnesium", "M(Mg)"), "molesOxygen": ("/", "massOxygen", "M(O)"),
        "ratio": ("/", "molesMagnesium", "molesOxygen")},
    "copper-sulfate-hydrate": {
        "massWater": ("-", "before", "after"), "massSalt": ("-", "after", "empty"),
        "molesWater": ("/", "massWater", "M(H2O)"), "molesSalt": ("/", "massSalt", "M(CuSO4)"),
        "x": ("/", "molesWater", "molesSalt"),
        "percentWater": ("/", ("*", 100, "massWater"), ("-", "before", "empty"))}}
UNITS = {"": F(1), "g": F(1), "mg": F(1, 1000), "mol": F(1), "mmol": F(1, 1000), "%": F(1)}
ACCEPTED = ("right", "rounded-early", "carried")
COARSE = F(5, 100)
WIDEST = F(1, 10)


# ---- An answer as written: its value, the interval it stands for, its decimals and figures ----

def read_number(text):
    """(value, half a unit of the last place, decimals, figures) of '0.24', '0,24', '9.9e-3', '9.9 x 10^-3' or '7/8'."""
    fraction = re.fullmatch(r"(\d+)/(\d+)", text)
    if fraction:
        return F(int(fraction[1]), int(fraction[2])), F(0), 0, None
    parts = re.fullmatch(r"(-?)(\d+)(?:[.,](\d+))?(?:(?:e| ?x ?10\^)(-?\d+))?", text)
    if not parts:
        raise ValueError(f"cannot read the number '{text}'")
    sign, whole, behind, power = parts[1], parts[2], parts[3] or "", int(parts[4] or 0)
    value = F(int(whole + behind)) / 10 ** len(behind) * F(10) ** power
    half = F(1, 2) / 10 ** len(behind) * F(10) ** power
    return (-value if sign else value), half, len(behind) - power, len((whole + behind).lstrip("0")) or 1


def read_answer(text):
    """Dictionary of value, low, high, decimals, figures; None for an empty cell."""
    if not text.strip():
        return None
    sides = [side.strip() for side in text.split(":")]
    if len(sides) == 2:   # a ratio a : b, where a lone 1 is exact
        a, b = read_number(sides[0]), read_number(sides[1])
        # Choice: in '1 : 1' the second 1 is the exact one and the first stands for a rounded number, so that '1 : 1' is
        # read like '1'. With both exact it could never be right, even where the own readings give 1.02.
        if sides[1] == "1":
            low, high, figures = a[0] - a[1], a[0] + a[1], a[3]
        elif sides[0] == "1":
            ends = [1 / (b[0] - b[1]), 1 / (b[0] + b[1])]
            low, high, figures = min(ends), max(ends), b[3]
        else:
            ends = [x / y for x in (a[0] - a[1], a[0] + a[1]) for y in (b[0] - b[1], b[0] + b[1])]
            low, high, figures = min(ends), max(ends), min(a[3], b[3])
        return {"value": a[0] / b[0], "low": low, "high": high, "decimals": a[2] if sides[1] == "1" else None, "figures": figures}
    number, unit = re.fullmatch(r"(.*?)\s*(mg|g|mmol|mol|%)?", text.strip()).groups()
    (value, half, decimals, figures), scale = read_number(number), UNITS[unit or ""]
    return {"value": value * scale, "low": (value - half) * scale, "high": (value + half) * scale,
            "decimals": decimals + (3 if unit and unit.startswith("m") and unit != "mol" else 0), "figures": figures}


# ---- Interval arithmetic on the formulas ----

def molar_mass(name, table):
    return sum(count * table[element] for element, count in MOLECULES[name].items())


def evaluate(node, table, value_of):
    """Interval (low, high) of a formula; None where something would be divided by an interval that holds 0."""
    if isinstance(node, int):
        return F(node), F(node)
    if isinstance(node, str):
        return (molar_mass(node[2:-1], table),) * 2 if node.startswith("M(") else value_of(node)
    left, right = evaluate(node[1], table, value_of), evaluate(node[2], table, value_of)
    if left is None or right is None:
        return None
    if node[0] == "-":
        return left[0] - right[1], left[1] - right[0]
    if node[0] == "/" and right[0] <= 0 <= right[1]:
        return None
    ends = [a * b if node[0] == "*" else a / b for a in left for b in right]
    return min(ends), max(ends)


def may_be_rounded(interval, figures):
    """The range of a value that may have been rounded to so many figures: half a unit of the last one to both sides."""
    size = max(abs(interval[0]), abs(interval[1]))
    if size == 0:
        return interval
    unit = F(1)
    while size >= 10 * unit:
        unit *= 10
    while size < unit:
        unit /= 10
    half = unit / 10 ** (figures - 1) / 2
    return interval[0] - half, interval[1] + half


class Paper:
    """One student's readings and answers, marked answer by answer in the order of the practical's file."""

    def __init__(self, row):
        self.formulas = FORMULAS[row["practical"]]
        texts = [row["after 2"] or row["after"], row["before"], row["empty"]]   # a repeated reading by its last
        self.readings = dict(zip(("after", "before", "empty"), map(F, texts)))
        self.decimals = min(len(t.partition(".")[2]) for t in texts)
        self.given = {name: read_answer(row[name]) for name in self.formulas}
        self.verdicts, self.stands = {}, {}
        for name in self.formulas:
            self.verdicts[name] = self.verdict(name)
            if self.given[name]:
                self.take_down(name)

    def is_difference(self, name):
        return self.formulas[name][0] == "-"

    def lookup(self, name, table, source, figures):
        """What a name in a formula stands for. source: 'readings' (down to the readings), or earlier answers for all they
        stand for ('stands') or as they were written ('written'); an answer left empty by its own formula, rounded to so many figures (0: not rounded)."""
        if name in self.readings:
            return self.readings[name], self.readings[name]
        given = self.given[name]
        if given and source != "readings":
            return self.stands[name] if source == "stands" else (given["value"],) * 2
        inner = self.value(name, table, source, figures)
        # Choice: the values on the way are the earlier answers of the file, not each part of a formula; and those left empty
        # may have been rounded to three figures also where the working starts from written answers.
        return may_be_rounded(inner, figures) if figures and inner and not self.is_difference(name) else inner

    def value(self, name, table, source, figures):
        return evaluate(self.formulas[name], table, lambda n: self.lookup(n, table, source, figures))

    def reproduces(self, name, interval, value):
        """Whether the answer as written meets the interval; a coarse ratio has to lie within 5 % of the value as well."""
        given = self.given[name]
        if interval is None or value is None or given["high"] < interval[0] or given["low"] > interval[1]:
            return False
        half = (given["high"] - given["low"]) / 2
        coarse_ratio = name in ("ratio", "x") and half > COARSE * abs(given["value"])
        # Choice: 'the value' of that rule is that from the readings, or from the earlier answers as they were written.
        return not coarse_ratio or abs(given["value"] - value[0]) <= COARSE * abs(value[0])

    def by_readings(self, name, table):
        """The verdict by the own readings with one table: 'right', 'rounded-early' or None."""
        given = self.given[name]
        own = self.value(name, table, "readings", 0)
        if not (self.reproduces(name, own, own) or self.reproduces(name, self.value(name, table, "readings", 3), own)):
            return None
        if self.is_difference(name) and given["decimals"] < self.decimals:
            return "rounded-early"
        # Choice: rounding to so few figures is an exception to 'right', although the interval holds the value. A number
        # that is the value itself (0.04 g at 0.01 g) has not been rounded.
        half = (given["high"] - given["low"]) / 2
        return "rounded-early" if half > COARSE * abs(own[0]) and given["value"] != own[0] else "right"

    def earlier(self, name):
        """Two lists: written answers that the formula needs, directly or behind answers left empty, and those left empty."""
        found, empty, waiting = [], [], [self.formulas[name]]
        while waiting:
            node = waiting.pop()
            if isinstance(node, tuple):
                waiting += node[1:]
            elif node in self.formulas:
                (found if self.given[node] else empty).append(node)
                waiting += [] if self.given[node] else [self.formulas[node]]
        return found, empty

    def follows(self, name, table, figures):
        """Whether the answer follows from the earlier answers for all they stand for, or as they were written where that
        leaves more than 10 % of room. Choice: the room is the whole width of the range against its middle, with three figures
        for answers left empty (with two it would nearly always be too wide)."""
        room = self.value(name, table, "stands", 3)
        wide = room is None or room[1] - room[0] > WIDEST * abs(room[0] + room[1]) / 2
        source = "written" if wide else "stands"
        return self.reproduces(name, self.value(name, table, source, figures), self.value(name, table, "written", 0))

    def take_down(self, name):
        """Notes what the answer was before it was rounded, and all that it stands for when it is used later."""
        given = self.given[name]
        self.stands[name] = given["low"], given["high"]
        if self.is_difference(name) and given["decimals"] >= self.decimals:
            self.stands[name] = (given["value"],) * 2
        elif self.verdicts[name] in ACCEPTED:
            # Choice: what the readings give is worked out from the readings, also where an earlier answer is wrong.
            by_readings = any(self.by_readings(name, table) for table in TABLES)
            ranges = [self.value(name, table, *(("readings", 0) if by_readings else ("stands", 3))) for table in TABLES]
            ends = [end for r in ranges if r for end in r if given["low"] <= end <= given["high"]]
            if ends:
                self.stands[name] = min(ends + [given["value"]]), max(ends + [given["value"]])

    def nothing_left(self, name):
        """No carry: a mass or amount of 0 or less, or a quotient of two equal numbers with two figures or more."""
        used = [self.given[n] for n in self.earlier(name)[0]]
        if any(g["value"] <= 0 for g in used):
            return True
        formula = self.formulas[name]
        sides = [self.given.get(n) for n in formula[1:] if isinstance(n, str)]
        return formula[0] == "/" and len(sides) == 2 and all(sides) and sides[0]["value"] == sides[1]["value"] \
            and all(s["figures"] is None or s["figures"] >= 2 for s in sides)

    def verdict(self, name):
        if self.given[name] is None:
            return "missing"
        by_readings = {self.by_readings(name, table) for table in TABLES}
        for verdict in ("right", "rounded-early"):
            if verdict in by_readings:
                return verdict
        written, empty = self.earlier(name)
        # Choice: two figures for what was left out count after a wrong answer as they do after right ones.
        two = self.given[name]["figures"] == 2 and any(not self.is_difference(n) for n in empty)
        if any(self.follows(name, table, figures) for figures in ((3, 2) if two else (3,)) for table in TABLES):
            # Choice: an earlier answer that was itself carried is not right, so what follows from it is carried too.
            if all(self.verdicts[n] in ("right", "rounded-early") for n in written):
                return "rounded-early"
            if not self.nothing_left(name):
                return "carried"
        return "wrong"

    def smallest_figures(self, node):
        """Figures of the smallest difference of readings in a formula. Choice: of the readings, not of a mass as written."""
        if not isinstance(node, tuple):
            return self.smallest_figures(self.formulas[node]) if node in self.formulas else 99
        if node[0] == "-":
            low = evaluate(node, TABLES[0], lambda n: (self.readings[n],) * 2)[0]
            return len(str(int(abs(low) * 10 ** self.decimals)))
        return min(self.smallest_figures(part) for part in node[1:])

    def figures_at_fault(self, name):
        given, formula = self.given[name], self.formulas[name]
        if self.is_difference(name):
            return given["decimals"] != self.decimals
        leave = self.smallest_figures(formula)
        return given["figures"] is not None and not (
            min(2, leave) <= given["figures"] and (given["decimals"] == 0 or given["figures"] <= max(leave + 2, 4)))

    def marks(self):
        """Marks by answer, and the mark off the paper for figures, judged on the answers that earn a mark."""
        marks = {name: int(v in ACCEPTED) for name, v in self.verdicts.items()}
        return marks, int(any(self.figures_at_fault(name) for name in self.formulas if marks[name]))


def main():
    folder = sys.argv[1] if len(sys.argv) > 1 else "."
    names = [name for formulas in FORMULAS.values() for name in formulas]
    with open(folder + "/simulated_students.csv", newline="", encoding="utf-8") as file, \
            open(folder + "/reference_marks.csv", "w", newline="", encoding="utf-8") as marks_file:
        out = csv.writer(marks_file, lineterminator="\n")
        out.writerow(["student"] + [heading for n in names for heading in (n, n + " marks")] + ["figures", "total"])
        for row in csv.DictReader(file):
            paper = Paper(row)
            marks, off = paper.marks()
            cells = [cell for n in names for cell in (paper.verdicts.get(n, ""), marks.get(n, ""))]
            out.writerow([row["student"]] + cells + [-off, sum(marks.values()) - off])


if __name__ == "__main__":
    main()
