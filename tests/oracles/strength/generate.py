"""Writes the oracle tables of this folder: published equations worked out with 40-digit decimals, rounded once to 6 digits.

Run in this folder: python3 generate.py
Coefficients are typed here from the publications named in README.md, not taken from the library.
"""

from decimal import ROUND_HALF_UP, Decimal as D, getcontext

getcontext().prec = 40

FORMULAS = {
    "Epley": lambda w, r: w * (1 + r / 30),
    "Epley (0.0333)": lambda w, r: w * (1 + D("0.0333") * r),
    "Brzycki": lambda w, r: 36 * w / (37 - r),
    "Brzycki (1.0278)": lambda w, r: w / (D("1.0278") - D("0.0278") * r),
    "Lander": lambda w, r: 100 * w / (D("101.3") - D("2.67123") * r),
    "Lombardi": lambda w, r: w * r ** D("0.10"),
    "Mayhew et al.": lambda w, r: 100 * w / (D("52.2") + D("41.9") * (D("-0.055") * r).exp()),
    "O'Conner et al.": lambda w, r: w * (1 + D("0.025") * r),
    "Wathen": lambda w, r: 100 * w / (D("48.8") + D("53.8") * (D("-0.075") * r).exp()),
    "Adams": lambda w, r: w / (1 - D("0.02") * r),
}
SPELLINGS = {"Epley (0.0333)", "Brzycki (1.0278)"}


def six(x):
    return format(x.quantize(D(1).scaleb(x.adjusted() - 5), ROUND_HALF_UP).normalize(), "f")


def table(name, head, rows):
    with open(name, "w", encoding="utf-8", newline="\n") as out:
        out.write(head + "\n")
        for row in rows:
            out.write(",".join(c if isinstance(c, str) else six(c) for c in row) + "\n")


def over(formulas, repetitions, value):
    return [(name, D(r), value(FORMULAS[name], D(r))) for name in formulas for r in repetitions]


general = [f for f in FORMULAS if f not in SPELLINGS]
table("one_rep_max_100.csv", "formula,repetitions,one_rep_max",
      over(FORMULAS, (1, 2, 3, 5, 8, 10, 12, 15), lambda f, r: f(D(100), r)))
table("one_rep_max_225_lb.csv", "formula,repetitions,one_rep_max_lb",
      over(general, (5, 10, 12, 15, 20), lambda f, r: f(D(225), r)))
table("percent_of_one_rep_max.csv", "formula,repetitions,percent",
      over(general, range(1, 16), lambda f, r: 100 / f(D(1), r)))

# Mayhew et al. 1999 (coefficients from memory) and Hetzler et al. 2010, bench press with 225 lb.
table("football_bench_225_lb.csv", "repetitions,one_rep_max_lb",
      [(D(r), D("226.7") + D("7.1") * r) for r in (1, 5, 10, 12, 15, 20, 25)])
table("hetzler_225_lb.csv", "arm_girth_cm,arm_length_cm,repetitions,one_rep_max_lb",
      [(c, l, r, D("299.08") + D("2.47") * c - D("4.60") * l + D("5.84") * r)
       for c, l, r in ((D(38), D(36), D("14.1")), (D(36), D(37), D(10)), (D(42), D(38), D(22)))])

# Reynolds, Gordon and Robergs 2006, from a 5RM in kg.
table("reynolds_5rm.csv", "lift,five_rep_max_kg,one_rep_max_kg",
      [("leg_press", D(w), D("1.0970") * w + D("14.2546")) for w in (100, 150, 200)]
      + [("bench_press", D(w), D("1.1307") * w + D("0.6999")) for w in (60, 80, 100)])

# Strength / body mass^b; exponents from theory and from Oba et al. 2014.
table("allometric.csv", "lifted_kg,body_mass_kg,exponent,score",
      [(D(w), D(m), D(b), D(w) / D(m) ** D(b)) for w, m in ((160, 80), (180, 100), (220, 140)) for b in ("1", "0.67")]
      + [(D(160), D(100), D("0.559"), D(160) / D(100) ** D("0.559")),
         (D(170), D(140), D("0.559"), D(170) / D(140) ** D("0.559")),
         (D(125), D(100), D("0.287"), D(125) / D(100) ** D("0.287")),
         (D(210), D(100), D("0.496"), D(210) / D(100) ** D("0.496"))])
table("allometric_two_thirds.csv", "lifted_kg,body_mass_kg,score",
      [(D(w), D(m), D(w) / D(m) ** (D(2) / 3)) for w, m in ((160, 80), (180, 100), (220, 140))])
