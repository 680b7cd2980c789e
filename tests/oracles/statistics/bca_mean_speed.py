"""Processor time of a BCa interval of a mean with scipy.stats.bootstrap, vectorised. Input: JSON with values, resamples, budget (s)."""
import json
import sys
import time

import numpy as np
import scipy
from scipy.stats import bootstrap

task = json.loads(sys.argv[1])
values = np.asarray(task["values"])


def interval(seed):
    return bootstrap((values,), np.mean, n_resamples=task["resamples"], method="BCa", vectorized=True, random_state=seed).confidence_interval


interval(0)
count, start = 0, time.process_time()
while time.process_time() - start < task["budget"]:
    count += 1
    limits = interval(count)
seconds = (time.process_time() - start) / count
print(json.dumps({"version": "SciPy " + scipy.__version__ + ", NumPy " + np.__version__, "seconds": seconds, "low": limits.low, "high": limits.high}))
