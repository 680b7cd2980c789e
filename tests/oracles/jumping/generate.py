"""Writes the oracle tables of this folder: published formulas worked out with 40-digit decimals, rounded once to 6 digits.

Run in this folder: python3 generate.py
Coefficients are typed here from the publications named in README.md, not taken from the library.
"""

from decimal import ROUND_HALF_UP, Decimal as D, getcontext

getcontext().prec = 40
G, G_STANDARD = D("9.81"), D("9.80665")


def six(x):
    return format(x.quantize(D(1).scaleb(x.adjusted() - 5), ROUND_HALF_UP).normalize(), "f") if x else "0"


def table(name, head, rows):
    with open(name, "w", encoding="utf-8", newline="\n") as out:
        out.write(head + "\n")
        for row in rows:
            out.write(",".join(c if isinstance(c, str) else six(c) for c in row) + "\n")


def decimals(*texts):
    return [D(t) for t in texts]


# Linthorne 2001: h = g t^2 / 8, h = v^2 / (2 g), t = 2 v / g.
table("height_from_flight.csv", "flight_s,height_m_g981,height_m_g980665",
      [(t, G * t**2 / 8, G_STANDARD * t**2 / 8) for t in decimals("0.4", "0.5", "0.55", "0.6", "0.65", "0.7")])
table("height_from_speed.csv", "take_off_m_s,height_m,flight_s",
      [(v, v**2 / (2 * G), 2 * v / G) for v in decimals("2.2", "2.5", "2.8", "3.0")])
table("speed_from_height.csv", "height_m,take_off_m_s,flight_s",
      [(h, (2 * G * h).sqrt(), (8 * h / G).sqrt()) for h in decimals("0.3", "0.5")])

# Power from height (cm), mass (kg), stature (cm): name -> (h, m, s, constant).
LINEAR = {
    "Harman peak": ("61.9", "36.0", "0", "-1822"),
    "Harman mean": ("21.2", "23.0", "0", "-1393"),
    "Sayers squat jump": ("60.7", "45.3", "0", "-2055"),
    "Sayers countermovement jump": ("51.9", "48.9", "0", "-2007"),
    "Canavan–Vescovi": ("65.1", "25.8", "0", "-1413.1"),
    "Amonette": ("63.6", "42.7", "0", "-1846.5"),
    "Lara": ("62.5", "50.3", "0", "-2184.7"),
    "Johnson–Bahamonde peak": ("78.5", "60.6", "-15.3", "-1308"),
    "Johnson–Bahamonde mean": ("41.4", "31.2", "-13.9", "431"),
    "Johnson–Bahamonde peak (second-hand form)": ("78.6", "60.3", "-15.3", "-1308"),
    "Johnson–Bahamonde mean (second-hand form)": ("43.8", "32.7", "-16.8", "431"),
}
BODIES = [decimals(*b) for b in [("60", "75", "180"), ("50", "80", "180"), ("70", "100", "185"), ("55", "140", "195"), ("45", "90", "178")]]
rows = []
for h, m, s in BODIES:
    rows.append(("Lewis", h, m, s, D("4.9").sqrt() * m * (h / 100).sqrt() * D("9.81")))
    rows += [(name, h, m, s, D(a) * h + D(b) * m + D(c) * s + D(k)) for name, (a, b, c, k) in LINEAR.items()]
table("power.csv", "formula,height_cm,mass_kg,stature_cm,power_w", [("\"%s\"" % r[0], *r[1:]) for r in rows])
table("lewis_kg_m_s.csv", "height_cm,mass_kg,power_kg_m_s", [(h, m, D("4.9").sqrt() * m * (h / 100).sqrt()) for h, m, _ in BODIES])

# Samozino and others 2008: F = m g (h/d + 1), v = sqrt(g h / 2), P = F v.
rows = []
for m, h, d in [decimals(*x) for x in [("80", "0.35", "0.40"), ("100", "0.45", "0.42"), ("75", "0.30", "0.35"), ("120", "0.40", "0.45")]]:
    force, speed = m * G * (h / d + 1), (G * h / 2).sqrt()
    rows.append((m, h, d, force, speed, force * speed, force * speed / m))
table("push_off.csv", "mass_kg,height_m,push_off_m,force_n,speed_m_s,power_w,power_w_kg", rows)

# Kalamen 1968: P = m g D / t; also in kg·m/s without g.
table("stair.csv", "mass_kg,time_s,rise_m,g_m_s2,power_kg_m_s,power_w",
      [(m, t, d, g, m * d / t, m * g * d / t) for m, t, d, g in [decimals(*x) for x in [
          ("65", "0.52", "1.05", "9.81"), ("65", "0.52", "1.05", "9.8"), ("65", "0.52", "1.044", "9.81"),
          ("75", "0.50", "1.05", "9.81"), ("100", "0.55", "1.05", "9.81"), ("110", "0.48", "1.05", "9.81")]]])

# Work and energy of the bar: P = m (g dh + v^2 / 2) / dt.
table("bar.csv", "bar_kg,rise_m,time_s,end_speed_m_s,power_w",
      [(m, h, t, v, m * (G * h + v**2 / 2) / t) for m, h, t, v in [decimals(*x) for x in [
          ("100", "0.90", "0.80", "0"), ("100", "0.90", "0.80", "1.6"), ("120", "0.85", "0.75", "0"), ("120", "0.85", "0.75", "1.8")]]])

# Flanagan and others 2008 (height / contact; flight / contact is another index), Ebben and Petushek 2010 (height / time to take-off).
CONTACT, FLIGHT = D("0.20"), D("0.5")
table("reactive.csv", "index,jump,time_s,value",
      [("height to contact", D("0.35"), CONTACT, D("0.35") / CONTACT),
       ("flight to height to contact", FLIGHT, CONTACT, G * FLIGHT**2 / 8 / CONTACT),
       ("flight to contact", FLIGHT, CONTACT, FLIGHT / CONTACT)]
      + [("height to take-off", h, t, h / t) for h, t in [decimals(*x) for x in [("0.38", "0.75"), ("0.42", "0.70"), ("0.30", "0.80")]]])
