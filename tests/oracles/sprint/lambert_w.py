"""Writes lambert_w.csv: W0(x) for the double nearest to each x, and 1 + W0(-exp(-1-d)), with 60 digits (mpmath)."""
import csv
import math
import sys
from mpmath import mp, mpf, lambertw, exp, nstr

mp.dps = 60
out = csv.writer(sys.stdout, lineterminator="\n")
out.writerow(["kind", "argument", "value"])
branch = -math.exp(-1)
xs = [math.nextafter(branch, 0), branch + 1e-15, branch + 1e-12, branch + 1e-9, branch + 1e-6, branch + 1e-4, -0.36, -0.35, -0.3,
      -0.25, -0.2, -0.1999, -0.1, -0.01, -1e-5, -1e-10, -1e-300, 1e-300, 1e-10, 1e-3, 0.1, 0.5, 1, 2, math.e, 2.999, 3, 5, 10, 100, 1e5, 1e20, 1e100, 1e308]
for x in xs:
    out.writerow(["principal", repr(float(x)), nstr(lambertw(mpf(float(x))).real, 20)])
for d in [1e-300, 1e-20, 1e-16, 1e-12, 1e-9, 1e-6, 1e-4, 0.01, 0.1, 0.3, 0.32, 0.33, 0.5, 1, 1.5, 1.9999, 2, 2.0001, 3, 5, 10, 20, 35, 39.9, 41, 1000]:
    # below about 1e-40 the plain formula needs more digits than 60
    mp.dps = 60 if d > 1e-15 else 700
    out.writerow(["one_plus", repr(float(d)), nstr(1 + lambertw(-exp(-1 - mpf(float(d)))).real, 20)])
