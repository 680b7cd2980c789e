"""Filtering, residual analysis and kinematics of made-up clips with SciPy and NumPy, timed; prints one JSON line. The peer of `clip-kinematics` in tests/Analytics.Benchmarks.

The same made-up clips, cut-offs and settings; one core, processor time. Two ways: one clip after another (16 series to a call), and all clips of the set in one array, which
spares SciPy the cost of calls but holds all of them in memory.
"""
import json
import sys
import time
import numpy as np
import scipy
from scipy.signal import filtfilt

FRAMES, MARKERS, RATE = 300, 8, 240.0


def noise(k):
    """Even noise in -0.5..0.5 by index, the same as on the other side."""
    mask = np.uint64(0xFFFFFFFF)
    h = (k.astype(np.uint64) * np.uint64(2654435761)) & mask
    h ^= h >> np.uint64(16)
    h = (h * np.uint64(2246822519)) & mask
    h ^= h >> np.uint64(13)
    return h / 4294967296.0 - 0.5


def made_up(clip):
    """Markers (8, 2, 300): a run at 8 m/s with limbs swinging at 2.1 Hz and twice that, and 5 mm of noise."""
    i = np.arange(FRAMES)
    t = i / RATE
    out = np.empty((MARKERS, 2, FRAMES))
    for m in range(MARKERS):
        phase = 0.7 * m + 0.3 * clip
        k = ((clip * MARKERS + m) * 2) * FRAMES + i
        swing = 0.05 * (m + 1) * np.sin(2 * np.pi * 2.1 * t + phase) + 0.01 * (m + 1) * np.sin(2 * np.pi * 4.2 * t)
        out[m, 0] = 8 * t + 0.1 * m + swing + 0.0173 * noise(k)
        out[m, 1] = 1.8 - 0.2 * m + 0.5 * swing + 0.0173 * noise(k + FRAMES)
    return out


def coefficients(fc):
    c = (2 ** 0.5 - 1) ** 0.25
    w = np.tan(np.pi * fc / RATE) / c
    k1, k2 = 2 ** 0.5 * w, w * w
    a0 = k2 / (1 + k1 + k2)
    k3 = 2 / (1 + k1 + k2)
    return [a0, 2 * a0, a0], [1, -(k3 - 2 * a0), -(1 - 2 * a0 - k3)]


CUTOFFS = np.arange(2.0, 41.0, 2.0)
TAIL = CUTOFFS >= 24
BANK = [coefficients(fc) for fc in CUTOFFS]
TEN = coefficients(10.0)


def analyse(points):
    """points (..., 8, 2, 300). Returns cut-offs, speeds, accelerations, leans."""
    residuals = np.stack([np.sqrt(np.mean((points - filtfilt(b, a, points, axis=-1, padtype="odd", padlen=9)) ** 2, axis=-1)) for b, a in BANK])
    flat = residuals.reshape(len(CUTOFFS), -1)
    x = CUTOFFS[TAIL] - CUTOFFS[TAIL].mean()
    y = flat[TAIL]
    slope = x @ (y - y.mean(axis=0)) / (x @ x)
    level = y.mean(axis=0) - slope * CUTOFFS[TAIL].mean()
    below = flat < level
    j = np.argmax(below[1:] & ~below[:-1], axis=0)
    at = np.arange(flat.shape[1])
    cutoffs = CUTOFFS[j] + (CUTOFFS[j + 1] - CUTOFFS[j]) * (flat[j, at] - level) / (flat[j, at] - flat[j + 1, at])
    smooth = filtfilt(*TEN, points, axis=-1, padtype="odd", padlen=9)
    v = (smooth[..., 2:] - smooth[..., :-2]) * (RATE / 2)
    a = (smooth[..., 2:] - 2 * smooth[..., 1:-1] + smooth[..., :-2]) * RATE ** 2
    leans = [np.unwrap(np.pi / 2 - np.arctan2(smooth[..., p, 1, :] - smooth[..., d, 1, :], smooth[..., p, 0, :] - smooth[..., d, 0, :]), axis=-1) for p, d in ((3, 4), (1, 2))]
    return cutoffs, v, a, leans


def timed(work, clips_each, budget):
    work()
    done, start = 0, time.process_time()
    while (spent := time.process_time() - start) < budget:
        work()
        done += clips_each
    return done / spent


request = json.loads(sys.argv[1])
clips = [made_up(c) for c in range(request["clips"])]
together = np.stack(clips)
one_by_one = timed(lambda: [analyse(c) for c in clips], len(clips), request["budget"])
at_once = timed(lambda: analyse(together), len(clips), request["budget"])
cutoffs, v, a, leans = analyse(together)
print(json.dumps({
    "scipy": scipy.__version__, "numpy": np.__version__, "one_by_one": one_by_one, "at_once": at_once,
    "checks": [float(np.mean(cutoffs)), float(np.mean(np.abs(v))), float(np.mean(np.abs(a))), float(np.mean(np.degrees(leans)))],
}))
