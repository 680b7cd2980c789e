"""Weeks of training load and a dose set against a change, by Python's statistics module and SciPy 1.10.1.

/usr/bin/python3 tests/oracles/load/generate.py        writes weeks.csv and dose-change.csv beside this file
No published worked week was retrievable: the definitions are Foster's, the arithmetic is done here.
"""
import csv
import pathlib
import statistics

import numpy as np
import scipy.stats

here = pathlib.Path(__file__).parent

WEEKS = {
    "mixed": [300, 450, 0, 600, 250, 700, 0],
    "six equal days": [300] * 6 + [0],
    "three hard and three easy": [540, 180, 480, 180, 420, 600, 0],
    "one session": [0, 0, 450, 0, 0, 0, 0],
}


def week(name, loads):
    total, mean = sum(loads), statistics.fmean(loads)
    row = [name, ";".join(map(str, loads)), total, repr(mean)]
    for sd in (statistics.stdev(loads), statistics.pstdev(loads)):
        row += [repr(sd), repr(mean / sd), repr(total * mean / sd)]
    return row


with open(here / "weeks.csv", "w", newline="\n") as file:
    write = csv.writer(file, lineterminator="\n")
    write.writerow("week,loads_au,total_au,mean_au,sd_sample_au,monotony_sample,strain_sample_au,sd_population_au,monotony_population,strain_population_au".split(","))
    for item in WEEKS.items():
        write.writerow(week(*item))

# Made-up squad of twelve: session load in AU and change of a squat in kg, with two ties in the dose.
dose = [5200, 6100, 6100, 7050, 4800, 8200, 7600, 6900, 5900, 7050, 8800, 6400]
change = [2.5, 6.0, -1.5, 9.0, 4.0, 7.5, 3.0, 11.5, 0.5, 5.0, 8.5, 2.0]
rho = scipy.stats.spearmanr(dose, change)
slope = scipy.stats.theilslopes(change, dose, 0.95, method="separate")
with open(here / "dose-change.csv", "w", newline="\n") as file:
    write = csv.writer(file, lineterminator="\n")
    write.writerow(["quantity", "value"])
    for name, value in [
        ("rho", rho.statistic), ("p", rho.pvalue), ("slope", slope.slope), ("slope_low", slope.low_slope), ("slope_high", slope.high_slope),
        ("dose_quartile_range", np.quantile(dose, 0.75) - np.quantile(dose, 0.25)), ("variance_of_change", statistics.variance(change)),
    ]:
        write.writerow([name, repr(float(value))])
