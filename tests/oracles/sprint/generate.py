"""Writes monoexp_forward.csv, monoexp_inverse.csv, force_velocity.csv and race_fits.csv beside itself, in 40-digit arithmetic (mpmath).

An independent route: the Lambert function as such, minima by Gauss-Newton to 20 digits, derivatives numerical.
Race splits are read from race_splits.csv as typed there.
"""
import csv
import pathlib
from mpmath import mp, mpf, exp, nstr, sqrt, matrix, inverse, fsum
from predictions import t_of, v_of, gradient

mp.dps = 40
HERE = pathlib.Path(__file__).parent


def write(name, head, rows):
    with open(HERE / name, "w", newline="") as f:
        out = csv.writer(f, lineterminator="\n")
        out.writerow(head)
        out.writerows(rows)


def x_of(t, v, tau):
    return v * (t - tau * (1 - exp(-t / tau)))


def curves():
    forward, back = [], []
    with open(HERE / "monoexp_forward.csv") as f:
        asked_times = [(r["set"], r["vmax_mps"], r["tau_s"], r["t_s"]) for r in csv.DictReader(f)]
    with open(HERE / "monoexp_inverse.csv") as f:
        asked_distances = [(r["set"], r["vmax_mps"], r["tau_s"], r["label"], r["x_m"]) for r in csv.DictReader(f)]
    for name, vs, taus, ts in asked_times:
        v, tau, t = mpf(vs), mpf(taus), mpf(ts)
        forward.append([name, vs, taus, ts, nstr(x_of(t, v, tau), 14), nstr(v * (1 - exp(-t / tau)), 14), nstr(v / tau * exp(-t / tau), 14)])
    for name, vs, taus, label, xs in asked_distances:
        v, tau, x = mpf(vs), mpf(taus), mpf(xs)
        back.append([name, vs, taus, label, xs, nstr(t_of(x, v, tau), 15), nstr(v_of(x, v, tau), 14)])
    write("monoexp_forward.csv", ["set", "vmax_mps", "tau_s", "t_s", "x_m", "v_mps", "a_mps2"], forward)
    write("monoexp_inverse.csv", ["set", "vmax_mps", "tau_s", "label", "x_m", "t_s", "v_at_x_mps"], back)


def least_squares(f, xs, ys, start):
    p = [mpf(s) for s in start]
    for _ in range(400):
        r = matrix([y - f(x, p) for x, y in zip(xs, ys)])
        jac = matrix([gradient(lambda q: f(x, q), p) for x in xs])
        step = inverse(jac.T * jac) * (jac.T * r)
        p = [a + b for a, b in zip(p, step)]
        if max(abs(b) for b in step) < mpf("1e-20"):
            break
    else:
        raise ArithmeticError("Gauss-Newton did not settle")
    jac = matrix([gradient(lambda q: f(x, q), p) for x in xs])
    rss = fsum((y - f(x, p)) ** 2 for x, y in zip(xs, ys))
    s2 = rss / (len(xs) - len(p))
    cov = inverse(jac.T * jac) * s2
    return p, [sqrt(cov[i, i]) for i in range(len(p))], rss, sqrt(s2)


def races():
    rows = []
    with open(HERE / "race_splits.csv") as f:
        for race in csv.DictReader(f):
            if not race["reaction_s"]:
                continue
            for last in (100, 60):
                xs = [mpf(10 * i) for i in range(1, last // 10 + 1)]
                gun = [mpf(race[f"t{10 * i}m_s"]) for i in range(1, last // 10 + 1)]
                own = [t - mpf(race["reaction_s"]) for t in gun]
                fits = [("T2", least_squares(lambda x, p: t_of(x, p[0], p[1]), xs, own, ["12", "1.2"])),
                        ("X2", least_squares(lambda t, p: x_of(t, p[0], p[1]), own, xs, ["12", "1.2"])),
                        ("T3", least_squares(lambda x, p: p[2] + t_of(x, p[0], p[1]), xs, gun, ["12.1", "1.4", "0.03"]))]
                for model, (p, se, rss, sd) in fits:
                    third, third_se = (nstr(p[2], 12), nstr(se[2], 8)) if len(p) == 3 else ("", "")
                    rows.append([race["race"], race["athlete"], last, model, nstr(p[0], 12), nstr(p[1], 12), third,
                                 nstr(se[0], 8), nstr(se[1], 8), third_se, nstr(rss, 10), nstr(sd, 8)])
    write("race_fits.csv", ["race", "athlete", "last_distance_m", "model", "vmax_mps", "tau_s", "t0_s",
                            "se_vmax", "se_tau", "se_t0", "rss", "resid_sd"], rows)


def profiles():
    with open(HERE / "force_velocity.csv") as f:
        reader = csv.DictReader(f)
        head, cases = reader.fieldnames, list(reader)
    rows = []
    for c in cases:
        v, tau, m, h = (mpf(c[k]) for k in ("vmax_mps", "tau_s", "mass_kg", "height_m"))
        k = (mpf("0.5") * mpf("1.293") * mpf(c["pressure_mmHg"]) / 760 * 273 / (273 + mpf(c["temp_C"]))
             * mpf("0.2025") * h ** mpf("0.725") * m ** mpf("0.425") * mpf("0.266") * mpf("0.9"))
        wind, weight = mpf(c["wind_mps"]), m * mpf("9.81")
        n = int(round(float(c["t_end_s"]) * 100)) + 1
        times = [mpf(i) / 100 for i in range(n)]
        speeds = [v * (1 - exp(-t / tau)) for t in times]
        forces = [m * (v - s) / tau + k * (s - wind) * abs(s - wind) for s in speeds]
        ratios = [f / sqrt(f * f + weight * weight) for f in forces]

        def line(xs, ys):
            mx, my = fsum(xs) / len(xs), fsum(ys) / len(ys)
            slope = fsum((a - mx) * (b - my) for a, b in zip(xs, ys)) / fsum((a - mx) ** 2 for a in xs)
            return my - slope * mx, slope

        f0, slope = line(speeds, forces)
        v0 = -f0 / slope
        powers = [f * s for f, s in zip(forces, speeds)]
        best = max(range(n), key=lambda i: powers[i])
        computed = [n, k, forces[0], f0, slope, v0, f0 * v0 / 4, f0 / m, f0 * v0 / 4 / m, ratios[30], line(speeds[30:], ratios[30:])[1],
                    powers[best], times[best]]
        rows.append([c[x] for x in head[:9]] + [computed[0]] + [nstr(q, 12) for q in computed[1:]])
    write("force_velocity.csv", head, rows)


if __name__ == "__main__":
    curves()
    profiles()
    races()
