"""Hair as centre lines in mm: where strands root, how they lie, how thick they are.

strands(): list of Strand; the edge line is y = sag * (x / 40)^2 + slope * x, hair on the side of growing y.
"""
from dataclasses import dataclass

import numpy as np


class Edge:
    def __init__(self, sag, slope):
        self.x = np.linspace(-95, 95, 7601)
        self.y = sag * (self.x / 40) ** 2 + slope * self.x
        step = np.hypot(np.diff(self.x), np.diff(self.y))
        s = np.concatenate([[0], np.cumsum(step)])
        self.s = s - np.interp(0, self.x, s)
        dx, dy = np.gradient(self.x, self.s), np.gradient(self.y, self.s)
        self.nx, self.ny = -dy, dx

    def point(self, s, depth):
        """Plane mm at arc length s (0 in the middle) and depth inward; any shape."""
        f = lambda a: np.interp(s, self.s, a)
        n = np.stack([f(self.nx), f(self.ny)], -1)
        n /= np.linalg.norm(n, axis=-1, keepdims=True)
        return np.stack([f(self.x), f(self.y)], -1) + np.asarray(depth)[..., None] * n

    def band(self, xy):
        """Plane mm (N, 2) to (s, depth): foot of the perpendicular by Newton steps."""
        x, y = xy[:, 0], xy[:, 1]
        s = np.interp(x, self.x, self.s)
        for _ in range(6):
            fx, fy = np.interp(s, self.s, self.x), np.interp(s, self.s, self.y)
            nx, ny = np.interp(s, self.s, self.nx), np.interp(s, self.s, self.ny)
            s = s + ny * (x - fx) - nx * (y - fy)  # tangent is (ny, -nx)
        return s, nx * (x - fx) + ny * (y - fy)


@dataclass
class Strand:
    points: np.ndarray  # (M, 3) mm
    radius: np.ndarray  # (M,) mm
    kind: str           # long, regrowth, vellus
    shade: int          # which texture of the palette


def smooth_field(rng, waves, length):
    """A smooth random function of the plane, SD about 1, typical length in mm."""
    k = rng.normal(0, 1, (waves, 2)) * 2 * np.pi / length / 2
    phase, amp = rng.uniform(0, 2 * np.pi, waves), np.sqrt(2 / waves)
    return lambda x, y: amp * np.sum(np.cos(np.multiply.outer(x, k[:, 0]) + np.multiply.outer(y, k[:, 1]) + phase), -1)


def roots(rng, edge, spec, half, deep):
    """(N, 2) arc length and depth of follicles: final density times a ramp with depth, thinned in the gaps."""
    side = half + (24 if spec["comb"] == "sideways" else 12)
    n = rng.poisson(2 * side * deep * spec["density"])
    s, d = rng.uniform(-side, side, n), rng.uniform(0, deep, n)
    ramp = spec["floor"] + (1 - spec["floor"]) * np.clip(d / spec["ramp_mm"], 0, 1) ** 1.3
    patchy = np.exp(0.35 * smooth_field(rng, 12, 9)(s, d) - 0.06)
    keep = ramp * np.clip(patchy, 0, 1.6) / 1.6
    for middle, width in spec["gaps"]:
        keep *= 1 - 0.97 * np.exp(-((s - middle) / (width / 2)) ** 4) * (d < spec["gap_depth"])
    ok = rng.uniform(0, 1, n) < keep * 1.3
    return np.stack([s[ok], d[ok]], -1)


def lay(rng, edge, spec, sd, length, kind):
    """Centre lines (N, M, 3) from roots: comb direction, strand jitter, clumps, wave or coil, lift."""
    n = len(sd)
    step = {"straight": 1.2, "wavy": 0.8, "coiled": 0.3}[spec["shape"]]
    if kind != "long":
        step = min(step, 0.3)
    m = int(np.ceil(length.max() / step)) + 1
    t = np.linspace(0, 1, m)[None, :] * length[:, None]
    base = edge.point(sd[:, 0], sd[:, 1])
    inward = edge.point(sd[:, 0], sd[:, 1] + 1.0) - base
    heading = np.arctan2(inward[:, 1], inward[:, 0])
    lean = {"back": 0, "sideways": spec["side"] * 58, "mixed": spec["side"] * 18}[spec["comb"]]
    spread = {"back": 6, "sideways": 7, "mixed": 24}[spec["comb"]]
    field = smooth_field(rng, 10, 14)(base[:, 0], base[:, 1])
    own = {"long": 5 if spec["comb"] != "mixed" else 13, "regrowth": 28, "vellus": 45}[kind]
    angle = heading - np.radians(lean + 0.8 * spread * field + rng.normal(0, own, n))
    bend = rng.normal(0, 0.008 if kind == "long" else 0.03, n)
    turn = angle[:, None] + bend[:, None] * t + 0.09 * np.sin(t / 6 + rng.uniform(0, 6.28, (n, 1)))
    ds = length[:, None] / (m - 1)
    x = base[:, :1] + np.concatenate([np.zeros((n, 1)), np.cumsum(np.cos(turn[:, :-1]) * ds, 1)], 1)
    y = base[:, 1:] + np.concatenate([np.zeros((n, 1)), np.cumsum(np.sin(turn[:, :-1]) * ds, 1)], 1)
    clumps = rng.uniform([-70, 0], [70, 26], (max(2, int(140 * 26 * spec["clump_per_mm2"])), 2))
    mine = np.empty(n, int)
    for i in range(0, n, 2000):
        mine[i:i + 2000] = np.argmin(((sd[i:i + 2000, None] - clumps[None]) ** 2).sum(-1), 1)
    on = 1 - np.exp(-t / 4)
    tx, ty = np.cos(turn), np.sin(turn)
    if kind == "long":
        gap = edge.point(clumps[mine, 0], clumps[mine, 1]) - base
        side = -ty * gap[:, :1] + tx * gap[:, 1:]
        pull = spec["clump_pull"] * rng.uniform(0.4, 1.2, (n, 1)) * (1 - np.exp(-t / 9)) * side
        x, y = x - ty * pull, y + tx * pull
    lift = np.clip(rng.lognormal(np.log(spec["lift_mm"]), 0.55, n), 0.2, 3.0)
    z = lift[:, None] * (1 - np.exp(-t / 2.2)) + 0.12 * lift[:, None] * np.sin(t / 3.1 + rng.uniform(0, 6.28, (n, 1))) * on
    shared = rng.uniform(0, 6.28, len(clumps))[mine][:, None] + rng.normal(0, 0.55, (n, 1))
    strong = {"long": 1.0, "regrowth": 0.5, "vellus": 0.2}[kind]
    if spec["shape"] == "wavy":
        wave = spec["wave_mm"] * rng.lognormal(0, 0.08, (n, 1))
        off = strong * spec["wave_amp"] * rng.uniform(0.6, 1.2, (n, 1)) * np.sin(2 * np.pi * t / wave + shared) * on
        x, y = x - ty * off, y + tx * off
    if spec["shape"] == "coiled":
        pitch = spec["coil_pitch"] * rng.lognormal(0, 0.15, (n, 1))
        r = strong * spec["coil_r"] * rng.uniform(0.6, 1.2, (n, 1)) * on
        th = 2 * np.pi * t / pitch + shared
        x = x - ty * r * np.cos(th) + tx * 0.7 * r * np.sin(th)
        y = y + tx * r * np.cos(th) + ty * 0.7 * r * np.sin(th)
        z = z + 0.35 * r * (1 + np.sin(th + 1.0))
    if kind == "regrowth":
        z = z + np.minimum(t * np.tan(np.radians(rng.uniform(3, 28, (n, 1)))), 2.6) * 0.6
    return x, y, z, t


def strands(rng, edge, spec, half, deep, skin_z):
    """All strands of a scene. spec: see make.plan(); half: half width of the field, deep: depth to fill, mm."""
    sd = roots(rng, edge, spec, half, deep)
    n = len(sd)
    new = rng.uniform(0, 1, n) < spec["regrowth"]
    fuzz = np.stack([rng.uniform(-half, half, int(spec["vellus_per_mm2"] * 2 * half * 9)),
                     rng.normal(1.0, 2.6, int(spec["vellus_per_mm2"] * 2 * half * 9))], -1)
    out = []
    for kind, where in (("long", sd[~new]), ("regrowth", sd[new]), ("vellus", fuzz)):
        k = len(where)
        if not k:
            continue
        length = {"long": rng.uniform(28, 40, k), "regrowth": rng.uniform(3, 14, k), "vellus": rng.uniform(1.5, 5, k)}[kind]
        if kind == "long":
            snapped = rng.uniform(0, 1, k) < 0.06
            length[snapped] = rng.uniform(8, 25, snapped.sum())
        width = {"long": np.clip(rng.normal(spec["width_um"], 11, k), 40, 100),
                 "regrowth": np.clip(rng.normal(spec["width_um"] * 0.8, 10, k), 35, 90),
                 "vellus": rng.uniform(16, 30, k)}[kind] / 1000
        x, y, z, t = lay(rng, edge, spec, where, length, kind)
        r0 = width[:, None] / 2 * np.ones_like(t)
        if kind != "long":  # tapered tips of new hair
            r0 = r0 * np.clip(1.15 - 0.9 * (t / length[:, None]) ** 2, 0.25, 1)
        floor = r0 + 0.02
        z = np.where(t < 0.05, -0.15, np.maximum(z, np.minimum(floor, 0.4 * t))) + skin_z(x, y)
        shades = rng.integers(0, 12, k)
        for i in range(k):
            p = np.stack([x[i], y[i], z[i]], -1)
            inside = (np.abs(p[:, 0]) < half + 4) & (p[:, 1] < deep + 6) & (p[:, 1] > -12)
            if inside.sum() < 2:
                continue
            edges = np.flatnonzero(np.diff(np.concatenate([[0], inside.astype(int), [0]])))
            for a, b in zip(edges[::2], edges[1::2]):  # one piece for each stay in the field
                if b - a >= 2:
                    out.append(Strand(p[a:b], r0[i, a:b], kind, int(shades[i])))
    return out
