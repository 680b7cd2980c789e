"""Times scipy.optimize.curve_fit on one run's splits and prints one JSON line; the peer of `split-fits` in tests/Analytics.Benchmarks.

Same model t(x; V, T) through the Lambert function, same splits, same start values, one core, processor time (so that a busy machine does not matter). Two variants: the analytic Jacobian
handed over, and SciPy's own differences. Default tolerances of curve_fit (1e-8); method 'lm' (MINPACK).
"""
import json
import sys
import time
import numpy as np
import scipy
from scipy.optimize import curve_fit
from scipy.special import lambertw


def t_of(x, v, tau):
    d = x / (v * tau)
    return tau * (1 + d + lambertw(-np.exp(-1 - d)).real)


def jacobian(x, v, tau):
    d = x / (v * tau)
    q = 1 + lambertw(-np.exp(-1 - d)).real
    return np.column_stack([-tau * d / (v * q), (q - (d + q) * (1 - q)) / q])


def fits_per_second(x, t, guess, seconds, **options):
    for _ in range(20):
        curve_fit(t_of, x, t, guess, **options)
    count, start = 0, time.process_time()
    while (spent := time.process_time() - start) < seconds:
        for _ in range(20):
            parameters, covariance = curve_fit(t_of, x, t, guess, **options)
        count += 20
    return count / spent, parameters, covariance


request = json.loads(sys.argv[1])
x, t = np.array(request["metres"]), np.array(request["seconds"])
with_jacobian, parameters, covariance = fits_per_second(x, t, request["guess"], request["budget"], jac=jacobian)
without, _, _ = fits_per_second(x, t, request["guess"], request["budget"])
print(json.dumps({
    "scipy": scipy.__version__, "numpy": np.__version__,
    "analytic": with_jacobian, "differences": without,
    "parameters": list(parameters), "standard_errors": list(np.sqrt(np.diag(covariance))),
}))
