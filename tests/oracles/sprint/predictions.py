"""Writes predictions.csv: fits of made-up splits and what they predict, with standard errors by the delta method.

An independent route: 40-digit arithmetic (mpmath), the minimum by root finding on the gradient, every derivative numerical.
"""
import csv
import sys
from mpmath import mp, mpf, lambertw, exp, diff, findroot, matrix, sqrt, inverse, nstr, fsum

mp.dps = 40
YD = mpf("0.9144")


def t_of(x, v, tau):
    d = x / (v * tau)
    return tau * (1 + d + lambertw(-exp(-1 - d)).real)


def v_of(x, v, tau):
    d = x / (v * tau)
    return v * (1 + lambertw(-exp(-1 - d)).real)


MODELS = {
    # name: time on the clock, speed, start values; the third parameter is t0 or D
    "Still": (lambda x, p: t_of(x, p[0], p[1]), lambda x, p: v_of(x, p[0], p[1]), ["8.6", "1.0"]),
    "Offset": (lambda x, p: p[2] + t_of(x, p[0], p[1]), lambda x, p: v_of(x, p[0], p[1]), ["8.5", "1.05", "-0.2"]),
    "RunIn": (lambda x, p: t_of(x + p[2], p[0], p[1]) - t_of(p[2], p[0], p[1]), lambda x, p: v_of(x + p[2], p[0], p[1]), ["8.5", "1.1", "0.5"]),
}


def gradient(f, p):
    return [diff(lambda *q: f(list(q)), tuple(p), tuple(1 if j == i else 0 for j in range(len(p)))) for i in range(len(p))]


def fit(model, gates, times):
    f, _, start = MODELS[model]
    start = [mpf(s) for s in start]

    def normal(*p):
        r = [t - f(x, p) for x, t in zip(gates, times)]
        jac = [gradient(lambda q: f(x, q), p) for x in gates]
        return [fsum(jac[i][k] * r[i] for i in range(len(r))) for k in range(len(p))]

    p = list(findroot(normal, start, tol=1e-30))
    jac = matrix([gradient(lambda q: f(x, q), p) for x in gates])
    rss = fsum((t - f(x, p)) ** 2 for x, t in zip(gates, times))
    s2 = rss / (len(gates) - len(p))
    return p, inverse(jac.T * jac) * s2, s2


def carried(g, p, cov):
    d = matrix(gradient(g, p))
    return g(p), sqrt((d.T * cov * d)[0])


def line(p, m, h, end_hundredths):
    """Force line and ratio line, still air, 760 mmHg, 20 C, grid 0.01 s."""
    v, tau = p[0], p[1]
    k = mpf("0.5") * mpf("1.293") * 273 / 293 * mpf("0.2025") * h ** mpf("0.725") * m ** mpf("0.425") * mpf("0.266") * mpf("0.9")
    speeds, forces = [], []
    for i in range(end_hundredths + 1):
        s = v * (1 - exp(-mpf(i) / 100 / tau))
        speeds.append(s)
        forces.append(m * (v - s) / tau + k * s * s)
    weight = m * mpf("9.81")
    ratios = [f / sqrt(f * f + weight * weight) for f in forces]

    def ols(xs, ys):
        n = len(xs)
        mx, my = fsum(xs) / n, fsum(ys) / n
        slope = fsum((a - mx) * (b - my) for a, b in zip(xs, ys)) / fsum((a - mx) ** 2 for a in xs)
        return my - slope * mx, slope

    f0, slope = ols(speeds, forces)
    _, drf = ols(speeds[30:], ratios[30:])
    v0 = -f0 / slope
    return {"f0": f0, "slope": slope, "v0": v0, "pmax": f0 * v0 / 4, "rf": ratios[30], "drf": drf}


def main():
    out = csv.writer(sys.stdout, lineterminator="\n")
    out.writerow(["case", "model", "quantity", "value", "standard_error"])
    CASES = [
        ("yards3", "Still", [10 * YD, 20 * YD, 40 * YD], ["1.58", "2.66", "4.58"]),
        ("metres5", "Still", [5, 10, 20, 30, 40], ["1.37", "2.12", "3.40", "4.61", "5.80"]),
        ("runin6", "Offset", [5, 10, 15, 20, 30, 40], ["1.073", "1.804", "2.460", "3.084", "4.292", "5.479"]),
        ("runin6", "RunIn", [5, 10, 15, 20, 30, 40], ["1.073", "1.804", "2.460", "3.084", "4.292", "5.479"]),
    ]
    for case, model, gates, times in CASES:
        gates, times = [mpf(g) for g in gates], [mpf(t) for t in times]
        f, speed, _ = MODELS[model]
        p, cov, s2 = fit(model, gates, times)
        rows = {
            "top_speed": lambda q: q[0],
            "time_constant": lambda q: q[1],
            "initial_acceleration": lambda q: q[0] / q[1],
            "time_15m": lambda q: f(mpf(15), q),
            "time_60m": lambda q: f(mpf(60), q),
            "speed_10yd": lambda q: speed(10 * YD, q),
            "speed_0m": None if model != "RunIn" else lambda q: speed(mpf(0), q),
            "momentum_10yd_108.8621688kg": lambda q: mpf("108.8621688") * speed(10 * YD, q),
            "power_per_mass": lambda q: q[0] ** 2 / (4 * q[1]),
        }
        if len(p) == 3:
            rows["third"] = lambda q: q[2]
        for name, g in rows.items():
            if g is None:
                continue
            value, se = carried(g, p, cov)
            out.writerow([case, model, name, nstr(value, 13), nstr(se, 10)])
        value, se = carried(rows["time_15m"], p, cov)
        out.writerow([case, model, "new_time_15m", nstr(value, 13), nstr(sqrt(se ** 2 + s2), 10)])
        if model == "Still":
            for name in ("f0", "slope", "v0", "pmax", "rf", "drf"):
                with mp.workdps(25):
                    value, se = carried(lambda q: line(q, mpf(90), mpf("1.85"), 550)[name], p, cov)
                out.writerow([case, model, name + "_90kg_1.85m_5.5s", nstr(value, 13), nstr(se, 10)])


if __name__ == "__main__":
    main()
