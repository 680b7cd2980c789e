"""Processor time of statsmodels MixedLM, y ~ x with random intercept and slope by REML. Arguments: file with columns y, x, g; budget (s)."""
import csv
import json
import sys
import time
import warnings

import numpy
import statsmodels
from statsmodels.regression.mixed_linear_model import MixedLM

warnings.simplefilter("ignore")
with open(sys.argv[1], newline="") as file:
    rows = list(csv.reader(file))[1:]
y = numpy.array([float(r[0]) for r in rows])
x = numpy.column_stack([numpy.ones(len(rows)), [float(r[1]) for r in rows]])
groups = numpy.array([r[2] for r in rows])


def fit():
    return MixedLM(y, x, groups, exog_re=x).fit(reml=True)


result = fit()
count, start = 0, time.process_time()
while time.process_time() - start < float(sys.argv[2]):
    count += 1
    result = fit()
seconds = (time.process_time() - start) / count
print(json.dumps({"version": "statsmodels " + statsmodels.__version__, "seconds": seconds, "leastSeconds": seconds, "criterion": -2 * result.llf}))
